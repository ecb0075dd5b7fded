package facetwright.draw.machine;

import facetwright.draw.CutLines;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.SheetPart;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * All that a cutting machine does on one sheet, outside up: scores first, then what is cut within
 * the pieces, the outlines last, while the card still holds. What lies on one straight line is one
 * line, what goes round a piece is closed, and nothing is run twice.
 *
 * @param width of the page, in mm
 * @param height of the page, in mm
 * @param runs in the order in which they are done; none is empty
 */
public record MachineLines(double width, double height, List<Run> runs) {
  public MachineLines {
    runs = List.copyOf(runs);
  }

  /**
   * What is done on one sheet.
   *
   * @param sheet index of the sheet, from 0
   */
  public static MachineLines of(Laid laid, int sheet) {
    SheetPart part = SheetPart.of(laid, sheet);
    Net net = laid.net();
    Set<Integer> here = Set.copyOf(part.panels());
    Pace.step(here.size());
    Motion2 onPage = Motion2.shift(part.shift());
    List<Run> runs = new ArrayList<>();
    Vec2 at = Vec2.ZERO;
    for (LineKind kind : List.of(LineKind.MOUNTAIN, LineKind.VALLEY, LineKind.PERFORATION)) {
      List<Segment2> scores =
          net.scores().stream()
              .filter(s -> here.contains(s.a().panel()) && LineKind.of(s) == kind)
              .map(s -> net.segment(s.a()))
              .toList();
      List<Mark> lines = new ArrayList<>();
      for (Segment2 s : Straight.joined(CutLines.once(scores))) {
        lines.add(Stroke.line(s.from(), s.to(), kind));
      }
      at = add(runs, kind.id(), scored(kind), kind, lines, onPage, at);
    }
    List<Segment2> cuts = CutLines.sides(net, here::contains);
    List<Polygon2> outlines =
        part.panels().stream().map(p -> net.panels().get(p).outline()).toList();
    Outlines outline = Outlines.of(outlines, cuts);
    List<Mark> within = new ArrayList<>(outline.within());
    part.panels()
        .forEach(p -> net.panels().get(p).openings().forEach(o -> within.add(CutLines.of(o))));
    at = add(runs, "cut-within", "cut within the pieces", LineKind.CUT, within, onPage, at);
    add(runs, "cut-outline", "cut round the pieces", LineKind.CUT, outline.around(), onPage, at);
    return new MachineLines(part.page().width(), part.page().height(), runs);
  }

  private static String scored(LineKind kind) {
    return kind == LineKind.PERFORATION ? "perforate" : "score, folded as a " + kind.id();
  }

  /** Adds a run where there is anything to do, and tells where the tool is then. */
  private static Vec2 add(
      List<Run> runs,
      String id,
      String label,
      LineKind kind,
      List<Mark> lines,
      Motion2 onPage,
      Vec2 at) {
    if (lines.isEmpty()) {
      return at;
    }
    List<Mark> ordered = Travel.order(lines.stream().map(m -> m.moved(onPage)).toList(), at);
    runs.add(new Run(id, label, kind, ordered));
    return Travel.end(ordered.getLast());
  }
}
