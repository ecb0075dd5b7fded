package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;

import facetwright.geom.Vec2;
import facetwright.net.blank.Blank;
import facetwright.net.blank.LineFold;
import facetwright.net.blank.LineKind;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.FoldOptions;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** What lines of a blank are between panels, where that is not what they are all along. */
final class BlankFoldWords {
  private BlankFoldWords() {}

  /** One panel or several, each by a point inside it. */
  private static final Kind<List<Vec2>> PANELS =
      Kinds.either(
          Kinds.list(PointKinds.point(), 1, 1_000), Kinds.map(PointKinds.point(), List::of));

  static Fn<Blank> fold() {
    FoldOptions folded = FoldOptions.fresh();
    Arg<List<Vec2>> a = needed("a", PANELS, "a point in the one panel, or points in several");
    Arg<List<Vec2>> b =
        needed("b", PANELS, "a point in the other, or points in several that border on those");
    Arg<LineKind> as =
        optional(
            "as",
            Kinds.word(LineKind.class),
            "what the line between them is, where that is not what was drawn");
    return Fn.<Blank>named("fold")
        .does(
            "Says how the lines between panels are folded, or what they are, where it is not what"
                + " the line they lie on says: a line is drawn once, right across.")
        .takes(a, b)
        .options(folded.fold(), folded.sense(), as)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Pop-out step");
            blank({ width: 120, height: 160 })
              .score({ from: "bottom", at: 80, fold: 90, sense: "valley" })
              .cut({ from: "left", at: 40, between: [60, 100] })
              .cut({ from: "left", at: 80, between: [60, 100] })
              .score({ from: "bottom", at: 60, between: [40, 80], fold: 90, sense: "valley" })
              .score({ from: "bottom", at: 100, between: [40, 80], fold: 90, sense: "valley" })
              .fold([60, 70], [60, 90], { fold: 90, sense: "mountain" });
            """)
        .runs(
            (blank, call) -> {
              boolean isFolded = call.has(folded.fold()) || call.has(folded.sense());
              LineKind kind = call.get(as);
              if (!isFolded && kind == null) {
                throw new CallException(
                    "fold needs to know how it is folded", "Give fold, or sense, or as.");
              }
              if (isFolded && kind == LineKind.CUT) {
                throw new CallException(
                    "fold: a cut is not folded", "Leave fold and sense out, or as.");
              }
              return blank.fold(
                  call.get(a),
                  call.get(b),
                  kind,
                  isFolded ? new LineFold(folded.way(call), folded.angle(call)) : null,
                  call.site());
            });
  }
}
