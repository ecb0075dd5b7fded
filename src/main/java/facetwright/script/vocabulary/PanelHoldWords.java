package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.FoldAngle;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.TongueFlap;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.FoldOptions;
import facetwright.script.api.Kinds;
import facetwright.script.api.Things;
import java.util.List;

/** What holds panels together without glue, and folds that open and shut. */
final class PanelHoldWords {
  private static final Arg<String> EDGE = PanelWords.EDGE;

  private PanelHoldWords() {}

  static List<Fn<CardPanel>> all() {
    return List.of(hook(), tuck(), tongue(), hinge());
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
        .options(as.with())
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
            (panel, call) -> {
              call.session()
                  .panels()
                  .join(
                      panel,
                      call.get(EDGE),
                      call.get(other),
                      call.get(otherEdge),
                      as.flap(call),
                      call.site());
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

  private static Fn<CardPanel> tongue() {
    Arg<CardPanel> into =
        needed("into", Kinds.thing(Things.PANEL), "the panel with the slot that it goes through");
    Arg<String> otherEdge =
        needed("otherEdge", Kinds.text(), "the edge of that panel along which the slot lies");
    Arg<Double> inset = usual("inset", Kinds.length(), 8.0, "how far the slot lies in from it");
    Arg<Double> width =
        optional("width", Kinds.length(), "how wide it is; a third of its edge if left out");
    Arg<Double> depth = usual("depth", Kinds.length(), 10.0, "how far it reaches through");
    Arg<Double> at =
        optional(
            "at",
            Kinds.length(),
            "where its middle is along its edge, from the left; the edge's middle if left out");
    Arg<Double> slot = HoldArgs.slot();
    Arg<Double> fold = usual("fold", FoldOptions.far(), 90.0, "how far it is folded over");
    return Fn.<CardPanel>named("tongue")
        .does(
            "Attaches a tongue that goes through a slot in another panel and is folded over outside"
                + " it, and cuts the slot. It holds without glue.")
        .takes(EDGE, into, otherEdge)
        .options(inset, width, depth, at, slot, fold)
        .gives(Things.PANEL, "the tongue, a panel")
        .example(
            """
            design("Lantern on its base");
            const base = panel("base", { width: 70, height: 70 });
            const walls = [panel("wall 1", { width: 50, height: 80 })];
            for (let k = 2; k < 5; k++) {
              walls.push(walls.at(-1).attach(k === 2 ? "right" : "top", "wall " + k, { depth: 50, fold: 90 }));
            }
            walls[3].join("top", walls[0], "left", { depth: 8 });
            const feet = ["bottom", "right", "right", "right"], sides = ["bottom", "left", "top", "right"];
            walls.forEach((wall, k) => wall.tongue(feet[k], base, sides[k], { inset: 10 }));
            """)
        .runs(
            (panel, call) ->
                call.hold(
                    Things.PANEL,
                    call.session()
                        .panels()
                        .tongue(
                            panel,
                            call.get(EDGE),
                            call.get(into),
                            call.get(otherEdge),
                            new TongueFlap(
                                call.has(width) ? call.get(width) : Double.NaN,
                                call.get(depth),
                                call.has(at) ? call.get(at) : Double.NaN,
                                call.get(inset),
                                HoldArgs.slot(call, slot),
                                FoldAngle.degrees(call.get(fold))),
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
}
