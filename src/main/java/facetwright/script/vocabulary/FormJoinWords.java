package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;

import facetwright.form.EdgeTab.Bearer;
import facetwright.form.Form;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** How the facets of a form are held to each other, said before it is laid flat. */
final class FormJoinWords {
  private FormJoinWords() {}

  static List<Fn<Form>> all() {
    return List.of(tab());
  }

  private static Fn<Form> tab() {
    Arg<List<String>> facets = needed("facets", FacetNaming.KIND, FacetNaming.DOES);
    Arg<List<String>> others =
        needed("others", FacetNaming.KIND, "the facets that these meet, said alike");
    Arg<List<String>> on =
        optional(
            "on",
            FacetNaming.KIND,
            "which of the two bears the tab, such as \"top\"; \"none\" where there is to be none;"
                + " the one with more room where left out");
    Arg<Double> depth =
        optional(
            "depth", Kinds.length(1, 100), "how deep it is; as deep as the others if left out");
    Arg<Double> bevel =
        optional(
            "bevel",
            Kinds.degrees(0, 80),
            "how far its ends are cut back from square; as the others' if left out");
    return Fn.<Form>named("tab")
        .does(
            "Says which facet bears the tab where two meet, and how it is made. Where they hang"
                + " together in the net, there is no tab.")
        .takes(facets, others)
        .options(on, depth, bevel)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Box with a lid to glue");
            box({ width: 60, depth: 40, height: 30 })
              .tab("top", "side", { on: "top", depth: 12 })
              .tab("side", "base", { on: "side", bevel: 30 })
              .unfold({ as: "strip" });
            """)
        .runs(
            (form, call) -> {
              List<String> ones = FacetNaming.of(form, call.get(facets), "tab");
              List<String> twos = FacetNaming.of(form, call.get(others), "tab");
              Form changed = form;
              boolean met = false;
              for (String one : ones) {
                for (String two : twos) {
                  if (!form.between(form.facet(one), form.facet(two)).isEmpty()) {
                    met = true;
                    changed =
                        changed.withTab(
                            one,
                            two,
                            bearer(form, call, on, one, two),
                            call.has(depth) ? call.get(depth) : 0,
                            call.has(bevel) ? 90 - call.get(bevel) : 0,
                            call.site());
                  }
                }
              }
              if (!met) {
                throw new CallException(
                    "tab: "
                        + words(call.get(facets))
                        + " and "
                        + words(call.get(others))
                        + " do not meet",
                    "Name two facets that share an edge, or words for several that do.");
              }
              return call.hold(Things.FORM, changed);
            });
  }

  private static Bearer bearer(Form form, Call call, Arg<List<String>> on, String one, String two) {
    if (!call.has(on)) {
      return Bearer.EITHER;
    }
    List<String> said = call.get(on);
    if (said.equals(List.of("none"))) {
      return Bearer.NONE;
    }
    List<String> bearing = FacetNaming.of(form, said, "tab");
    if (bearing.contains(one) == bearing.contains(two)) {
      throw new CallException(
          "tab: on: "
              + words(said)
              + (bearing.contains(one) ? " names both \"" : " names neither \"")
              + one
              + (bearing.contains(one) ? "\" and \"" : "\" nor \"")
              + two
              + "\"",
          "Give on as the one that bears the tab, or \"none\".");
    }
    return bearing.contains(one) ? Bearer.THIS : Bearer.OTHER;
  }

  private static String words(List<String> said) {
    return "\"" + String.join("\", \"", said) + "\"";
  }
}
