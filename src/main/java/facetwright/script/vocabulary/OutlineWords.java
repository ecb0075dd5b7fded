package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.outline.Outline;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import java.util.List;
import java.util.stream.Stream;

/** The words that make an outline. */
final class OutlineWords {
  private OutlineWords() {}

  static List<Fn<Session>> all() {
    return List.of(regular(), star(), rectangle(), circle(), outline());
  }

  private static Object held(Call call, Outline outline) {
    return call.hold(Things.OUTLINE, outline);
  }

  private static Fn<Session> regular() {
    Arg<Integer> sides =
        needed("sides", Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES), "how many sides");
    Arg<Double> side = optional("side", Kinds.length(), "length of a side");
    Arg<Double> radius = optional("radius", Kinds.length(), "from the middle to a corner");
    Arg<Double> across =
        optional("across", Kinds.length(), "size of the circle through the corners");
    return Fn.<Session>named("regular")
        .does(
            "An outline of equal sides about its middle, side 1 at the front. Give side, radius or"
                + " across.")
        .options(sides, side, radius, across)
        .gives(Things.OUTLINE, "an outline")
        .example(
            """
            design("Seven-sided box");
            prism({ outline: regular({ sides: 7, side: "1 in" }), height: "2 in" }).unfold();
            """)
        .runs(
            (_, call) -> {
              if (Stream.of(side, radius, across).filter(call::has).count() != 1) {
                throw new CallException(
                    "regular needs one measure",
                    "Give side for the length of a side, radius from the middle to a corner, or"
                        + " across for twice that.");
              }
              int n = call.get(sides);
              double out =
                  call.has(side)
                      ? call.get(side) / (2 * Math.sin(Math.PI / n))
                      : call.has(radius) ? call.get(radius) : call.get(across) / 2;
              return held(call, Outline.regular(n, out, call.site()));
            });
  }

  private static Fn<Session> star() {
    Arg<Integer> points = needed("points", Kinds.count(3, 32), "how many points it has");
    Arg<Double> across = needed("across", Kinds.length(), "size of the circle through its points");
    Arg<Double> inner =
        usual(
            "inner",
            Kinds.number(0.05, 0.99),
            0.5,
            "how far out the corners between the points lie, 0.5 halfway");
    return Fn.<Session>named("star")
        .does("The outline of a star about its middle, a point straight up.")
        .options(points, across, inner)
        .gives(Things.OUTLINE, "an outline")
        .example(
            """
            design("Star box with lid", { units: "in" });
            sheet("A3", { weight: 220 });
            const five = star({ points: 5, across: 4, inner: 0.5 });
            prism({ outline: five, height: 1.5 }).open("top").unfold({ part: "box" });
            prism({ outline: five.offset("card"), height: 0.5 }).open("top").unfold({ part: "lid" });
            """)
        .runs(
            (_, call) ->
                held(
                    call,
                    Outline.star(
                        call.get(points), call.get(across), call.get(inner), call.site())));
  }

  private static Fn<Session> rectangle() {
    Arg<Double> width = needed("width", Kinds.length(), "left to right");
    Arg<Double> height = needed("height", Kinds.length(), "bottom to top, or front to back");
    return Fn.<Session>named("rectangle")
        .does("The outline of a rectangle about its middle, side 1 at the bottom.")
        .options(width, height)
        .gives(Things.OUTLINE, "an outline")
        .example(
            """
            design("Round-cornered card");
            panel("card", { outline: rectangle({ width: 90, height: 55 }).rounded(6) });
            """)
        .runs(
            (_, call) ->
                held(call, Outline.rectangle(call.get(width), call.get(height), call.site())));
  }

  private static Fn<Session> circle() {
    Arg<Double> across = needed("across", Kinds.length(), "its diameter");
    return Fn.<Session>named("circle")
        .does("The outline of a circle about its middle: a round window, or a round panel.")
        .options(across)
        .gives(Things.OUTLINE, "an outline")
        .example(
            """
            design("Porthole box");
            box({ width: 60, depth: 40, height: 50 })
              .window("side 1", { outline: circle({ across: 28 }) })
              .unfold();
            """)
        .runs((_, call) -> held(call, Outline.circle(call.get(across), call.site())));
  }

  private static Fn<Session> outline() {
    Arg<List<Vec2>> points = needed("points", PointKinds.corners(), "its corners [x, y] in order");
    return Fn.<Session>named("outline")
        .does(
            "An outline through points, hollow corners allowed. Its middle is [0, 0]; side 1 runs"
                + " from the first point to the second, seen counter-clockwise.")
        .takes(points)
        .gives(Things.OUTLINE, "an outline")
        .example(
            """
            design("Corner box");
            const corner = outline([[0, 0], [60, 0], [60, 25], [25, 25], [25, 60], [0, 60]]);
            prism({ outline: corner, height: 30 }).open("top").unfold();
            """)
        .runs((_, call) -> held(call, Outline.through(call.get(points), call.site())));
  }
}
