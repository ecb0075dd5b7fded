package facetwright.draw;

import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Score;
import facetwright.net.Tick;
import facetwright.net.backing.Backings;
import facetwright.net.sheet.Laid;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;

/** The net of one sheet as lines, at true size, outside up. */
public final class NetDrawing {
  private static final double HATCH_SPACING = 2.5;
  private static final double HATCH_BORDER = 0.8;
  private static final double CENTRE_MARK = 0.8;

  private final SheetPart part;
  private final Net net;
  private final Set<Content> content;
  private final double zoom;
  private final GlueMarks gluing;
  private final Set<Integer> panels;
  private final List<Mark> marks = new ArrayList<>();

  /** What a net drawing may show beside its cuts and scores. */
  public enum Content {
    /** The card itself as an area. */
    CARD,
    /** Hatch where glue goes. */
    GLUE,
    LAYERS,
    TICKS,
    /** The names of panels, where they fit. */
    NAMES,
    /** Words that the maker wants on panels, and where labels of paper are glued. */
    LABELS
  }

  /** What a paper template shows. */
  public static final Set<Content> TEMPLATE =
      Set.copyOf(
          EnumSet.of(Content.GLUE, Content.LAYERS, Content.TICKS, Content.NAMES, Content.LABELS));

  private NetDrawing(SheetPart part, Set<Content> content, double zoom, GlueMarks gluing) {
    this.zoom = zoom;
    this.gluing = gluing;
    this.part = part;
    this.net = part.laid().net();
    this.content = content;
    this.panels = Set.copyOf(part.panels());
  }

  /**
   * The page is the sheet; where a piece reaches over the edge of the sheet, the page grows to show
   * it whole and the edge of the sheet is drawn too.
   *
   * @param sheet index of the sheet, from 0
   * @throws IllegalArgumentException when there is no such sheet
   */
  public static Drawing of(Laid laid, int sheet, Set<Content> content) {
    return of(SheetPart.of(laid, sheet), content);
  }

  /** Where the lower left corner of a sheet's page lies in the plane of the laid net. */
  public static Vec2 cornerOf(Laid laid, int sheet) {
    return SheetPart.of(laid, sheet).shift().times(-1);
  }

  public static Drawing of(SheetPart part, Set<Content> content) {
    return of(part, content, 1);
  }

  /**
   * The net at true size, to be seen larger or smaller.
   *
   * @param zoom how much larger than life it will be seen; names are so much smaller
   */
  public static Drawing of(SheetPart part, Set<Content> content, double zoom) {
    return new NetDrawing(part, content, zoom, GlueMarks.NONE).draw();
  }

  /**
   * The net at true size, glue marked on the face that takes it; beside the names of panels, where
   * they are shown, stand the numbers of what is glued.
   */
  public static Drawing of(SheetPart part, Set<Content> content, GlueMarks gluing) {
    return new NetDrawing(part, content, 1, gluing).draw();
  }

  private Drawing draw() {
    Pace.step(panels.size());
    Box2 page = part.page();
    if (part.over()) {
      Box2 sheet = part.laid().sheet(part.sheet());
      marks.add(
          Stroke.around(
              Polygon2.rectangle(sheet.minX(), sheet.minY(), sheet.width(), sheet.height()),
              LineKind.SHEET));
    }
    if (content.contains(Content.CARD)) {
      part.panels().forEach(p -> fill(net.panels().get(p).region(), FillKind.CARD));
    }
    part.panels().forEach(p -> net.panels().get(p).openings().forEach(this::openingArea));
    Set<Integer> glued = Join.glued(net);
    if (content.contains(Content.GLUE)) {
      part.panels().stream().filter(glued::contains).forEach(this::glue);
    }
    if (content.contains(Content.LAYERS)) {
      net.layers().stream().filter(l -> panels.contains(l.panel())).forEach(this::layer);
      Backings.of(net).stream()
          .filter(b -> panels.contains(b.panel()))
          .forEach(b -> marks.add(Stroke.around(b.outline(), LineKind.BACKING)));
    }
    List<Tick> ticks = net.ticks().stream().filter(t -> part.has(t.mark().middle())).toList();
    if (content.contains(Content.TICKS)) {
      ticks.forEach(t -> marks.add(Stroke.line(t.mark().from(), t.mark().to(), LineKind.TICK)));
    }
    Set<Integer> labelled = new TreeSet<>();
    if (content.contains(Content.LABELS)) {
      LabelSetting.all(net).stream()
          .filter(s -> panels.contains(s.label().panel()))
          .forEach(
              s -> {
                labelled.add(s.label().panel());
                label(s);
              });
    }
    if (content.contains(Content.NAMES)) {
      marks.addAll(
          part.panels().stream()
              .filter(p -> !glued.contains(p) && !labelled.contains(p))
              .flatMap(p -> PanelName.of(net.panels().get(p), ticks, zoom).stream())
              .toList());
      marks.addAll(
          GlueNumbers.of(
              net,
              panels,
              gluing.numbers(),
              marks.stream().filter(Mark.Text.class::isInstance).toList()));
    }
    net.scores().stream().filter(s -> panels.contains(s.a().panel())).forEach(this::score);
    marks.addAll(
        CutLines.of(
            CutLines.sides(net, panels::contains),
            part.panels().stream().map(p -> net.panels().get(p).outline()).toList(),
            LineKind.CUT));
    part.panels().forEach(p -> net.panels().get(p).openings().forEach(this::openingCut));
    return new Drawing(page.width(), page.height(), marks).moved(Motion2.shift(part.shift()));
  }

  private void fill(Geometry area, FillKind kind) {
    Areas.rings(area).forEach(rings -> marks.add(new Fill(rings, kind)));
  }

  private void glue(int panel) {
    Geometry area = Areas.inset(net.panels().get(panel).region(), HATCH_BORDER);
    for (List<Polygon2> rings : Areas.rings(area)) {
      switch (gluing.face(panel)) {
        case OUTSIDE -> {
          marks.add(new Fill(rings, FillKind.GLUE));
          marks.addAll(Areas.hatch(rings, HATCH_SPACING, LineKind.GLUE));
        }
        case INSIDE -> rings.forEach(r -> marks.add(Stroke.around(r, LineKind.GLUE_INSIDE)));
        case NONE -> {}
      }
    }
  }

  private void layer(Layer layer) {
    Geometry area = Areas.layer(net, layer);
    fill(area, FillKind.LAYER);
    Areas.rings(area).stream()
        .flatMap(List::stream)
        .forEach(ring -> marks.add(Stroke.around(ring, LineKind.LAYER)));
  }

  private void label(LabelSetting set) {
    if (set.label().asked().cut()) {
      marks.add(Stroke.around(set.outline(), LineKind.LAYER));
    }
    marks.addAll(set.lines());
  }

  private void score(Score score) {
    Segment2 line = net.segment(score.a());
    marks.add(Stroke.line(line.from(), line.to(), LineKind.of(score)));
  }

  private void openingArea(Opening opening) {
    boolean isArea = !(opening instanceof Opening.Slot s && s.isLine());
    if (isArea && !(opening instanceof Opening.Hole)) {
      marks.add(
          new Fill(
              List.of(opening.outline()),
              opening.behind().isEmpty() ? FillKind.WINDOW : FillKind.PANE));
    }
  }

  private void openingCut(Opening opening) {
    marks.add(CutLines.of(opening));
    if (opening instanceof Opening.Hole h) {
      double arm = Math.min(CENTRE_MARK, h.diameter() / 4);
      cross(h.centre(), new Vec2(arm, 0));
      cross(h.centre(), new Vec2(0, arm));
    }
  }

  private void cross(Vec2 centre, Vec2 arm) {
    marks.add(Stroke.line(centre.minus(arm), centre.plus(arm), LineKind.TICK));
  }
}
