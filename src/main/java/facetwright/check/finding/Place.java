package facetwright.check.finding;

import java.io.Serializable;

/** Where in a net a finding stands. */
public sealed interface Place extends Serializable {
  record WholeNet() implements Place {}

  record AtPanel(int panel) implements Place {}

  record AtScore(int score) implements Place {}

  record AtJoin(int join) implements Place {}

  /** The same place of a net that is put behind so many panels, scores and joins of others. */
  default Place after(int panels, int scores, int joins) {
    return switch (this) {
      case WholeNet whole -> whole;
      case AtPanel(int panel) -> new AtPanel(panels + panel);
      case AtScore(int score) -> new AtScore(scores + score);
      case AtJoin(int join) -> new AtJoin(joins + join);
    };
  }
}
