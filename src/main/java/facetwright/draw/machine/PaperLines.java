package facetwright.draw.machine;

import facetwright.draw.Areas;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The decorative papers of one piece for a cutting machine: a run for each paper, its pieces in
 * rows, face up, each with what falls out of it first.
 */
public final class PaperLines {
  /** Pieces lie so far apart and from the edge, in mm. */
  private static final double APART = 4;

  /** Rows are so wide at most, in mm, where no piece is wider: what common machines take. */
  private static final double WIDE = 200;

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{Nd}]+");

  private PaperLines() {}

  /** Where the net has no layers, nothing on a page of no size to speak of. */
  public static MachineLines of(Net net) {
    Pace.step();
    Map<String, List<List<Polygon2>>> byPaper = new LinkedHashMap<>();
    for (Layer layer : net.layers()) {
      byPaper
          .computeIfAbsent(layer.paper(), _ -> new ArrayList<>())
          .addAll(Areas.rings(Areas.layer(net, layer)));
    }
    List<Run> runs = new ArrayList<>();
    double width = 2 * APART;
    double y = APART;
    for (Map.Entry<String, List<List<Polygon2>>> paper : byPaper.entrySet()) {
      List<Mark> lines = new ArrayList<>();
      List<List<Polygon2>> pieces = new ArrayList<>(paper.getValue());
      pieces.sort(Comparator.comparingDouble((List<Polygon2> p) -> -box(p).height()));
      double x = APART;
      double high = 0;
      for (List<Polygon2> piece : pieces) {
        piece.forEach(ring -> Pace.step(ring.size()));
        Box2 box = box(piece);
        if (x > APART && x + box.width() > WIDE) {
          x = APART;
          y += high + APART;
          high = 0;
        }
        Vec2 shift = new Vec2(x - box.minX(), y - box.minY());
        piece.reversed().forEach(ring -> lines.add(around(ring, shift)));
        high = Math.max(high, box.height());
        x += box.width() + APART;
        width = Math.max(width, x);
      }
      y += high + APART;
      if (!lines.isEmpty()) {
        runs.add(
            new Run(id(paper.getKey()), "cut from " + name(paper.getKey()), LineKind.LAYER, lines));
      }
    }
    return new MachineLines(width, y, runs);
  }

  private static Mark around(Polygon2 ring, Vec2 shift) {
    return new Stroke(
            ring.corners().stream().map(c -> c.plus(shift)).toList(), true, LineKind.LAYER)
        .asRound();
  }

  private static Box2 box(List<Polygon2> piece) {
    return piece.getFirst().box();
  }

  private static String name(String paper) {
    return paper.isBlank() ? "paper" : paper;
  }

  private static String id(String paper) {
    String id =
        BETWEEN
            .matcher(name(paper).toLowerCase(Locale.ROOT))
            .replaceAll("-")
            .replaceAll("^-|-$", "");
    return id.isEmpty() ? "paper" : id;
  }
}
