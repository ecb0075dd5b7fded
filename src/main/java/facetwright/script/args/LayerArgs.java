package facetwright.script.args;

import static facetwright.script.api.Arg.usual;

import facetwright.net.Layer;
import facetwright.script.api.Arg;
import facetwright.script.api.Kinds;

/** The options of every function that plans a decorative paper. */
public final class LayerArgs {
  /** A sixteenth of an inch, near enough, a side; common practice, no source. */
  public static final Arg<Double> REVEAL =
      usual("reveal", Kinds.length(0, 100), 1.5, "the border of card left showing");

  public static final Arg<String> PAPER =
      usual("paper", Kinds.text(), Layer.UNNAMED, "the name of the paper, to sort by");

  private LayerArgs() {}
}
