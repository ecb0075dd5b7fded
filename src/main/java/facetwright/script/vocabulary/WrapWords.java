package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.Ask;
import facetwright.net.Join.Hold;
import facetwright.net.draft.UsualTab;
import facetwright.net.panel.PairedFlap;
import facetwright.net.wrap.CellSelection;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** The words for a wrap: columns round, rows high, and choosing cells. */
final class WrapWords {
  /** What rows are called when the script does not name them. */
  private static final List<String> ROW_WORDS =
      List.of("rim", "upper rim", "lower rim", "wall", "all");

  private static final String LAST = "last";
  private static final String BOTH = "both";
  private static final String NONE = "none";

  private WrapWords() {}

  static List<Fn<Session>> top() {
    return List.of(wrap());
  }

  static List<Fn<WrapDraft>> onWrap() {
    return List.of(
        columns((draft, call, which) -> which.from(draft, call)),
        rows((draft, call, which) -> which.from(draft, call)),
        floor(),
        CellWords.seam());
  }

  private static Fn<WrapDraft> floor() {
    Arg<Double> tab =
        usual("tab", Kinds.length(0, 100), UsualTab.DEPTH, "how deep its tabs are; 0 for none");
    Arg<Integer> column =
        usual(
            "column",
            Kinds.count(1, Ask.MOST_SIDES),
            2,
            "the column it hangs on; tabs hold it to the others");
    return Fn.<WrapDraft>named("floor")
        .does(
            "Closes the foot with a floor: it hangs on one column, and its tabs are glued inside"
                + " the others.")
        .options(tab, column)
        .gives(Things.WRAP, "the wrap")
        .example(
            """
            design("Tub");
            const tub = wrap({ columns: 6, width: 30, rows: [60] });
            tub.floor({ tab: 9 });
            sheet("A3");
            """)
        .runs((draft, call) -> draft.floor(call.get(column), call.get(tab), call.site()));
  }

  static List<Fn<CellSelection>> onCells() {
    return List.of(
        columns((cells, call, which) -> which.from(cells, call)),
        rows((cells, call, which) -> which.from(cells, call)));
  }

  private static Fn<Session> wrap() {
    Arg<Integer> columns =
        optional(
            "columns",
            Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES),
            "how many equal columns round");
    Arg<List<Double>> width =
        optional(
            "width",
            Kinds.list(Kinds.length(), 1, WrapDraft.MOST_ROWS + 1),
            "width of each column; of columns that taper [at the foot, at the top] of the walls, or"
                + " at each line between rows, from the foot up");
    Arg<List<List<Double>>> widths =
        optional(
            "widths",
            Kinds.either(
                Kinds.map(Kinds.list(Kinds.length(), Ask.FEWEST_SIDES, Ask.MOST_SIDES), List::of),
                Kinds.list(
                    Kinds.list(Kinds.length(), Ask.FEWEST_SIDES, Ask.MOST_SIDES),
                    2,
                    WrapDraft.MOST_ROWS + 1)),
            "instead: each column's own width; of columns that taper a list for the foot and one"
                + " for the top, or one for each line between rows");
    Arg<List<Double>> rows =
        needed(
            "rows",
            Kinds.list(Kinds.length(), 1, WrapDraft.MOST_ROWS),
            "the rows' heights, bottom to top; of columns that taper up the middle of column 1");
    Arg<List<String>> names =
        optional(
            "names",
            Kinds.list(Kinds.text(), 1, WrapDraft.MOST_ROWS),
            "the rows' names, bottom to top; of three or more the outermost are \"rim\" and the"
                + " others \"wall\", of fewer all are \"wall\"");
    Arg<Double> seam =
        usual("seam", Kinds.length(0, 200), 12.0, "width of the flap that closes it; 0 for none");
    Arg<String> on =
        usual(
            "on",
            Kinds.oneOf(List.of(LAST, BOTH, NONE)),
            LAST,
            "what bears the seam's flap: the \"last\" column; \"both\" edges, each on half of every"
                + " row; \"none\" where the edges only meet and are taped");
    return Fn.<Session>named("wrap")
        .does(
            "Columns side by side, rows above each other, and a flap to close them round: the way a"
                + " scoring board likes it. Columns count from 1, left to right on the outside.")
        .options(columns, width, widths, rows, names, seam, on)
        .gives(Things.WRAP, "a wrap")
        .example(
            """
            design("Harbour lantern", { units: "mm" });
            const body = wrap({ columns: 8, width: 28, rows: [28, 60, 60, 28], seam: 12 });
            body.columns("even").rows("rim").remove();
            body.columns("even").rows("wall").gusset();
            body.columns("odd").rows("rim").tabs({ hole: 3 });
            sheet("A4");
            """)
        .runs(
            (session, call) -> {
              List<WrapRow> built = rows(call.get(rows), call.has(names) ? call.get(names) : null);
              WrapDraft draft = draft(call, columns, width, widths, built);
              seam(draft, call.get(on), call.get(seam), call.site());
              session.add(
                  draft,
                  session.twice().with(draft.twice(), draft::build),
                  (net, p) -> draft.spoken(net.panels().get(p).name()));
              return call.hold(Things.WRAP, draft);
            });
  }

  private static void seam(WrapDraft draft, String on, double deep, Site site) {
    if (on.equals(BOTH) && deep > 0) {
      draft.seam(new PairedFlap(deep, Double.NaN, Hold.GLUE, 0), site);
    } else {
      draft.seam(on.equals(NONE) ? 0 : deep, site);
    }
  }

  private static WrapDraft draft(
      Call call,
      Arg<Integer> columns,
      Arg<List<Double>> width,
      Arg<List<List<Double>>> widths,
      List<WrapRow> rows) {
    boolean equal = call.has(columns) && call.has(width) && !call.has(widths);
    boolean own = call.has(widths) && !call.has(columns) && !call.has(width);
    if (!equal && !own) {
      throw new CallException(
          "wrap needs columns and width, or widths, and was given "
              + given(
                  call.has(columns) ? "columns" : "",
                  call.has(width) ? "width" : "",
                  call.has(widths) ? "widths" : ""),
          "For columns that are alike write columns: 6, width: 30; for others widths:"
              + " [30, 20, 30, 20] and neither columns nor width.");
    }
    List<List<Double>> lines =
        equal
            ? call.get(width).stream().map(w -> Collections.nCopies(call.get(columns), w)).toList()
            : call.get(widths);
    return lines.size() == 1
        ? WrapDraft.of(lines.getFirst(), rows, call.site())
        : WrapDraft.tapered(lines, rows, call.site());
  }

  /** What was given, in words; empty ones are left out. */
  static String given(String... options) {
    List<String> all = Arrays.stream(options).filter(o -> !o.isEmpty()).toList();
    return all.isEmpty() ? "none of them" : String.join(" and ", all);
  }

  private static List<WrapRow> rows(List<Double> heights, List<String> names) {
    if (names == null) {
      return WrapRow.usual(heights);
    }
    if (names.size() != heights.size()) {
      throw new CallException(
          "wrap: " + heights.size() + " rows but " + names.size() + " names",
          "Give one name for each row, bottom to top.");
    }
    List<WrapRow> rows = new ArrayList<>();
    for (int i = 0; i < heights.size(); i++) {
      rows.add(new WrapRow(names.get(i), heights.get(i)));
    }
    return rows;
  }

  /** Which columns or rows: by a word or by numbers. */
  private record Which(String word, List<Integer> numbers, boolean columns) {
    CellSelection from(WrapDraft draft, Call call) {
      return from(draft.all(), call);
    }

    CellSelection from(CellSelection cells, Call call) {
      if (columns) {
        return word == null
            ? cells.columns(numbers, call.site())
            : cells.columns(word, call.site());
      }
      return word == null ? cells.rows(numbers, call.site()) : cells.rows(word, call.site());
    }
  }

  /** How a selection is narrowed from what the function is called on. */
  @FunctionalInterface
  private interface Narrowing<T> {
    CellSelection narrow(T receiver, Call call, Which which);
  }

  private static <T> Fn<T> columns(Narrowing<T> narrowing) {
    Kind<Which> kind =
        Kinds.either(
            Kinds.map(Kinds.text(WrapDraft.COLUMN_WORDS), w -> new Which(w, null, true)),
            Kinds.map(
                Kinds.list(Kinds.count(1, Ask.MOST_SIDES), 1, Ask.MOST_SIDES),
                n -> new Which(null, n, true)));
    Arg<Which> which =
        needed("which", kind, "\"even\", \"odd\", \"all\", or numbers such as [1, 4]");
    return Fn.<T>named("columns")
        .does("Chooses columns; column 1 is odd.")
        .takes(which)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Window band");
            const band = wrap({ columns: 6, width: 30, rows: [50] });
            band.columns([1, 3, 5]).rows("all").window({ border: 8 });
            band.rows("wall").columns("even").layer({ reveal: 1.5 });
            """)
        .runs(
            (receiver, call) ->
                call.hold(Things.CELLS, narrowing.narrow(receiver, call, call.get(which))));
  }

  private static <T> Fn<T> rows(Narrowing<T> narrowing) {
    Kind<Which> kind =
        Kinds.either(
            Kinds.map(Kinds.text(ROW_WORDS), w -> new Which(w, null, false)),
            Kinds.map(
                Kinds.list(Kinds.count(1, WrapDraft.MOST_ROWS), 1, WrapDraft.MOST_ROWS),
                n -> new Which(null, n, false)));
    Arg<Which> which =
        needed(
            "which",
            kind,
            "a row's name such as \"rim\" or \"wall\"; \"upper rim\" or \"lower rim\", the highest"
                + " or lowest of that name; \"all\"; or numbers from the bottom");
    return Fn.<T>named("rows")
        .does("Chooses rows.")
        .takes(which)
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Papered band");
            const band = wrap({ columns: 6, width: 30, rows: [15, 50, 15] });
            band.rows("rim").tabs();
            band.columns("odd").rows("wall").layer({ reveal: 1.5 });
            """)
        .runs(
            (receiver, call) ->
                call.hold(Things.CELLS, narrowing.narrow(receiver, call, call.get(which))));
  }
}
