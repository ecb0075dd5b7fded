package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.fold.pose.Upright;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.fitting.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * Words set on a panel: upright as they are read on the made form, in as many lines as let them be
 * largest, as large as they are asked for or as the panel takes them, and never smaller than {@link
 * Lettering#SMALLEST_PT}.
 *
 * @param lines as they lie in the net
 * @param outline what they take with some room about them; a label of paper is cut so
 * @param size of the type, in mm
 * @param label what is set
 */
public record LabelSetting(List<Text> lines, Polygon2 outline, double size, Label label) {
  /** The largest type where no size is named, in mm. */
  private static final double LARGEST = 12;

  /** Each size tried is so much of the one before. */
  private static final double SMALLER = 0.96;

  private static final int MOST_LINES = 4;

  /** From one base line to the next, as part of the size; common practice, no source. */
  private static final double LEADING = 1.25;

  /** Room about the words, as part of the size. */
  private static final double ROOM = 0.45;

  /** How much less than the most room is as good, in mm. */
  private static final double NEAR = 0.2;

  public LabelSetting {
    lines = List.copyOf(lines);
  }

  /** A label as it is set; nothing where there is no room for it even in the smallest type. */
  public static Optional<LabelSetting> of(Net net, Label label) {
    double smallest = Lettering.pt(Lettering.SMALLEST_PT);
    double size = label.asked().isSized() ? Math.max(smallest, label.asked().size()) : LARGEST;
    List<List<String>> ways = ways(Lettering.printable(label.asked().text()).strip());
    for (; size > smallest; size *= SMALLER) {
      Optional<LabelSetting> set = at(net, label, ways, size);
      if (set.isPresent()) {
        return set;
      }
    }
    return at(net, label, ways, smallest);
  }

  /** All that is set on some panels. */
  public static List<LabelSetting> all(Net net) {
    return net.fittings().labels().stream().flatMap(l -> of(net, l).stream()).toList();
  }

  private static Optional<LabelSetting> at(
      Net net, Label label, List<List<String>> ways, double size) {
    Panel panel = net.panels().get(label.panel());
    Polygon region = panel.region();
    List<Polygon2> openings = panel.openings().stream().map(Opening::outline).toList();
    List<Vec2> places = new ArrayList<>();
    if (openings.isEmpty()) {
      places.add(panel.outline().centroid());
    }
    places.add(Planar.inmost(panel.outline(), openings, NEAR));
    for (List<String> lines : ways) {
      for (Vec2 place : places) {
        Motion2 motion =
            Motion2.turn(Upright.inNet(net, label) - Math.PI / 2).then(Motion2.shift(place));
        Polygon2 box = motion.apply(box(lines, size));
        if (region.covers(Planar.polygon(box))) {
          return Optional.of(new LabelSetting(set(lines, size, motion), box, size, label));
        }
      }
    }
    return Optional.empty();
  }

  private static Polygon2 box(List<String> lines, double size) {
    double wide =
        lines.stream().mapToDouble(l -> Lettering.width(l, Weight.REGULAR, size)).max().orElse(0)
            + 2 * ROOM * size;
    double high = size * (Lettering.CAP_HEIGHT + (lines.size() - 1) * LEADING) + 2 * ROOM * size;
    return Polygon2.rectangle(-wide / 2, -high / 2, wide, high);
  }

  private static List<Text> set(List<String> lines, double size, Motion2 motion) {
    List<Text> set = new ArrayList<>();
    double top = size * ((lines.size() - 1) * LEADING - Lettering.CAP_HEIGHT) / 2;
    for (int i = 0; i < lines.size(); i++) {
      Vec2 foot = new Vec2(0, top - i * LEADING * size);
      set.add(
          new Text(foot, size, 0, Anchor.MIDDLE, Weight.REGULAR, Ink.BLACK, lines.get(i))
              .moved(motion));
    }
    return set;
  }

  /** The words in one line, in two, and so on, each about equally long. */
  private static List<List<String>> ways(String text) {
    List<String> words = List.of(text.split("\\s+", -1));
    List<List<String>> ways = new ArrayList<>();
    for (int n = 1; n <= Math.min(MOST_LINES, words.size()); n++) {
      ways.add(parted(words, n));
    }
    return ways;
  }

  private static List<String> parted(List<String> words, int n) {
    double all = String.join(" ", words).length();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    double done = 0;
    for (int w = 0; w < words.size(); w++) {
      String word = words.get(w);
      boolean isOver = done + word.length() / 2.0 > all * (lines.size() + 1) / n;
      boolean isNeeded = words.size() - w <= n - lines.size() - 1;
      if (!line.isEmpty() && lines.size() < n - 1 && (isOver || isNeeded)) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
      done += word.length() + 1;
    }
    lines.add(line.toString());
    return lines;
  }
}
