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

  /**
   * How a score is folded.
   *
   * @param sense which way
   */
  public record Said(FoldAngle angle, Sense sense) {}

  /**
   * What it means to say so much.
   *
   * @param far in degrees; null where it is not said
   * @param sense null where it is not said
   */
  public static Said said(Double far, Sense sense) {
    FoldAngle angle =
        far == null
            ? sense == null ? FoldAngle.TO_SOLVE : FoldAngle.TO_SOLVE_AS_SAID
            : sense == null ? FoldAngle.degreesEitherWay(far) : FoldAngle.degrees(far);
    return new Said(angle, sense == null ? Sense.MOUNTAIN : sense);
  }

  public FoldAngle angle(Call call) {
    return said(call.get(fold), call.get(sense)).angle();
  }

  public Sense way(Call call) {
    return said(call.get(fold), call.get(sense)).sense();
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
