package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;

import facetwright.net.Ask;
import facetwright.net.outline.Outline;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartCard;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** What can be done with an outline, and asked of it. */
final class OutlineChangeWords {
  private OutlineChangeWords() {}

  static List<Fn<Outline>> all() {
    return List.of(offset(), rounded(), mirrored(), turned(), width(), height(), area());
  }

  private static Object held(Call call, Outline outline) {
    return call.hold(Things.OUTLINE, outline);
  }

  /** How far to set off. */
  private sealed interface By {
    record Length(double mm) implements By {}

    record Card(int way) implements By {}
  }

  private static final List<String> CARD = List.of("card", "-card");

  private static Fn<Outline> offset() {
    Arg<By> by =
        needed(
            "by",
            Kinds.<By>either(
                Kinds.map(Kinds.length(-Ask.LONGEST, Ask.LONGEST), By.Length::new),
                Kinds.map(Kinds.oneOf(CARD), word -> new By.Card(word.equals("card") ? 1 : -1))),
            "how far outward, below 0 inward; \"card\" as far as a lid needs to slide over,"
                + " \"-card\" as an insert needs to slide in: two thicknesses of the card named by"
                + " sheet, for wall and tab, and a quarter of a millimetre of play");
    Arg<Double> weight =
        optional(
            "weight",
            Kinds.number(40, 1_000),
            "for \"card\": grams per square metre of the card of what is set off, where that is not"
                + " the sheet's");
    Arg<Double> caliper =
        optional(
            "caliper",
            Kinds.length(0.01, 5),
            "for \"card\": how thick that card is, where it has been measured");
    return Fn.<Outline>named("offset")
        .does(
            "Sets every side off by one distance, outward or inward; corners stay sharp, or round"
                + " about the same middle.")
        .takes(by)
        .options(weight, caliper)
        .gives(Things.OUTLINE, "a new outline")
        .example(
            """
            design("Hexagon with a lid");
            sheet("A4", { weight: 220 });
            const six = regular({ sides: 6, side: 30 });
            prism({ outline: six, height: 25 }).open("top").unfold({ part: "box" });
            prism({ outline: six.offset("card"), height: 10 }).open("top").unfold({ part: "lid" });
            """)
        .runs(
            (outline, call) ->
                held(
                    call,
                    outline.offset(
                        switch (call.get(by)) {
                          case By.Length(double mm) -> {
                            if (call.has(weight) || call.has(caliper)) {
                              throw new CallException(
                                  "offset: weight and caliper go with \"card\", not with a length",
                                  "Write offset(\"card\", { weight: 400 }), or leave them out.");
                            }
                            yield mm;
                          }
                          case By.Card(int way) ->
                              way
                                  * call.session()
                                      .slidesOver(
                                          PartCard.thick(call.get(caliper), call.get(weight)));
                        },
                        call.site())));
  }

  private static Fn<Outline> rounded() {
    Arg<Double> radius = needed("radius", Kinds.length(), "of the arc, which meets both sides");
    Arg<List<Integer>> corners =
        optional(
            "corners", PointKinds.cornerNumbers(), "which corners, from 1; all where left out");
    Arg<Integer> sides =
        optional(
            "sides",
            Kinds.count(1, 32),
            "makes each arc of so many straight sides, so that it can be folded");
    return Fn.<Outline>named("rounded")
        .does(
            "Rounds corners by arcs, which are cut as arcs. For the base of a form give sides:"
                + " folds are straight.")
        .takes(radius)
        .options(corners, sides)
        .gives(Things.OUTLINE, "a new outline")
        .example(
            """
            design("Chapel front");
            const arch = rectangle({ width: 20, height: 32 }).rounded(10, { corners: [3, 4] });
            panel("front", { width: 60, height: 80 }).window({ outline: arch });
            """)
        .runs(
            (outline, call) -> {
              List<Integer> which = call.has(corners) ? call.get(corners) : List.of();
              Outline round = outline.rounded(call.get(radius), which, call.site());
              return held(call, call.has(sides) ? round.faceted(call.get(sides)) : round);
            });
  }

  private static Fn<Outline> mirrored() {
    return Fn.<Outline>named("mirrored")
        .does("Left to right, about the upright line through its middle.")
        .gives(Things.OUTLINE, "a new outline")
        .example(
            """
            design("Pair of brackets");
            const bracket = outline([[0, 0], [50, 0], [50, 20], [20, 20], [20, 50], [0, 50]]);
            panel("left", { outline: bracket });
            panel("right", { outline: bracket.mirrored() });
            """)
        .runs((outline, call) -> held(call, outline.mirrored()));
  }

  private static Fn<Outline> turned() {
    Arg<Double> degrees = needed("degrees", Kinds.degrees(-360, 360), "how far, counter-clockwise");
    return Fn.<Outline>named("turned")
        .does("Turns it about its middle.")
        .takes(degrees)
        .gives(Things.OUTLINE, "a new outline")
        .example(
            """
            design("Box on its point");
            prism({ outline: regular({ sides: 4, side: 40 }).turned(45), height: 30 }).unfold();
            """)
        .runs((outline, call) -> held(call, outline.turned(call.get(degrees))));
  }

  private static Fn<Outline> width() {
    return Fn.<Outline>named("width")
        .does("How wide it is, from its left to its right.")
        .returns("a number in the design's unit")
        .example(
            """
            design("As wide as a star");
            const five = star({ points: 5, across: 80 });
            box({ width: five.width() + 4, depth: five.height() + 4, height: 20 }).unfold();
            """)
        .runs((outline, call) -> call.plain(outline.box().width()));
  }

  private static Fn<Outline> height() {
    return Fn.<Outline>named("height")
        .does("How high it is, from its bottom to its top.")
        .returns("a number in the design's unit")
        .example(
            """
            design("Window as high as half the wall");
            const light = star({ points: 6, across: 24 });
            panel("wall", { width: 50, height: 2 * light.height() }).window({ outline: light });
            """)
        .runs((outline, call) -> call.plain(outline.box().height()));
  }

  private static Fn<Outline> area() {
    return Fn.<Outline>named("area")
        .does("What it encloses, its arcs as arcs.")
        .returns("a number in the design's unit, squared")
        .example(
            """
            design("Round or square");
            const round = circle({ across: 40 });
            say(["the circle has", round.area() / 100, "square centimetres"]);
            panel("lid", { outline: round });
            """)
        .runs((outline, call) -> outline.area() / Math.pow(call.session().unit().mm(), 2));
  }
}
