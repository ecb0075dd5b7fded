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
import facetwright.script.api.FoldOptions;
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
    return List.of(join(), hook(), lap(), tuck(), hinge(), slit());
  }

  private static Fn<CardPanel> join() {
    Arg<CardPanel> other = needed("other", Kinds.thing(Things.PANEL), "the panel it meets");
    Arg<String> otherEdge = needed("otherEdge", Kinds.text(), "the other panel's edge");
    Arg<Boolean> tab = usual("tab", Kinds.flag(), true, "whether a tab is added to hold them");
    Arg<String> on =
        optional(
            "on",
            Kinds.text(),
            "the name of the panel that bears the tab, \"both\" for one on half of each edge, or"
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

  private static Fn<CardPanel> hook() {
    Arg<CardPanel> other = needed("other", Kinds.thing(Things.PANEL), "the panel it meets");
    Arg<String> otherEdge = needed("otherEdge", Kinds.text(), "the other panel's edge");
    HoldArgs.Hook as = HoldArgs.Hook.fresh();
    return Fn.<CardPanel>named("hook")
        .does(
            "Says that an edge meets another panel's edge when made, and gives each a hook: a flap"
                + " scored along half of its edge and cut free along the other half. The two are"
                + " pushed into each other's cut, and hold without glue.")
        .takes(EDGE, other, otherEdge)
        .options(as.all())
        .gives(Things.PANEL, "the panel it was called on")
        .example(
            """
            design("Napkin ring to open again");
            const [front, right, back, left] = [0, 1, 2, 3].reduce((all, k) => [...all,
              k ? all[k - 1].attach(k === 1 ? "right" : "top", "side " + (k + 1), { depth: 40, fold: 90 })
                : panel("side 1", { width: 40, height: 45 })], []);
            left.hook("top", front, "left", { depth: 12 });
            """)
        .runs(
            (panel, call) ->
                paired(
                    call,
                    panel,
                    call.get(other),
                    call.get(EDGE),
                    call.get(otherEdge),
                    as.flap(call)));
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

  private static Fn<CardPanel> tuck() {
    Arg<CardPanel> into =
        needed("into", Kinds.thing(Things.PANEL), "the panel behind which it is tucked");
    HoldArgs.Tuck as = HoldArgs.Tuck.fresh();
    Arg<Double> fold = usual("fold", FoldOptions.far(), 90.0, "how far its hinge is folded");
    return Fn.<CardPanel>named("tuck")
        .does(
            "Attaches a flap that slips behind another panel and holds by friction: it is scored"
                + " and folded, and takes no glue. The fold that the panel hangs on stays a hinge.")
        .takes(EDGE, into)
        .options(as.after(fold))
        .gives(Things.PANEL, "the flap, a panel")
        .example(
            """
            design("Box to open again");
            const floor = panel("floor", { width: 60, height: 40 });
            const [front, right, back, left] = ["bottom", "right", "top", "left"].map((edge) =>
              floor.attach(edge, edge + " wall", { depth: 30, fold: 90 }));
            for (const wall of [front, back]) {
              wall.join("right", wall === front ? left : right, "left", { depth: 8 });
              wall.join("left", wall === front ? right : left, "right", { depth: 8 });
            }
            const lid = back.attach("top", "lid", { depth: 40, fold: 90 });
            lid.tuck("top", front, { depth: 12 });
            """)
        .runs(
            (panel, call) ->
                call.hold(
                    Things.PANEL,
                    call.session()
                        .panels()
                        .tuck(
                            panel,
                            call.get(EDGE),
                            call.get(into),
                            as.flap(call, call.get(fold)),
                            call.site())));
  }

  private static Fn<CardPanel> hinge() {
    Arg<CardPanel> on = needed("on", Kinds.thing(Things.PANEL), "the panel it hangs on");
    return Fn.<CardPanel>named("hinge")
        .does(
            "Says that the fold between this panel and the one it hangs on stays a hinge: it is"
                + " folded both ways, opens and shuts. That of a lid that is tucked in is one"
                + " without being said.")
        .takes(on)
        .gives(Things.PANEL, "the panel it was called on")
        .example(
            """
            design("Matchbook");
            const back = panel("back", { width: 50, height: 60 });
            const cover = back.attach("top", "cover", { depth: 58, fold: 175 });
            cover.hinge(back);
            """)
        .runs(
            (panel, call) -> {
              call.session().panels().hinge(panel, call.get(on), call.site());
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
