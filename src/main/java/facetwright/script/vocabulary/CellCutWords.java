package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;

import facetwright.geom.Vec2;
import facetwright.net.wrap.CellSelection;
import facetwright.net.wrap.WrapDraft;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Thing;
import facetwright.script.api.Things;
import facetwright.script.api.WindowShape;
import facetwright.script.args.BackingArgs;
import facetwright.script.args.LayerArgs;
import facetwright.script.args.PunchArgs;
import java.util.List;

/**
 * Windows, holes and papers of a wrap's cells: of cells chosen before, and of the wrap itself with
 * the cells' names, as forms take those of facets.
 */
final class CellCutWords {
  private static final Arg<List<String>> CELLS =
      optional(
          "cells",
          Kinds.list(
              Kinds.text(List.of("wall", "odd wall", "even wall", "wall 1", "column 1", "all")),
              1,
              1_000),
          "which: a row such as \"wall\", one such as \"wall 3\", every second such as \"odd\" or"
              + " \"odd wall\", \"column 3\", several as a list, or \"all\"; all but tabs where"
              + " left out");

  private static final Arg<Vec2> PLACE = Placing.before();

  private CellCutWords() {}

  /**
   * On whose behalf a function works.
   *
   * @param first the argument before the options
   * @param which words for its cells
   * @param cells the cells that a call means
   */
  private record Side<T>(Thing<T> thing, Arg<?> first, String which, Choice<T> cells) {
    Fn.Builder<T> named(String name, String does) {
      return Fn.<T>named(name)
          .does(does.formatted(which))
          .gives(thing, thing == Things.WRAP ? "the wrap" : "the chosen cells");
    }
  }

  /** The cells that a call means. */
  @FunctionalInterface
  private interface Choice<T> {
    CellSelection of(T receiver, Call call);
  }

  private static final Side<CellSelection> CHOSEN =
      new Side<>(Things.CELLS, PLACE, "each chosen cell", (cells, _) -> cells);

  private static final Side<WrapDraft> NAMED =
      new Side<>(
          Things.WRAP,
          CELLS,
          "cells, all or by name",
          (wrap, call) -> wrap.called(call.has(CELLS) ? call.get(CELLS) : List.of(), call.site()));

  static List<Fn<CellSelection>> onCells() {
    return List.of(
        window(
            CHOSEN,
            """
            design("Lit band");
            const band = wrap({ columns: 6, width: 32, rows: [60] });
            band.columns("odd").rows("wall").window({ border: 7 });
            band.columns("even").rows("wall").window({ sides: 8, across: 20 });
            """),
        hole(
            CHOSEN,
            """
            design("Band to thread");
            const band = wrap({ columns: 8, width: 22, rows: [40] });
            band.columns("odd").rows("wall").hole({ across: 4, at: [0, 12] });
            """),
        layer(
            CHOSEN,
            """
            design("Papered drum", { units: "in" });
            const drum = wrap({ columns: 8, width: "1 1/4 in", rows: ["2 1/2 in"], seam: "1/2 in" });
            drum.rows("wall").layer({ reveal: "1/16 in", paper: "waves" });
            sheet("A3");
            """),
        backing(
            CHOSEN,
            """
            design("Softly lit band");
            const band = wrap({ columns: 6, width: 44, rows: [70], seam: 7 });
            const panes = band.rows("wall").window({ border: 12 });
            panes.backing({ paper: "vellum" });
            """));
  }

  static List<Fn<WrapDraft>> onWrap() {
    return List.of(
        window(
            NAMED,
            """
            design("Lit band");
            const band = wrap({ columns: 6, width: 32, rows: [60] });
            band.window("odd wall", { border: 7 });
            band.window(["wall 2", "wall 4"], { sides: 8, across: 20 });
            """),
        hole(
            NAMED,
            """
            design("Band to thread");
            const band = wrap({ columns: 8, width: 22, rows: [40] });
            band.hole("odd", { across: 4, at: [0, 12] });
            """),
        layer(
            NAMED,
            """
            design("Papered drum");
            const drum = wrap({ columns: 8, width: 30, rows: [12, 60, 12] });
            drum.rows("rim").tabs();
            drum.layer({ reveal: 2, paper: "waves" });
            sheet("A3");
            """),
        backing(
            NAMED,
            """
            design("Softly lit band");
            const band = wrap({ columns: 6, width: 44, rows: [70], seam: 7 });
            band.window("all", { border: 12 }).backing("all", { paper: "vellum" });
            """));
  }

  private static <T> Fn<T> window(Side<T> side, String example) {
    WindowShape.Options options = WindowShape.options();
    return side.named("window", "Cuts a window into the middle of %s.")
        .takes(side.first())
        .options(options.all())
        .example(example)
        .runs(
            (receiver, call) -> {
              CellSelection cells = side.cells().of(receiver, call);
              Vec2 by = side.first().equals(PLACE) ? Placing.or(call, PLACE) : Vec2.ZERO;
              switch (options.read(call, "window").moved(by)) {
                case WindowShape.Border(double border) -> cells.window(border, call.site());
                case WindowShape.Outline(var outline) -> cells.window(outline, call.site());
              }
              return receiver;
            });
  }

  private static <T> Fn<T> hole(Side<T> side, String example) {
    Arg<Vec2> at = optional("at", PointKinds.point(), "its place, counted from the cell's middle");
    return side.named("hole", "Punches a hole into %s.")
        .takes(side.first())
        .options(PunchArgs.ACROSS, at)
        .example(example)
        .runs(
            (receiver, call) -> {
              boolean isPlaced = side.first().equals(PLACE) && call.has(PLACE);
              Vec2 place =
                  isPlaced ? Placing.sum(call, PLACE, at) : call.has(at) ? call.get(at) : null;
              side.cells().of(receiver, call).hole(call.get(PunchArgs.ACROSS), place, call.site());
              return receiver;
            });
  }

  private static <T> Fn<T> layer(Side<T> side, String example) {
    return named(side, "layer", "Plans a decorative paper on %s, a little smaller all round.")
        .options(LayerArgs.REVEAL, LayerArgs.PAPER)
        .example(example)
        .runs(
            (receiver, call) -> {
              side.cells()
                  .of(receiver, call)
                  .layer(call.get(LayerArgs.REVEAL), call.get(LayerArgs.PAPER), call.site());
              return receiver;
            });
  }

  private static <T> Fn<T> backing(Side<T> side, String example) {
    return named(
            side,
            "backing",
            "Puts paper or film behind the windows of %s. It keeps 1 mm clear of scores, edges,"
                + " holes and tabs.")
        .options(BackingArgs.PAPER, BackingArgs.OVERLAP, BackingArgs.SHAPE)
        .example(example)
        .runs(
            (receiver, call) -> {
              side.cells().of(receiver, call).backing(BackingArgs.read(call));
              return receiver;
            });
  }

  /** One that takes no place: cells may be named before its options. */
  private static <T> Fn.Builder<T> named(Side<T> side, String name, String does) {
    Fn.Builder<T> fn = side.named(name, does);
    return side.first().equals(CELLS) ? fn.takes(CELLS) : fn;
  }
}
