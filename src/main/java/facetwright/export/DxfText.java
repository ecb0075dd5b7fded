package facetwright.export;

import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.machine.Run;
import facetwright.geom.Box2;
import facetwright.geom.Leg;
import facetwright.geom.Vec2;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The sections of an AC1015 file, group codes and values on lines of their own. */
final class DxfText {
  /** Line weights the format knows, in 1/100 mm. */
  private static final int[] WEIGHTS = {0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50};

  private static final int MILLIMETRES = 4;
  private static final int DECIMALS = 6;
  private static final int BULGE_DECIMALS = 12;

  /** The layer of words on panels. */
  private static final String LABEL = "LABEL";

  private final String title;
  private final List<Run> runs;
  private final List<Mark.Text> words;
  private final StringBuilder out = new StringBuilder();
  private int lastHandle = 0x10;

  /**
   * @param title of the file, a comment at its head
   * @param runs each a layer of its own
   * @param words on a layer of their own
   */
  DxfText(String title, List<Run> runs, List<Mark.Text> words) {
    this.title = title;
    this.runs = runs;
    this.words = words;
  }

  String text() {
    String body = body();
    out.setLength(0);
    add(999, plain(title));
    section("HEADER");
    add(9, "$ACADVER", 1, "AC1015", 9, "$DWGCODEPAGE", 3, "ANSI_1252");
    add(9, "$HANDSEED", 5, Integer.toHexString(lastHandle + 1).toUpperCase(Locale.ROOT));
    add(9, "$INSUNITS", 70, MILLIMETRES, 9, "$MEASUREMENT", 70, 1, 9, "$LTSCALE", 40, "1.0");
    extent();
    add(0, "ENDSEC");
    return out + body;
  }

  private void extent() {
    List<Vec2> points = new ArrayList<>();
    for (Mark mark : runs.stream().flatMap(r -> r.lines().stream()).toList()) {
      switch (mark) {
        case Mark.Stroke s -> points.addAll(s.points());
        case Mark.Circle c -> points.add(c.centre());
        case Mark.Fill _, Mark.Patch _, Mark.Text _ -> {}
      }
    }
    Box2 box = Box2.around(points);
    add(9, "$EXTMIN", 10, number(box.minX()), 20, number(box.minY()), 30, "0.0");
    add(9, "$EXTMAX", 10, number(box.maxX()), 20, number(box.maxY()), 30, "0.0");
  }

  private String body() {
    section("CLASSES");
    add(0, "ENDSEC");
    section("TABLES");
    String modelSpace = handle();
    String paperSpace = handle();
    viewports();
    lineTypes();
    layers();
    styles();
    table("VIEW", 0);
    add(0, "ENDTAB");
    table("UCS", 0);
    add(0, "ENDTAB");
    table("APPID", 1);
    add(0, "APPID", 5, handle(), 100, "AcDbSymbolTableRecord");
    add(100, "AcDbRegAppTableRecord", 2, "ACAD", 70, 0);
    add(0, "ENDTAB");
    table("DIMSTYLE", 0);
    add(100, "AcDbDimStyleTable", 0, "ENDTAB");
    table("BLOCK_RECORD", 2);
    blockRecord(modelSpace, "*Model_Space");
    blockRecord(paperSpace, "*Paper_Space");
    add(0, "ENDTAB", 0, "ENDSEC");
    section("BLOCKS");
    block(modelSpace, "*Model_Space", 0);
    block(paperSpace, "*Paper_Space", 1);
    add(0, "ENDSEC");
    section("ENTITIES");
    runs.forEach(r -> r.lines().forEach(m -> entity(modelSpace, layer(r), m)));
    words.forEach(t -> text(modelSpace, t));
    add(0, "ENDSEC");
    section("OBJECTS");
    String root = handle();
    String groups = handle();
    add(0, "DICTIONARY", 5, root, 330, "0", 100, "AcDbDictionary", 281, 1);
    add(3, "ACAD_GROUP", 350, groups);
    add(0, "DICTIONARY", 5, groups, 330, root, 100, "AcDbDictionary", 281, 1);
    add(0, "ENDSEC", 0, "EOF");
    return out.toString();
  }

  private void viewports() {
    table("VPORT", 0);
    add(0, "ENDTAB");
  }

  private void lineTypes() {
    List<LineKind> dashed =
        runs.stream().map(Run::kind).filter(k -> !k.dashes().isEmpty()).distinct().toList();
    table("LTYPE", dashed.size() + 3);
    lineType("ByBlock", "", List.of());
    lineType("ByLayer", "", List.of());
    lineType("Continuous", "Solid line", List.of());
    dashed.forEach(kind -> lineType(lineType(kind), kind.id(), kind.dashes()));
    add(0, "ENDTAB");
  }

  private void lineType(String name, String description, List<Double> dashes) {
    add(0, "LTYPE", 5, handle(), 100, "AcDbSymbolTableRecord", 100, "AcDbLinetypeTableRecord");
    add(2, name, 70, 0, 3, description, 72, 65, 73, dashes.size());
    add(40, number(dashes.stream().mapToDouble(d -> d).sum()));
    for (int i = 0; i < dashes.size(); i++) {
      add(49, number(i % 2 == 0 ? dashes.get(i) : -dashes.get(i)), 74, 0);
    }
  }

  private static String lineType(LineKind kind) {
    return kind.dashes().isEmpty() ? "Continuous" : kind.id().toUpperCase(Locale.ROOT);
  }

  private void layers() {
    table("LAYER", runs.size() + (words.isEmpty() ? 1 : 2));
    layer("0", "Continuous", 7, 25);
    if (!words.isEmpty()) {
      layer(LABEL, "Continuous", 7, 25);
    }
    for (Run run : runs) {
      layer(layer(run), lineType(run.kind()), colour(run.kind()), weight(run.kind()));
    }
    add(0, "ENDTAB");
  }

  private static String layer(Run run) {
    return run.id().toUpperCase(Locale.ROOT);
  }

  private void layer(String name, String lineType, int colour, int weight) {
    add(0, "LAYER", 5, handle(), 100, "AcDbSymbolTableRecord", 100, "AcDbLayerTableRecord");
    add(2, name, 70, 0, 62, colour, 6, lineType, 370, weight);
  }

  /** The nearest of the format's 255 numbered colours, from memory. */
  private static int colour(LineKind kind) {
    return switch (kind) {
      case CUT, PERFORATION, FOLDED, NOW -> 7;
      case MOUNTAIN -> 134;
      case VALLEY -> 204;
      case TICK, GLUE, GLUE_INSIDE -> 44;
      case LAYER, BACKING -> 30;
      case GUIDE, SHEET, DONE -> 8;
    };
  }

  private static int weight(LineKind kind) {
    int best = WEIGHTS[0];
    for (int weight : WEIGHTS) {
      if (Math.abs(weight - kind.width() * 100) < Math.abs(best - kind.width() * 100)) {
        best = weight;
      }
    }
    return best;
  }

  private void styles() {
    table("STYLE", 1);
    add(0, "STYLE", 5, handle(), 100, "AcDbSymbolTableRecord", 100, "AcDbTextStyleTableRecord");
    add(2, "Standard", 70, 0, 40, "0.0", 41, "1.0", 50, "0.0", 71, 0, 42, "2.5", 3, "txt", 4, "");
    add(0, "ENDTAB");
  }

  private void blockRecord(String handle, String name) {
    add(0, "BLOCK_RECORD", 5, handle, 100, "AcDbSymbolTableRecord");
    add(100, "AcDbBlockTableRecord", 2, name, 340, "0");
  }

  private void block(String owner, String name, int paper) {
    add(0, "BLOCK", 5, handle(), 330, owner, 100, "AcDbEntity", 67, paper, 8, "0");
    add(100, "AcDbBlockBegin", 2, name, 70, 0, 10, "0.0", 20, "0.0", 30, "0.0", 3, name, 1, "");
    add(0, "ENDBLK", 5, handle(), 330, owner, 100, "AcDbEntity", 67, paper, 8, "0");
    add(100, "AcDbBlockEnd");
  }

  private void entity(String owner, String layer, Mark mark) {
    switch (mark) {
      case Mark.Stroke s when s.points().size() == 2 && !s.closed() -> {
        start("LINE", owner, layer, "AcDbLine");
        point(10, s.points().getFirst());
        point(11, s.points().getLast());
      }
      case Mark.Stroke s -> {
        start("LWPOLYLINE", owner, layer, "AcDbPolyline");
        List<Leg> legs = s.legs();
        add(90, legs.size() + (s.closed() ? 0 : 1), 70, s.closed() ? 1 : 0);
        legs.forEach(this::vertex);
        if (!s.closed()) {
          Vec2 end = legs.getLast().to();
          add(10, number(end.x()), 20, number(end.y()));
        }
      }
      case Mark.Circle c -> {
        start("CIRCLE", owner, layer, "AcDbCircle");
        point(10, c.centre());
        add(40, number(c.radius()));
      }
      case Mark.Text _, Mark.Fill _, Mark.Patch _ -> {}
    }
  }

  private void text(String owner, Mark.Text t) {
    Vec2 start = t.at().minus(Vec2.polar(t.back(), Math.toRadians(t.angle())));
    add(0, "TEXT", 5, handle(), 330, owner, 100, "AcDbEntity", 8, LABEL, 100, "AcDbText");
    point(10, start);
    add(40, number(t.size() * Lettering.CAP_HEIGHT), 1, plain(t.content()), 50, number(t.angle()));
    add(100, "AcDbText");
  }

  /** Letters that the code page lacks are written by their number: \\U+03B1. */
  private static String plain(String words) {
    return words
        .codePoints()
        .mapToObj(c -> c < 0x7F ? Character.toString(c) : String.format(Locale.ROOT, "\\U+%04X", c))
        .collect(Collectors.joining());
  }

  /**
   * Where a leg starts, and its bulge where it is round: the tangent of a quarter of its turn,
   * below 0 clockwise (the format's published reference, entity LWPOLYLINE, group 42).
   */
  private void vertex(Leg leg) {
    add(10, number(leg.from().x()), 20, number(leg.from().y()));
    if (!leg.isStraight()) {
      add(42, Decimals.places(Math.tan(leg.turn() / 4), BULGE_DECIMALS));
    }
  }

  private void start(String type, String owner, String layer, String subclass) {
    add(0, type, 5, handle(), 330, owner, 100, "AcDbEntity");
    add(8, layer, 100, subclass);
  }

  private void point(int code, Vec2 p) {
    add(code, number(p.x()), code + 10, number(p.y()), code + 20, "0.0");
  }

  private void section(String name) {
    add(0, "SECTION", 2, name);
  }

  private void table(String name, int entries) {
    add(0, "TABLE", 2, name, 5, handle(), 330, "0", 100, "AcDbSymbolTable", 70, entries);
  }

  private String handle() {
    return Integer.toHexString(++lastHandle).toUpperCase(Locale.ROOT);
  }

  private static String number(double value) {
    String text = Decimals.places(value, DECIMALS);
    return text.contains(".") ? text : text + ".0";
  }

  private void add(Object... codesAndValues) {
    for (Object part : codesAndValues) {
      out.append(part).append("\r\n");
    }
  }
}
