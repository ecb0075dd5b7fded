package facetwright.check.finding;

import java.io.Serializable;

/** Where in a net a finding stands. */
public sealed interface Place extends Serializable {
  record WholeNet() implements Place {}

  record AtPanel(int panel) implements Place {}

  record AtScore(int score) implements Place {}

  record AtJoin(int join) implements Place {}
}
