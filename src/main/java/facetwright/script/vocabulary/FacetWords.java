package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.form.Form;
import facetwright.form.Lids;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.api.WindowShape;
import facetwright.script.args.Anew;
import facetwright.script.args.BackingArgs;
import facetwright.script.args.LayerArgs;
import facetwright.script.args.NotchArgs;
import facetwright.script.args.PunchArgs;
import facetwright.script.sandbox.CallException;
import java.util.List;
import java.util.function.BiFunction;

/** What can be done to single facets of a form: windows, holes, layers, leaving them out. */
final class FacetWords {
  private static final Arg<List<String>> FACETS =
      needed("facets", FacetNaming.KIND, FacetNaming.DOES);

  private FacetWords() {}

  static List<Fn<Form>> all() {
    return List.of(name(), window(), hole(), notch(), layer(), backing(), open());
  }

  private static Form each(
      Call call, Form form, String function, BiFunction<Form, String, Form> change) {
    Form changed = form;
    for (String name : FacetNaming.of(form, call.get(FACETS), function)) {
      changed = change.apply(changed, name);
    }
    return changed;
  }

  /** The same, as the script holds it. */
  private static Object held(
      Call call, Form form, String function, BiFunction<Form, String, Form> change) {
    return call.hold(Things.FORM, each(call, form, function, change));
  }

  private static Fn<Form> name() {
    Arg<String> name =
        needed("name", Kinds.text(), "what you call it; several are numbered: \"front 1\"");
    return Fn.<Form>named("name")
        .does(
            "Calls facets by a name of your own, by which papers, messages and later lines know"
                + " them.")
        .takes(FACETS, name)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("House front");
            box({ width: 60, depth: 40, height: 50 })
              .name("side 1", "front")
              .window("front", { width: 14, height: 22 })
              .unfold();
            """)
        .runs(
            (form, call) -> {
              List<String> meant = FacetNaming.of(form, call.get(FACETS), "name");
              String called = call.get(name);
              if (called.equals("all")) {
                throw new CallException(
                    "name: \"all\" means every facet", "Take another name for this one.");
              }
              Form named = form;
              for (int i = 0; i < meant.size(); i++) {
                named =
                    named.withName(
                        meant.get(i), meant.size() == 1 ? called : called + " " + (i + 1));
              }
              return call.hold(Things.FORM, named);
            });
  }

  private static Fn<Form> window() {
    WindowShape.Options options = WindowShape.options();
    return Fn.<Form>named("window")
        .does(
            "Cuts a window into facets: of the facet's own shape with an even border, a rectangle,"
                + " or a shape with equal sides. Places count from the facet's middle, x along its"
                + " most level edge.")
        .takes(FACETS)
        .options(options.all())
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Lantern with windows");
            prism({ sides: 6, side: 34, height: 60 })
              .window("side", { border: 7 })
              .window("top", { sides: 6, across: 20 })
              .unfold();
            """)
        .runs(
            (form, call) -> {
              WindowShape shape = options.read(call, "window");
              return held(
                  call,
                  form,
                  "window",
                  (f, name) ->
                      switch (shape) {
                        case WindowShape.Border(double border) ->
                            f.withWindowInset(name, border, call.site());
                        case WindowShape.Outline(Polygon2 outline) ->
                            f.withWindow(name, outline, call.site());
                      });
            });
  }

  private static Fn<Form> hole() {
    Arg<Vec2> at =
        usual("at", PointKinds.point(), Vec2.ZERO, "its place, counted from the facet's middle");
    return Fn.<Form>named("hole")
        .does("Punches a hole into facets.")
        .takes(FACETS)
        .options(PunchArgs.ACROSS, at)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Bauble to hang");
            pyramid({ sides: 6, side: 30, height: 50 }).hole("base", { across: 4 }).unfold();
            """)
        .runs(
            (form, call) ->
                held(
                    call,
                    form,
                    "hole",
                    (f, name) ->
                        f.withHole(name, call.get(at), call.get(PunchArgs.ACROSS), call.site())));
  }

  private static Fn<Form> notch() {
    Arg<String> edge =
        optional(
            "edge",
            Kinds.text(),
            "which free edge, where there are several: \"top\", \"bottom\", or the lid that it"
                + " meets there");
    NotchArgs as = NotchArgs.inMiddle();
    return Fn.<Form>named("notch")
        .does(
            "Cuts a notch into a free edge of facets: at an opening of the form, or where a lid is"
                + " cut loose, such as for the thumb that opens it.")
        .takes(FACETS)
        .options(as.with(edge))
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Card box");
            box({ width: 64, depth: 24, height: 90 })
              .tuck("top", "side 1", { depth: 15 })
              .notch("side 1", { width: 20, depth: 10, shape: "round" })
              .unfold();
            """)
        .runs(
            (form, call) ->
                held(
                    call,
                    form,
                    "notch",
                    (f, name) ->
                        Lids.notched(
                            f,
                            name,
                            call.has(edge) ? call.get(edge) : "",
                            as.read(call),
                            call.site())));
  }

  private static Fn<Form> layer() {
    return Fn.<Form>named("layer")
        .does("Plans a decorative paper on facets, a little smaller all round.")
        .takes(FACETS)
        .options(LayerArgs.REVEAL, LayerArgs.PAPER)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Papered box");
            box({ width: 60, depth: 60, height: 40 })
              .layer("side", { reveal: "1/16 in", paper: "snow pattern" })
              .unfold();
            """)
        .runs(
            (form, call) ->
                Anew.LAYER.hold(
                    call,
                    form,
                    each(
                        call,
                        form,
                        "layer",
                        (f, name) ->
                            f.withLayer(
                                name,
                                call.get(LayerArgs.REVEAL),
                                call.get(LayerArgs.PAPER),
                                call.site()))));
  }

  private static Fn<Form> backing() {
    return Fn.<Form>named("backing")
        .does(
            "Puts paper or film behind the windows of facets: vellum to soften a light, clear film"
                + " to look through. It keeps 1 mm clear of scores, edges, holes and tabs.")
        .takes(FACETS)
        .options(BackingArgs.PAPER, BackingArgs.OVERLAP, BackingArgs.SHAPE)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Lantern with soft windows");
            prism({ sides: 6, side: 40, height: 70 })
              .window("side", { border: 10 })
              .backing("side", { paper: "vellum", overlap: 4 })
              .unfold();
            """)
        .runs(
            (form, call) -> {
              List<String> named = FacetNaming.of(form, call.get(FACETS), "backing");
              List<String> seen =
                  named.stream().filter(n -> form.facets().get(form.facet(n)).hasWindow()).toList();
              Form backed = form;
              for (String name : seen.isEmpty() ? named : seen) {
                backed = backed.withBacking(name, BackingArgs.read(call));
              }
              return Anew.BACKING.hold(call, form, backed);
            });
  }

  private static Fn<Form> open() {
    return Fn.<Form>named("open")
        .does("Leaves facets out, so that the form is open there.")
        .takes(FACETS)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Pen pot");
            prism({ sides: 6, side: 26, height: 90 }).open("top").unfold();
            """)
        .runs((form, call) -> held(call, form, "open", Form::withoutFacet));
  }
}
