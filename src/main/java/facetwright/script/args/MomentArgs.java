package facetwright.script.args;

import static facetwright.script.api.Arg.optional;

import facetwright.net.fitting.Moment.When;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.sandbox.CallException;
import java.util.List;
import java.util.stream.Stream;

/** The options of every function that says when something is done while a piece is glued. */
public final class MomentArgs {
  /** One name, or several. */
  public static final Kind<List<String>> NAMES = Kinds.list(Kinds.panelOrName(), 1, 200);

  public static final Arg<List<String>> BEFORE =
      optional(
          "before",
          NAMES,
          "it comes before this is glued: a panel, or its name such as \"seam flap\", several as a"
              + " list, or the word they share");

  public static final Arg<List<String>> AFTER =
      optional("after", NAMES, "it comes after this is glued, named likewise");

  public static final Arg<String> AT =
      optional(
          "at",
          Kinds.oneOf(List.of("first", "last")),
          "it comes before all that is glued, or after it; of parts put together last when they"
              + " are");

  private MomentArgs() {}

  /** The panels that a call names. */
  public static List<String> names(Call call) {
    return call.has(BEFORE) ? call.get(BEFORE) : call.has(AFTER) ? call.get(AFTER) : List.of();
  }

  /**
   * When a call wants it.
   *
   * @param usual where it does not say
   */
  public static When when(Call call, String function, When usual) {
    long said = Stream.of(BEFORE, AFTER, AT).filter(call::has).count();
    if (said > 1) {
      throw new CallException(
          function + ": a step has one moment, and " + said + " are named",
          "Keep one of before, after and at.");
    }
    return call.has(BEFORE)
        ? When.BEFORE
        : call.has(AFTER)
            ? When.AFTER
            : call.has(AT) ? (call.get(AT).equals("first") ? When.FIRST : When.LAST) : usual;
  }
}
