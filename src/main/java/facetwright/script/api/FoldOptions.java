package facetwright.script.api;

import static facetwright.script.api.Arg.optional;

import facetwright.net.FoldAngle;
import facetwright.net.Sense;

/** The options that say how a score is folded: how far, and which way. */
record FoldOptions(Arg<Double> fold, Arg<Sense> sense) {
  static FoldOptions fresh() {
    return new FoldOptions(
        optional(
            "fold",
            Kinds.fold(),
            "how far it is folded; where left out it is found by closing the form"),
        optional(
            "sense",
            Kinds.word(Sense.class),
            "which way the crest points, seen on the outside; where left out a mountain, or what"
                + " closes the form"));
  }

  FoldAngle angle(Call call) {
    if (call.has(fold)) {
      return FoldAngle.degrees(call.get(fold));
    }
    return call.has(sense) ? FoldAngle.TO_SOLVE_AS_SAID : FoldAngle.TO_SOLVE;
  }

  Sense way(Call call) {
    return call.has(sense) ? call.get(sense) : Sense.MOUNTAIN;
  }
}
