package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.vocabulary.SolidWords.HEIGHT;
import static facetwright.script.vocabulary.SolidWords.RADIUS;
import static facetwright.script.vocabulary.SolidWords.SIDE;
import static facetwright.script.vocabulary.SolidWords.SIDES;
import static facetwright.script.vocabulary.SolidWords.held;
import static facetwright.script.vocabulary.SolidWords.sized;

import facetwright.form.Form;
import facetwright.form.make.OverOutline;
import facetwright.form.make.Solids;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.outline.Outline;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import facetwright.script.vocabulary.SolidWords.Maker;
import java.util.List;

/** The words that make a form on a base: equal sides round, or any outline. */
final class BaseWords {
  private static final Arg<Integer> SIDES_ROUND =
      optional(
          "sides",
          Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES),
          "how many equal sides it has round; or give an outline");
  private static final Arg<Outline> OUTLINE =
      optional(
          "outline",
          Kinds.thing(Things.OUTLINE),
          "an outline to stand on, convex or not; side 1 stands over its side 1");

  private BaseWords() {}

  /** Makes one form over the corners of an outline. */
  @FunctionalInterface
  private interface OverMaker {
    Form make(Call call, List<Vec2> corners, double height);
  }

  /** On equal sides, or on an outline. */
  private static Form based(String name, Call call, OverMaker over, Maker bySide, Maker byRadius) {
    if (call.has(OUTLINE)) {
      if (call.has(SIDES_ROUND) || call.has(SIDE) || call.has(RADIUS)) {
        throw new CallException(
            name + " needs one base", "Give an outline, or sides with side or radius, not both.");
      }
      List<Vec2> corners = call.get(OUTLINE).folded(name, call.site());
      return over.make(call, corners, call.get(HEIGHT));
    }
    if (!call.has(SIDES_ROUND)) {
      throw new CallException(
          name + " needs sides: " + SIDES.does(),
          "Give sides as " + SIDES.kind().wanted() + ", or an outline.");
    }
    return sized(name, call, SIDES_ROUND, bySide, byRadius);
  }

  static Fn<Session> prism() {
    return Fn.<Session>named("prism")
        .does(
            "A drum: a base and a top of the same shape, with upright sides: equal ones, or those"
                + " of any outline. Its facets are \"base\", \"top\", \"side 1\", \"side 2\" and so"
                + " on.")
        .options(SIDES_ROUND, SIDE, RADIUS, OUTLINE, HEIGHT)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Six-sided box");
            prism({ sides: 6, side: "1 1/4 in", height: 50 }).unfold();
            """)
        .runs(
            (_, call) ->
                held(
                    call,
                    based(
                        "prism",
                        call,
                        (_, corners, h) -> OverOutline.prism(corners, h),
                        (_, n, side, h) -> Solids.prismBySide(n, side, h),
                        (_, n, radius, h) -> Solids.prism(n, radius, h))));
  }

  static Fn<Session> pyramid() {
    return Fn.<Session>named("pyramid")
        .does("A base with sides that meet in a point above its middle.")
        .options(SIDES_ROUND, SIDE, RADIUS, OUTLINE, HEIGHT)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Steeple");
            pyramid({ sides: 4, side: 40, height: 60 }).unfold();
            """)
        .runs(
            (_, call) ->
                held(
                    call,
                    based(
                        "pyramid",
                        call,
                        (_, corners, h) -> OverOutline.pyramid(corners, h),
                        (_, n, side, h) -> Solids.pyramidBySide(n, side, h),
                        (_, n, radius, h) -> Solids.pyramid(n, radius, h))));
  }

  /** What the top of a frustum is given by. */
  private sealed interface Top {
    record Measure(double mm) implements Top {}

    record Over(Outline outline) implements Top {}
  }

  static Fn<Session> frustum() {
    Arg<Top> top =
        needed(
            "top",
            Kinds.<Top>either(
                Kinds.map(Kinds.length(), Top.Measure::new),
                Kinds.map(Kinds.thing(Things.OUTLINE), Top.Over::new)),
            "the same measure of the top, a side or a radius; over an outline that of the top, such"
                + " as outline.offset(-5)");
    return Fn.<Session>named("frustum")
        .does("A drum whose top is smaller or larger than its base: a flower pot, a lampshade.")
        .options(SIDES_ROUND, SIDE, RADIUS, OUTLINE, top, HEIGHT)
        .gives(Things.FORM, "a form")
        .example(
            """
            design("Flower pot");
            frustum({ sides: 8, side: 18, top: 26, height: 50 }).open("top").unfold();
            """)
        .runs(
            (_, call) ->
                held(
                    call,
                    based(
                        "frustum",
                        call,
                        (c, corners, h) -> OverOutline.frustum(corners, over(c, c.get(top)), h),
                        (c, n, side, h) -> Solids.frustumBySide(n, side, measure(c.get(top)), h),
                        (c, n, radius, h) -> Solids.frustum(n, radius, measure(c.get(top)), h))));
  }

  private static double measure(Top top) {
    if (top instanceof Top.Measure(double mm)) {
      return mm;
    }
    throw new CallException(
        "frustum: an outline for the top needs one for the base",
        "Give outline too, or top as a length.");
  }

  private static List<Vec2> over(Call call, Top top) {
    if (top instanceof Top.Over(Outline outline)) {
      return outline.folded("frustum", call.site());
    }
    throw new CallException(
        "frustum: a base that is an outline needs an outline for its top",
        "Set the base off: top: outline.offset(-5).");
  }
}
