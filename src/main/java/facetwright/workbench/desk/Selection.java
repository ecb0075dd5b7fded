package facetwright.workbench.desk;

import facetwright.net.Net;
import facetwright.net.Site;
import java.util.List;
import java.util.stream.IntStream;

/** What the user points out, in the net, the folded form and the script alike. */
public sealed interface Selection {
  /** Nothing is selected. */
  record Nothing() implements Selection {}

  /** One panel. */
  record OfPanel(int panel) implements Selection {}

  /** One score. */
  record OfScore(int score) implements Selection {}

  /** All that a line of the script made. */
  record OfLine(int line, List<Integer> panels, List<Integer> scores) implements Selection {
    public OfLine {
      panels = List.copyOf(panels);
      scores = List.copyOf(scores);
    }
  }

  /** Nothing is selected. */
  static Selection nothing() {
    return new Nothing();
  }

  /** What a line of the script made; nothing where it made no panel or score. */
  static Selection ofLine(Net net, int line) {
    List<Integer> panels =
        IntStream.range(0, net.panels().size())
            .filter(p -> net.panels().get(p).site().line() == line)
            .boxed()
            .toList();
    List<Integer> scores =
        IntStream.range(0, net.scores().size())
            .filter(s -> net.scores().get(s).site().line() == line)
            .boxed()
            .toList();
    return panels.isEmpty() && scores.isEmpty() ? nothing() : new OfLine(line, panels, scores);
  }

  /** Whether a panel is selected. */
  default boolean hasPanel(int panel) {
    return switch (this) {
      case OfPanel(int p) -> p == panel;
      case OfLine(_, List<Integer> panels, _) -> panels.contains(panel);
      case OfScore _, Nothing _ -> false;
    };
  }

  /** Whether a score is selected. */
  default boolean hasScore(int score) {
    return switch (this) {
      case OfScore(int s) -> s == score;
      case OfLine(_, _, List<Integer> scores) -> scores.contains(score);
      case OfPanel _, Nothing _ -> false;
    };
  }

  /** Where in the script the selected thing was made. */
  default Site site(Net net) {
    return switch (this) {
      case OfPanel(int p) when p < net.panels().size() -> net.panels().get(p).site();
      case OfScore(int s) when s < net.scores().size() -> net.scores().get(s).site();
      case OfLine(int line, _, _) -> new Site(line, 1);
      default -> Site.NONE;
    };
  }
}
