package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;

import facetwright.form.Form;
import facetwright.form.change.Chamfer;
import facetwright.form.change.PlaneCut;
import facetwright.form.change.Reshape;
import facetwright.form.change.Stacking;
import facetwright.geom.Vec3;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.FacetNaming;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import java.util.List;

/** What can be done with a form before it is unfolded: its shape. */
final class FormWords {
  private static final Arg<Double> AMOUNT =
      needed("by", Kinds.length(), "how far to cut back, along the facets");

  private FormWords() {}

  static List<Fn<Form>> all() {
    return List.of(
        chamferEdges(),
        chamferCorners(),
        cut(),
        raise(),
        twist(),
        stack(),
        dual(),
        scale(),
        height(),
        volume(),
        area());
  }

  private static Object held(Call call, Form form) {
    return call.hold(Things.FORM, form.withSite(call.site()));
  }

  private static Fn<Form> chamferEdges() {
    return Fn.<Form>named("chamferEdges")
        .does("Cuts every edge back to a narrow facet.")
        .takes(AMOUNT)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Soft-edged cube");
            box({ width: 50, depth: 50, height: 50 }).chamferEdges(8).unfold({ tabs: false });
            """)
        .runs((form, call) -> held(call, form.changed(Chamfer.edges(call.get(AMOUNT)))));
  }

  private static Fn<Form> chamferCorners() {
    return Fn.<Form>named("chamferCorners")
        .does("Cuts every corner back to a facet, at a distance measured along the edges.")
        .takes(AMOUNT)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Float with fourteen facets");
            box({ width: 48, depth: 48, height: 48 }).chamferCorners(14).unfold();
            """)
        .runs((form, call) -> held(call, form.changed(Chamfer.corners(call.get(AMOUNT)))));
  }

  private static Fn<Form> cut() {
    Arg<Vec3> at = needed("at", PointKinds.point3(), "a point of the cut, z up, the base at 0");
    Arg<Vec3> away = needed("away", PointKinds.direction(), "which way the part to take off lies");
    return Fn.<Form>named("cut")
        .does("Cuts the form with a flat plane and takes one part off; the new facet is \"cut\".")
        .options(at, away)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Leaning drum");
            prism({ sides: 6, side: 24, height: 70 })
              .cut({ at: [0, 0, 50], away: [1, 0, 2] })
              .unfold();
            """)
        .runs(
            (form, call) -> held(call, form.changed(PlaneCut.under(call.get(at), call.get(away)))));
  }

  private static Fn<Form> raise() {
    Arg<List<String>> facets = needed("facets", FacetNaming.KIND, FacetNaming.DOES);
    Arg<Double> height =
        needed(
            "height",
            Kinds.length(-1_000, 1_000),
            "how far the point stands out; below 0 sinks it");
    return Fn.<Form>named("raise")
        .does("Raises facets to a point over their middle, or sinks them.")
        .takes(facets, height)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Star top");
            prism({ sides: 5, side: 25, height: 20 }).raise("top", 30).unfold();
            """)
        .runs(
            (form, call) -> {
              Form raised = form;
              for (String name : FacetNaming.of(form, call.get(facets), "raise")) {
                raised = raised.changed(Reshape.raised(name, call.get(height)));
              }
              return held(call, raised);
            });
  }

  private static Fn<Form> twist() {
    Arg<Double> degrees = needed("degrees", Kinds.degrees(-170, 170), "how far the top is turned");
    return Fn.<Form>named("twist")
        .does("Turns the top against the base; sides that would warp become two triangles each.")
        .takes(degrees)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Twisted tower");
            prism({ sides: 6, side: 22, height: 60 }).twist(20).unfold();
            """)
        .runs((form, call) -> held(call, form.changed(Reshape.twisted(call.get(degrees)))));
  }

  private static Fn<Form> stack() {
    Arg<Form> other = needed("other", Kinds.thing(Things.FORM), "the form to put on top");
    return Fn.<Form>named("stack")
        .does("Puts another form's base on this one's top; the two facets must match and vanish.")
        .takes(other)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("House of the harbour master");
            const walls = prism({ sides: 4, side: 40, height: 35 });
            walls.stack(pyramid({ sides: 4, side: 40, height: 25 })).unfold();
            """)
        .runs((form, call) -> held(call, form.changed(Stacking.with(call.get(other)))));
  }

  private static Fn<Form> dual() {
    return Fn.<Form>named("dual")
        .does(
            "The form with a corner for every facet and a facet for every corner; convex forms"
                + " only.")
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Eight-sided float");
            box({ width: 50, depth: 50, height: 50 }).dual().scale(2).unfold();
            """)
        .runs((form, call) -> held(call, form.changed(Reshape.dual())));
  }

  private static Fn<Form> scale() {
    Arg<Double> factor = needed("factor", Kinds.number(0.001, 1_000), "1 leaves it as it is");
    return Fn.<Form>named("scale")
        .does("Makes the whole form larger or smaller.")
        .takes(factor)
        .gives(Things.FORM, "a new form")
        .example(
            """
            design("Half-size box");
            box({ width: 90, depth: 60, height: 60 }).scale(0.5).unfold();
            """)
        .runs((form, call) -> held(call, form.changed(Reshape.scaled(call.get(factor)))));
  }

  private static Fn<Form> height() {
    return Fn.<Form>named("height")
        .does("How tall the form stands.")
        .returns("a number in the design's unit")
        .example(
            """
            design("As tall as wide");
            const gem = antiprism({ sides: 5, side: 30, height: 25 });
            say(["height", gem.height()]);
            gem.unfold();
            """)
        .runs((form, call) -> call.plain(form.bounds().size().z()));
  }

  private static Fn<Form> volume() {
    return Fn.<Form>named("volume")
        .does("What a closed form holds.")
        .returns("a number in the design's unit, cubed")
        .example(
            """
            design("Sweet box");
            const box4 = box({ width: 60, depth: 40, height: 30 });
            say(["holds", box4.volume() / 1000, "millilitres"]);
            box4.unfold();
            """)
        .runs((form, call) -> form.volume() / Math.pow(call.session().unit().mm(), 3));
  }

  private static Fn<Form> area() {
    return Fn.<Form>named("area")
        .does("The card its facets take, tabs not counted.")
        .returns("a number in the design's unit, squared")
        .example(
            """
            design("How much card");
            const drum = prism({ sides: 8, side: 20, height: 40 });
            say(["card", drum.area() / 100, "square centimetres"]);
            drum.unfold();
            """)
        .runs((form, call) -> form.area() / Math.pow(call.session().unit().mm(), 2));
  }
}
