package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.wrap.CellSelection;
import facetwright.net.wrap.CellSide;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.FoldOptions;
import facetwright.script.api.Kinds;
import facetwright.script.api.Things;
import java.util.List;

/** What can be done to chosen cells of a wrap. */
final class CellWords {
  private CellWords() {}

  static List<Fn<CellSelection>> all() {
    return List.of(remove(), gusset(), tabs(), fold(), lap(), tuck(), hook());
  }

  private static Fn<CellSelection> remove() {
    return Fn.<CellSelection>named("remove")
        .does("Cuts the chosen cells away.")
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Crown");
            const crown = wrap({ columns: 8, width: 40, rows: [30, 20], names: ["band", "points"] });
            crown.columns("even").rows("points").remove();
            sheet("A3");
            """)
        .runs((cells, call) -> cells.remove(call.site()));
  }

  private static Fn<CellSelection> gusset() {
    Arg<Pinch> pinch =
        usual("point", Kinds.word(Pinch.class), Pinch.IN, "which way the pinched edge points");
    Arg<CellSide> edge = edge("which edge is pinched, where that is not the free one");
    return Fn.<CellSelection>named("gusset")
        .does(
            "Pinches the free edge of the chosen cells to a point: two slanted scores run from its"
                + " other corners to the middle of the free edge. Where whole walls go on all round"
                + " beyond that edge, they are folded in half there, between their neighbours: a"
                + " fin.")
        .options(pinch, edge)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Half lantern");
            const body = wrap({ columns: 8, width: 26, rows: [20, 55], names: ["foot", "wall"] });
            body.columns("even").rows("wall").gusset({ point: "in" });
            """)
        .runs((cells, call) -> cells.gusset(call.get(pinch), call.get(edge), call.site()));
  }

  private static Arg<CellSide> edge(String does) {
    return optional(
        "edge",
        Kinds.map(
            Kinds.oneOf(List.of("top", "bottom")),
            word -> word.equals("top") ? CellSide.TOP : CellSide.BOTTOM),
        does);
  }

  private static Fn<CellSelection> tuck() {
    Arg<CellSelection> into =
        needed(
            "into", Kinds.thing(Things.CELLS), "the cells behind which they are tucked, as many");
    HoldArgs.Tuck as = HoldArgs.Tuck.fresh();
    Arg<Double> fold = usual("fold", FoldOptions.far(), 90.0, "how far its hinge is folded");
    Arg<CellSide> edge = edge("the edge it hangs on, where both are free; the top if left out");
    return Fn.<CellSelection>named("tuck")
        .does(
            "Hangs a flap on the free edge of each chosen cell that slips in behind another cell"
                + " and holds by friction. It takes no glue; the fold that the cell hangs on stays"
                + " a hinge.")
        .takes(into)
        .options(as.after(fold, edge))
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Carton from a strip");
            const tub = wrap({ widths: [40, 60, 40, 60], rows: [80, 40], names: ["wall", "lid"] });
            tub.columns([1, 2, 3]).rows("lid").remove();
            const lid = tub.columns(4).rows("lid").fold(90);
            lid.tuck(tub.columns(2).rows("wall"), { depth: 15 });
            tub.floor({ tab: 10 });
            """)
        .runs(
            (cells, call) ->
                cells.tuck(
                    call.get(into), call.get(edge), as.flap(call, call.get(fold)), call.site()));
  }

  private static Fn<CellSelection> hook() {
    Arg<CellSelection> others =
        needed("others", Kinds.thing(Things.CELLS), "the cells that these meet, as many");
    HoldArgs.Hook as = HoldArgs.Hook.fresh();
    Arg<CellSide> edge = edge("the edges that meet, where both are free; the top if left out");
    return Fn.<CellSelection>named("hook")
        .does(
            "Gives the free edge of each chosen cell, and that of the cell it meets when made, a"
                + " hook: a flap scored along one half of the edge and cut free along the other."
                + " The two are pushed into each other's cut, and hold without glue.")
        .takes(others)
        .options(as.with(edge))
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Tent to hook");
            const tent = wrap({ widths: [60, 40, 60, 40], rows: [40, 40], names: ["wall", "roof"], seam: 8 });
            tent.columns("even").rows("roof").remove();
            tent.columns(1).rows("roof").hook(tent.columns(3).rows("roof"), { depth: 10 });
            tent.floor({ tab: 8 });
            """)
        .runs(
            (cells, call) ->
                cells.hook(call.get(others), call.get(edge), as.flap(call), call.site()));
  }

  /** Hooks at the seam of a wrap. */
  static Fn<WrapDraft> seam() {
    HoldArgs.Hook as = HoldArgs.Hook.fresh();
    return Fn.<WrapDraft>named("hook")
        .does(
            "Closes the seam by hooks in place of its glued flap: on both edges of every row a flap"
                + " is scored along one half and cut free along the other; the two are pushed into"
                + " each other's cut.")
        .options(as.with())
        .gives(Things.WRAP, "the wrap")
        .example(
            """
            design("Sleeve to hook round a jar");
            wrap({ columns: 8, width: 32, rows: [60] }).hook({ depth: 10 });
            """)
        .runs((wrap, call) -> wrap.seam(as.flap(call), call.site()));
  }

  private static Fn<CellSelection> tabs() {
    Arg<Double> hole =
        optional(
            "hole",
            Kinds.length(0.5, 100),
            "diameter of a hole in each tab: over the middle of the opening it is folded over,"
                + " where it reaches there with 3 mm of card to spare, so that the holes of all"
                + " tabs lie over each other; else at half its depth");
    Arg<Double> bevel =
        optional("bevel", Kinds.degrees(0, 75), "how far each end is cut back from square");
    return Fn.<CellSelection>named("tabs")
        .does(
            "Makes tabs of the chosen cells, their ends cut back so that they keep clear of each"
                + " other.")
        .options(hole, bevel)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Band with tabs");
            const band = wrap({ columns: 6, width: 30, rows: [14, 50, 14] });
            band.rows("rim").tabs({ bevel: 45 });
            """)
        .runs(
            (cells, call) -> {
              if (call.has(bevel)) {
                cells.tabs(call.get(bevel), call.site());
              } else {
                cells.tabs(call.site());
              }
              return call.has(hole) ? cells.hole(call.get(hole), call.site()) : cells;
            });
  }

  private static Fn<CellSelection> fold() {
    Arg<Double> degrees =
        needed("degrees", FoldOptions.far(), "0 is flat, 180 is folded right over");
    Arg<CellSide> side =
        optional(
            "side",
            Kinds.word(CellSide.class),
            "which side's score; where left out, the score to the next row");
    Arg<Sense> sense =
        optional(
            "sense", Kinds.word(Sense.class), "which way its crest points, seen on the outside");
    return Fn.<CellSelection>named("fold")
        .does(
            "Says how far a score of the chosen cells is folded, where it is not what the wrap"
                + " reckons.")
        .takes(degrees)
        .options(side, sense)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Band with flared rim");
            const band = wrap({ columns: 6, width: 30, rows: [14, 50, 14] });
            band.rows("rim").tabs();
            band.rows("rim").fold(60, { sense: "valley" });
            """)
        .runs(
            (cells, call) -> {
              FoldAngle angle = FoldAngle.degrees(call.get(degrees));
              return call.has(side)
                  ? cells.fold(call.get(side), angle, call.get(sense), call.site())
                  : cells.fold(angle, call.get(sense), call.site());
            });
  }

  private static Fn<CellSelection> lap() {
    Arg<CellSelection> over =
        needed("over", Kinds.thing(Things.CELLS), "the cells they end up under, as many");
    return Fn.<CellSelection>named("lap")
        .does("Says that each chosen cell lies flat under another, and is glued there, when made.")
        .takes(over)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Gabled carton", { units: "in" });
            const tub = wrap({ columns: 4, width: 2.5, rows: [3, 1.75, 0.5], names: ["wall", "gable", "fin"] });
            tub.columns("even").rows("gable").gusset();
            tub.columns("even").rows("fin").remove();
            tub.columns(1).rows("fin").lap(tub.columns(3).rows("fin"));
            tub.floor({ tab: 0.5 });
            """)
        .runs((cells, call) -> cells.lap(call.get(over), call.site()));
  }
}
