package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;

import facetwright.form.Form;
import facetwright.form.make.Solids;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Ask;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** The words that make a form. */
final class SolidWords {
  static final Arg<Integer> SIDES =
      needed("sides", Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES), "how many sides it has round");
  static final Arg<Double> SIDE =
      optional("side", Kinds.length(), "length of one edge of the base; give this or radius");
  static final Arg<Double> RADIUS =
      optional(
          "radius", Kinds.length(), "from the axis to a corner of the base; give this or side");
  static final Arg<Double> HEIGHT = needed("height", Kinds.length(), "how tall it stands");

  private SolidWords() {}

  static List<Fn<Session>> all() {
    return List.of(
        BaseWords.prism(),
        box(),
        BaseWords.pyramid(),
        BaseWords.frustum(),
        antiprism(),
        bipyramid(),
        turned(),
        hull(),
        mesh());
  }

  /** Makes one form from a measure of its base. */
  @FunctionalInterface
  interface Maker {
    Form make(Call call, int sides, double measure, double height);
  }

  static Form sized(String name, Call call, Arg<Integer> sides, Maker bySide, Maker byRadius) {
    if (call.has(SIDE) == call.has(RADIUS)) {
      throw new CallException(
          name + " needs side or radius, one of the two",
          "Give side for the length of a base edge, or radius from the axis to a corner.");
    }
    int n = call.get(sides);
    double height = call.get(HEIGHT);
    return call.has(SIDE)
        ? bySide.make(call, n, call.get(SIDE), height)
        : byRadius.make(call, n, call.get(RADIUS), height);
  }

  static Object held(Call call, Form form) {
    return call.hold(Things.FORM, form.withSite(call.site()));
  }

  private static Fn<Session> simple(
      String name, String does, String example, Maker bySide, Maker byRadius) {
    return Fn.<Session>named(name)
        .does(does)
        .options(SIDES, SIDE, RADIUS, HEIGHT)
        .gives(Things.FORM, "a form")
        .example(example)
        .runs((_, call) -> held(call, sized(name, call, SIDES, bySide, byRadius)));
  }

  private static Fn<Session> box() {
    Arg<Double> width = needed("width", Kinds.length(), "left to right");
    Arg<Double> depth = needed("depth", Kinds.length(), "front to back");
    return Fn.<Session>named("box")
        .does("A box with square corners. Its facets are named as a prism's.")
        .options(width, depth, HEIGHT)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Soap box");
            box({ width: 70, depth: 45, height: 25 }).unfold();
            """)
        .runs(
            (_, call) ->
                held(call, Solids.box(call.get(width), call.get(depth), call.get(HEIGHT))));
  }

  private static Fn<Session> antiprism() {
    return simple(
        "antiprism",
        "A drum whose top is turned half a side against its base, with triangles for sides.",
        """
        design("Fog drum");
        antiprism({ sides: 6, side: 28, height: 34 }).unfold();
        """,
        (_, n, side, h) -> Solids.antiprismBySide(n, side, h),
        (_, n, radius, h) -> Solids.antiprism(n, radius, h));
  }

  private static Fn<Session> bipyramid() {
    return simple(
        "bipyramid",
        "Two pyramids on one waist; the height is from point to point.",
        """
        design("Float bauble");
        bipyramid({ sides: 8, side: 18, height: 80 }).unfold();
        """,
        (_, n, side, h) -> Solids.bipyramidBySide(n, side, h / 2),
        (_, n, radius, h) -> Solids.bipyramid(n, radius, h / 2));
  }

  private static Fn<Session> turned() {
    Arg<List<Vec2>> profile =
        needed(
            "profile",
            Kinds.list(PointKinds.point(), 2, 40),
            "points [radius, height] from the bottom up; a radius of 0 closes to a point");
    return Fn.<Session>named("turned")
        .does(
            "A profile turned about an upright axis in so many flat sides: a gem, a vase, a buoy.")
        .options(SIDES, profile)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Cut gem");
            turned({ sides: 8, profile: [[0, 0], [26, 30], [17, 42]] }).unfold();
            """)
        .runs((_, call) -> held(call, Solids.turned(call.get(profile), call.get(SIDES))));
  }

  private static Fn<Session> hull() {
    Arg<List<Vec3>> points =
        needed("points", Kinds.list(PointKinds.point3(), 4, 500), "points [x, y, z], z up");
    return Fn.<Session>named("skin")
        .does("The tightest convex body round points, as if a skin were drawn over them.")
        .takes(points)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Pebble");
            skin([[0, 0, 0], [50, 0, 0], [0, 50, 0], [50, 50, 0], [25, 25, 40], [25, 10, 30]]).unfold();
            """)
        .runs((_, call) -> held(call, Solids.hull(call.get(points))));
  }

  private static Fn<Session> mesh() {
    Arg<List<Vec3>> points =
        needed("points", Kinds.list(PointKinds.point3(), 3, 2_000), "the corners [x, y, z], z up");
    Arg<List<List<Integer>>> facets =
        needed(
            "facets",
            Kinds.list(Kinds.list(Kinds.count(0, 1_999), 3, 100), 1, 1_000),
            "each facet's corners by their number in points, from 0, counter-clockwise seen from"
                + " outside");
    return Fn.<Session>named("mesh")
        .does("A form given corner by corner and facet by facet; it may be open.")
        .options(points, facets)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Wedge");
            mesh({
              points: [[0, 0, 0], [60, 0, 0], [60, 40, 0], [0, 40, 0], [0, 0, 30], [0, 40, 30]],
              facets: [[0, 3, 2, 1], [0, 1, 4], [3, 5, 2], [0, 4, 5, 3], [1, 2, 5, 4]],
            }).unfold();
            """)
        .runs((_, call) -> held(call, Solids.mesh(call.get(points), call.get(facets))));
  }
}
