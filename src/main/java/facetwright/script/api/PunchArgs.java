package facetwright.script.api;

import static facetwright.script.api.Arg.needed;

/** What every function that punches holes is asked. */
public final class PunchArgs {
  public static final Arg<Double> ACROSS = needed("across", Kinds.punch(), "the punch's diameter");

  private PunchArgs() {}
}
