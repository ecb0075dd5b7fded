package facetwright.workbench.desk;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.words.Site;
import java.util.List;

/** What the user points out, in the net, the folded form and the script alike. */
public sealed interface Selection {
  /** Nothing is selected. */
  record Nothing() implements Selection {}

  /** One panel. */
  record OfPanel(int panel) implements Selection {}

  /** One score. */
  record OfScore(int score) implements Selection {}

  /**
   * All that a line of the script made or did.
   *
   * @param sides of panels that it cut free or joined
   */
  record OfLine(int line, List<Integer> panels, List<Integer> scores, List<EdgeRef> sides)
      implements Selection {
    public OfLine {
      panels = List.copyOf(panels);
      scores = List.copyOf(scores);
      sides = List.copyOf(sides);
    }
  }

  /** Nothing is selected. */
  static Selection nothing() {
    return new Nothing();
  }

  /** What a line of the script made or did; nothing where it left no trace in the net. */
  static Selection ofLine(Net net, int line) {
    return new Traces(net, line).selection();
  }

  /** What a finding is about. */
  static Selection of(Net net, Finding finding) {
    return switch (finding.place()) {
      case Place.AtPanel(int p) -> new OfPanel(p);
      case Place.AtScore(int s) -> new OfScore(s);
      case Place.AtJoin _, Place.WholeNet _ -> ofLine(net, finding.site().line());
    };
  }

  /** Whether a panel is selected. */
  default boolean hasPanel(int panel) {
    return switch (this) {
      case OfPanel(int p) -> p == panel;
      case OfLine(_, List<Integer> panels, _, _) -> panels.contains(panel);
      case OfScore _, Nothing _ -> false;
    };
  }

  /** Whether a score is selected. */
  default boolean hasScore(int score) {
    return switch (this) {
      case OfScore(int s) -> s == score;
      case OfLine(_, _, List<Integer> scores, _) -> scores.contains(score);
      case OfPanel _, Nothing _ -> false;
    };
  }

  /** Sides selected for themselves, not as part of a panel or score. */
  default List<EdgeRef> lone() {
    return this instanceof OfLine(_, _, _, List<EdgeRef> sides) ? sides : List.of();
  }

  /** Where in the script the selected thing was made. */
  default Site site(Net net) {
    return switch (this) {
      case OfPanel(int p) when p < net.panels().size() -> net.panels().get(p).site();
      case OfScore(int s) when s < net.scores().size() -> net.scores().get(s).site();
      case OfLine(int line, _, _, _) -> new Site(line, 1);
      default -> Site.NONE;
    };
  }
}
