package facetwright.script.args;

import static facetwright.script.api.Arg.needed;

import facetwright.script.api.Arg;
import facetwright.script.api.Kinds;

/** What every function that punches holes is asked. */
public final class PunchArgs {
  public static final Arg<Double> ACROSS = needed("across", Kinds.punch(), "the punch's diameter");

  private PunchArgs() {}
}
