package facetwright.script.args;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.draft.UsualTab;
import facetwright.net.panel.FlapShape;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import facetwright.words.Decimals;

/** What every function that attaches a tab to a panel is asked. */
public final class TabArgs {
  public static final Arg<Double> DEPTH =
      usual("depth", Kinds.length(), UsualTab.DEPTH, "how far the tab reaches");

  public static final Arg<Double> BEVEL =
      optional(
          "bevel",
          Kinds.degrees(0, 80),
          "how far the tab's ends are cut back from square; "
              + Decimals.plain(UsualTab.BEVEL)
              + ", or what its depth leaves, where left out");

  private TabArgs() {}

  /** The tab that a call asks for: its usual bevel gives way to its depth. */
  public static FlapShape read(Call call) {
    return call.has(BEVEL)
        ? new FlapShape.Tapered(call.get(DEPTH), call.get(BEVEL))
        : new FlapShape.UsualTab(call.get(DEPTH));
  }
}
