package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;

import facetwright.form.Form;
import facetwright.geom.Vec2;
import facetwright.net.blank.Blank;
import facetwright.net.fitting.Lettered;
import facetwright.net.panel.CardPanel;
import facetwright.net.wrap.CellSelection;
import facetwright.script.api.Arg;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.args.LabelArgs;
import java.util.List;
import java.util.stream.Stream;

/** Words on facets, cells and panels. */
final class LabelWords {
  private LabelWords() {}

  /**
   * What all of them have alike.
   *
   * @param where it writes, in words
   * @param at the arguments that say where
   */
  private static <T> Fn.Builder<T> writes(String where, Arg<?>... at) {
    return Fn.<T>named("label")
        .does("Writes on " + where + ". " + LabelArgs.DOES)
        .takes(Stream.concat(Stream.of(at), Stream.of(LabelArgs.TEXT)).toArray(Arg<?>[]::new))
        .options(LabelArgs.SIZE, LabelArgs.CUT);
  }

  static Fn<Form> onForm() {
    Arg<List<String>> facets = needed("facets", FacetNaming.KIND, FacetNaming.DOES);
    return LabelWords.<Form>writes("facets", facets)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Favour box");
            box({ width: 60, depth: 60, height: 40 })
              .label("side 1", "Tidewell winter walk")
              .label("top", "for Mirren", { size: 6, cut: true })
              .unfold();
            """)
        .runs(
            (form, call) -> {
              Form changed = form;
              for (String name : FacetNaming.of(form, call.get(facets), "label")) {
                List<Lettered> before = form.facets().get(form.facet(name)).labels();
                if (!before.isEmpty()) {
                  call.session()
                      .twice()
                      .beside("label", name, before.getLast().site(), call.site());
                }
                changed = changed.withLabel(name, LabelArgs.read(call));
              }
              return call.hold(Things.FORM, changed);
            });
  }

  static Fn<CellSelection> onCells() {
    return LabelWords.<CellSelection>writes("each chosen cell")
        .gives(Things.CELLS, "the chosen cells")
        .example(
            """
            design("Band with names");
            const band = wrap({ columns: 4, width: 40, rows: [50], seam: 8 });
            band.columns(1).rows(1).label("Harbour", { size: 7 });
            band.columns(3).rows(1).label("Guild", { size: 7 });
            """)
        .runs((cells, call) -> cells.label(LabelArgs.read(call)));
  }

  static Fn<CardPanel> onPanel() {
    return LabelWords.<CardPanel>writes("the panel")
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Place card");
            const front = panel("front", { width: 90, height: 50 });
            front.label("Mirren", { size: 14 });
            front.attach("top", "back", { depth: 50, fold: 120 });
            """)
        .runs((panel, call) -> panel.label(LabelArgs.read(call)));
  }

  static Fn<Blank> onBlank() {
    Arg<Vec2> at = needed("at", PointKinds.point(), "a point in the panel");
    return LabelWords.<Blank>writes("the panel at a point", at)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Gift tag");
            blank({ width: 60, height: 90 }).hole([30, 82], { across: 4 }).label([30, 40], "with thanks");
            """)
        .runs((blank, call) -> blank.label(call.get(at), LabelArgs.read(call)));
  }
}
