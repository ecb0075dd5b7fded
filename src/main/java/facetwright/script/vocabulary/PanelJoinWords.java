package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.Join.Hold;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.PanelBuild;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.Things;
import facetwright.script.args.TabArgs;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** What panels have to do with each other: edges that meet, laps, slits. */
final class PanelJoinWords {
  private static final Arg<String> EDGE = PanelWords.EDGE;

  private PanelJoinWords() {}

  static List<Fn<CardPanel>> all() {
    return List.of(join(), lap(), slit());
  }

  private static Fn<CardPanel> join() {
    Arg<CardPanel> other = needed("other", Kinds.thing(Things.PANEL), "the panel it meets");
    Arg<String> otherEdge = needed("otherEdge", Kinds.text(), "the other panel's edge");
    Arg<Boolean> tab = usual("tab", Kinds.flag(), true, "whether a tab is added to hold them");
    Arg<String> on =
        optional(
            "on",
            Kinds.panelOrName(),
            "the panel that bears the tab or its name, \"both\" for one on half of each edge, or"
                + " \"none\"; the one it is called on where"
                + " left out");
    return Fn.<CardPanel>named("join")
        .does(
            "Says that an edge meets another panel's edge when made, and adds the tab that holds"
                + " them.")
        .takes(EDGE, other, otherEdge)
        .options(tab, on, TabArgs.DEPTH, TabArgs.BEVEL)
        .gives(Things.PANEL, "the panel it was called on")
        .example(
            """
            design("Corner shelf");
            const shelf = panel("shelf", { width: 60, height: 60 });
            const back = shelf.attach("top", "back", { depth: 40, fold: 90, sense: "valley" });
            const side = shelf.attach("left", "side", { depth: 40, fold: 90, sense: "valley" });
            back.join("left", side, "right", { depth: 9 });
            """)
        .runs(
            (panel, call) -> {
              PanelBuild build = call.session().panels();
              CardPanel met = call.get(other);
              if (met == panel) {
                throw new CallException(
                    "join: two edges of one panel, \""
                        + panel.name()
                        + "\", can't meet: it stays flat",
                    "Join an edge of another panel; what is to bend takes a score, and so two"
                        + " panels.");
              }
              if (call.get(tab) && call.has(on) && call.get(on).equals("both")) {
                return paired(
                    call,
                    panel,
                    met,
                    call.get(EDGE),
                    call.get(otherEdge),
                    new PairedFlap(
                        call.get(TabArgs.DEPTH),
                        call.has(TabArgs.BEVEL) ? call.get(TabArgs.BEVEL) : Double.NaN,
                        Hold.GLUE,
                        0));
              }
              CardPanel bearer = bearer(call, on, panel, met);
              if (call.get(tab) && bearer != null) {
                boolean mine = bearer == panel;
                build.join(
                    bearer,
                    call.get(mine ? EDGE : otherEdge),
                    (mine ? met : panel).edge(call.get(mine ? otherEdge : EDGE), call.site()),
                    TabArgs.read(call),
                    call.site());
              } else {
                build.join(
                    panel.edge(call.get(EDGE), call.site()),
                    met.edge(call.get(otherEdge), call.site()),
                    null,
                    call.site());
              }
              return panel;
            });
  }

  /** The panel that bears the tab, or null where none is to. */
  private static CardPanel bearer(Call call, Arg<String> on, CardPanel panel, CardPanel met) {
    if (!call.has(on) || call.get(on).equals(panel.name())) {
      return panel;
    }
    if (call.get(on).equals("none")) {
      return null;
    }
    if (call.get(on).equals(met.name())) {
      return met;
    }
    throw new CallException(
        "join: on: \"" + call.get(on) + "\" is neither of the two panels",
        "Give on as \"" + panel.name() + "\", \"" + met.name() + "\", \"both\" or \"none\".");
  }

  private static CardPanel paired(
      Call call, CardPanel panel, CardPanel met, String edge, String otherEdge, PairedFlap flap) {
    call.session().panels().join(panel, edge, met, otherEdge, flap, call.site());
    return panel;
  }

  private static Fn<CardPanel> lap() {
    Arg<CardPanel> over = needed("over", Kinds.thing(Things.PANEL), "the panel it ends up under");
    return Fn.<CardPanel>named("lap")
        .does("Says that this panel lies flat under another when made.")
        .takes(over)
        .gives(Things.PANEL, "the panel it was called on")
        .example(
            """
            design("Sleeve");
            const one = panel("one", { width: 60, height: 40 });
            const two = one.attach("right", "two", { depth: 60, fold: 180 });
            const flap = two.attach("top", "flap", { depth: 12, fold: 180 });
            flap.lap(one);
            """)
        .runs(
            (panel, call) -> {
              call.session().panels().lap(panel, call.get(over), call.site());
              return panel;
            });
  }

  private static Fn<CardPanel> slit() {
    Arg<CardPanel> other =
        needed("other", Kinds.thing(Things.PANEL), "the panel beside it in the net");
    Arg<String> otherEdge = needed("otherEdge", Kinds.text(), "the other panel's edge");
    return Fn.<CardPanel>named("slit")
        .does("Says that two edges lying along each other in the net are parted by one cut.")
        .takes(EDGE, other, otherEdge)
        .gives(Things.PANEL, "the panel it was called on")
        .example(
            """
            design("Two flaps");
            const back = panel("back", { width: 80, height: 60 });
            const left = back.attach("top", "left flap", { depth: 30, width: 40, offset: 0, fold: 90 });
            const right = back.attach("top", "right flap", { depth: 30, width: 40, offset: 40, fold: 45 });
            left.slit("right", right, "left");
            """)
        .runs(
            (panel, call) -> {
              call.session()
                  .panels()
                  .slit(
                      panel.edge(call.get(EDGE), call.site()),
                      call.get(other).edge(call.get(otherEdge), call.site()),
                      call.site());
              return panel;
            });
  }
}
