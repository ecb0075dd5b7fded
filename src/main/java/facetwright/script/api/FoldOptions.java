package facetwright.script.api;

import static facetwright.script.api.Arg.optional;

import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.words.Decimals;

/** The options that say how a score is folded: how far, and which way. */
public record FoldOptions(Arg<Double> fold, Arg<Sense> sense) {
  public static FoldOptions fresh() {
    return new FoldOptions(
        optional(
            "fold", far(), "how far it is folded; where left out it is found by closing the form"),
        optional(
            "sense",
            Kinds.word(Sense.class),
            "which way the crest points, seen on the outside; where left out a mountain, or what"
                + " closes the form"));
  }

  public FoldAngle angle(Call call) {
    if (call.has(fold)) {
      return call.has(sense)
          ? FoldAngle.degrees(call.get(fold))
          : FoldAngle.degreesEitherWay(call.get(fold));
    }
    return call.has(sense) ? FoldAngle.TO_SOLVE_AS_SAID : FoldAngle.TO_SOLVE;
  }

  public Sense way(Call call) {
    return call.has(sense) ? call.get(sense) : Sense.MOUNTAIN;
  }

  /** How far a score is folded, in degrees; which way is said elsewhere. */
  public static Kind<Double> far() {
    Kind<Double> angle = Kinds.degrees(0, 180);
    return Kinds.of(
        angle.counts(),
        angle.wants(),
        (value, session) -> {
          if (value instanceof Given.Amount(double n) && n < 0 && n >= -180) {
            throw new Kind.Unfit(
                Decimals.plain(n)
                    + " degrees is below 0; which way it folds is said by sense: \"mountain\" or"
                    + " \"valley\"",
                Decimals.plain(-n));
          }
          return angle.read(value, session);
        });
  }
}
