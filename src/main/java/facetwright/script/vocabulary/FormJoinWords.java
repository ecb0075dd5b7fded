package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.form.EdgeTab;
import facetwright.form.EdgeTab.Bearer;
import facetwright.form.FlapCut;
import facetwright.form.Form;
import facetwright.form.Lids;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.Things;
import facetwright.script.args.Anew;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** How the facets of a form are held to each other, said before it is laid flat. */
final class FormJoinWords {
  private FormJoinWords() {}

  static List<Fn<Form>> all() {
    return List.of(tab(), hook(), tuck(), tongue(), hinge());
  }

  private static Fn<Form> tab() {
    Arg<List<String>> facets = needed("facets", FacetNaming.KIND, FacetNaming.DOES);
    Arg<List<String>> others =
        needed("others", FacetNaming.KIND, "the facets that these meet, said alike");
    Arg<List<String>> on =
        optional(
            "on",
            FacetNaming.KIND,
            "which of the two bears the tab, such as \"top\"; \"both\" for one on half of each"
                + " edge; \"none\" where there is to be none; the one with more room where left"
                + " out");
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
              double deep = call.has(depth) ? call.get(depth) : 0;
              double back = call.has(bevel) ? 90 - call.get(bevel) : 0;
              return Anew.JOIN.hold(
                  call,
                  form,
                  eachPair(
                      form,
                      call,
                      "tab",
                      facets,
                      others,
                      (changed, one, two) -> {
                        Bearer bearer = bearer(form, call, on, one, two);
                        EdgeTab tab = EdgeTab.glued(bearer, deep, back, call.site());
                        return changed.withTab(one, two, tab);
                      }));
            });
  }

  /** What is done to a form for each pair of facets that meet. */
  @FunctionalInterface
  private interface PairChange {
    Form of(Form form, String one, String two);
  }

  private static Form eachPair(
      Form form,
      Call call,
      String word,
      Arg<List<String>> facets,
      Arg<List<String>> others,
      PairChange change) {
    Form changed = form;
    for (String one : FacetNaming.of(form, call.get(facets), word)) {
      for (String two : FacetNaming.of(form, call.get(others), word)) {
        if (!form.between(form.facet(one), form.facet(two)).isEmpty()) {
          changed = change.of(changed, one, two);
        }
      }
    }
    if (changed == form) {
      throw new CallException(
          word
              + ": "
              + words(call.get(facets))
              + " and "
              + words(call.get(others))
              + " do not meet",
          "Name two facets that share an edge, or words for several that do.");
    }
    return changed;
  }

  private static Fn<Form> hook() {
    Arg<List<String>> facets = needed("facets", FacetNaming.KIND, FacetNaming.DOES);
    Arg<List<String>> others =
        needed("others", FacetNaming.KIND, "the facets that these meet, said alike");
    HoldArgs.Hook as = HoldArgs.Hook.fresh();
    return Fn.<Form>named("hook")
        .does(
            "Gives both edges a hook where two facets meet: a flap scored along half of the edge"
                + " and cut free along the other half. The two are pushed into each other's cut,"
                + " and hold without glue.")
        .takes(facets, others)
        .options(as.with())
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Favour box to open again");
            box({ width: 60, depth: 60, height: 40 })
              .open("top")
              .hook("side 1", "side 4", { depth: 12 })
              .unfold({ as: "strip" });
            """)
        .runs(
            (form, call) -> {
              EdgeTab hook = as.edge(call);
              return Anew.JOIN.hold(
                  call,
                  form,
                  eachPair(
                      form,
                      call,
                      "hook",
                      facets,
                      others,
                      (changed, one, two) -> changed.withTab(one, two, hook)));
            });
  }

  private static Fn<Form> tuck() {
    Arg<String> facet = needed("facet", Kinds.text(), "the lid: the facet that is tucked in");
    Arg<String> into = needed("into", Kinds.text(), "the facet behind which it is tucked");
    HoldArgs.Tuck as = HoldArgs.Tuck.fresh();
    Arg<Double> dust =
        optional(
            "dust",
            Kinds.length(0, 200),
            "how deep the dust flaps at its other sides are, which fold in first; 0 for none; as"
                + " deep as the tuck, where there is room, if left out");
    Arg<String> hinge =
        optional(
            "hinge",
            Kinds.text(),
            "the facet that it hangs on; the one across from where it is tucked in, or that its"
                + " hinge was said on before, if left out");
    return Fn.<Form>named("tuck")
        .does(
            "Makes a facet a lid to open and shut: a flap slips in behind the facet named and holds"
                + " by friction, dust flaps fold in under it, and it hangs on the facet across by"
                + " a hinge. It takes no glue.")
        .takes(facet, into)
        .options(as.after(dust, hinge))
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Tuck-top carton");
            box({ width: 60, depth: 30, height: 90 }).tuck("top", "side 1", { depth: 15 }).unfold();
            """)
        .runs(
            (form, call) ->
                Anew.JOIN.hold(
                    call,
                    form,
                    Lids.tucked(
                        call.has(hinge)
                            ? Lids.hinged(form, call.get(facet), call.get(hinge), call.site())
                            : form,
                        call.get(facet),
                        call.get(into),
                        as.lid(call, call.has(dust) ? call.get(dust) : Double.NaN),
                        call.site())));
  }

  private static Fn<Form> tongue() {
    Arg<List<String>> facets =
        needed("facets", FacetNaming.KIND, "what bears the tongue: " + FacetNaming.DOES);
    Arg<List<String>> others =
        needed("into", FacetNaming.KIND, "the facets with the slot, which these meet, said alike");
    Arg<Double> inset =
        usual("inset", Kinds.length(), 10.0, "how far the slot lies in from the shared edge");
    Arg<Double> depth =
        usual("depth", Kinds.length(), 10.0, "how far the tongue reaches beyond the slot");
    Arg<Double> width =
        optional("width", Kinds.length(), "how wide it is; a third of the edge if left out");
    Arg<Double> slot = HoldArgs.slot();
    return Fn.<Form>named("tongue")
        .does(
            "Closes the edge where two facets meet without glue: a flap on the one is folded in"
                + " behind the other and runs to a slot there, through which a tongue at its end"
                + " comes out.")
        .takes(facets, others)
        .options(inset, depth, width, slot)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Lantern to fold flat again");
            prism({ sides: 6, side: 40, height: 90 })
              .open(["base", "top"])
              .window("side", { width: 12, height: 50 })
              .tongue("side 6", "side 1", { inset: 7, depth: 6 })
              .unfold({ as: "strip" });
            """)
        .runs(
            (form, call) -> {
              FlapCut cut =
                  FlapCut.tongue(
                      call.get(inset),
                      call.has(width) ? call.get(width) : Double.NaN,
                      HoldArgs.slot(call, slot));
              EdgeTab tongue = EdgeTab.tongue(Bearer.THIS, call.get(depth), cut, call.site());
              return call.hold(
                  Things.FORM,
                  eachPair(
                      form,
                      call,
                      "tongue",
                      facets,
                      others,
                      (changed, one, two) -> changed.withTab(one, two, tongue)));
            });
  }

  private static Fn<Form> hinge() {
    Arg<String> facet = needed("facet", Kinds.text(), "the facet that opens and shuts");
    Arg<String> on = needed("on", Kinds.text(), "the facet it hangs on");
    return Fn.<Form>named("hinge")
        .does(
            "Makes a facet a lid that hangs on one other by a fold that stays a hinge; its other"
                + " sides are cut and stay loose.")
        .takes(facet, on)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Box with a lid to lift");
            box({ width: 60, depth: 40, height: 30 }).hinge("top", "side 3").unfold();
            """)
        .runs(
            (form, call) ->
                Anew.JOIN.hold(
                    call, form, Lids.hinged(form, call.get(facet), call.get(on), call.site())));
  }

  private static Bearer bearer(Form form, Call call, Arg<List<String>> on, String one, String two) {
    if (!call.has(on)) {
      return Bearer.EITHER;
    }
    List<String> said = call.get(on);
    if (said.equals(List.of("none"))) {
      return Bearer.NONE;
    }
    if (said.equals(List.of("both"))) {
      return Bearer.BOTH;
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
          "Give on as the one that bears the tab, \"both\" or \"none\".");
    }
    return bearing.contains(one) ? Bearer.THIS : Bearer.OTHER;
  }

  private static String words(List<String> said) {
    return "\"" + String.join("\", \"", said) + "\"";
  }
}
