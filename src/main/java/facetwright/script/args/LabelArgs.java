package facetwright.script.args;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.fitting.Lettered;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;

/** The arguments of every function that puts words on a panel. */
public final class LabelArgs {
  public static final Arg<String> TEXT = needed("text", Kinds.text(), "the words");

  public static final Arg<Double> SIZE =
      optional(
          "size",
          Kinds.length(1, 300),
          "the size of the type; where left out as large as the panel takes it, up to 12 mm");

  public static final Arg<Boolean> CUT =
      usual(
          "cut",
          Kinds.flag(),
          false,
          "whether it is a label cut of paper and glued on, rather than printed on the card");

  public static final String DOES =
      "It is turned so that it is read upright on the made form, and set in several lines where"
          + " that reads larger.";

  private LabelArgs() {}

  /** What a call asks for. */
  public static Lettered read(Call call) {
    return new Lettered(
        call.get(TEXT),
        call.has(SIZE) ? call.get(SIZE) : Lettered.LARGEST,
        call.get(CUT),
        call.site());
  }
}
