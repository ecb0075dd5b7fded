package facetwright.papers.handout;

import facetwright.fold.pose.Together;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.papers.materials.HingeStrip;
import facetwright.words.Decimals;

/** How a part is hinged to another: by a strip of card over the joint. */
final class HingeText {
  private HingeText() {}

  static String words(Parts parts, Together.Swing swing, Unit unit) {
    Placing.Hinged hinged = (Placing.Hinged) parts.placings().get(swing.placing());
    String one = "“" + parts.all().get(hinged.part()).name() + "”";
    String other = "“" + parts.all().get(hinged.onto()).name() + "”";
    String strip =
        new Length(HingeStrip.WIDE).read(unit)
            + " wide and "
            + new Length(swing.from().distance(swing.to())).read(unit)
            + " long";
    return "Hinge "
        + one
        + " "
        + where(hinged.edge())
        + ": score a strip of card "
        + strip
        + " along its middle, and with all shut glue it outside over the joint, half on "
        + one
        + ", half on "
        + other
        + ". Open it when dry, here by "
        + Decimals.plain(hinged.open())
        + "°.";
  }

  private static String where(Parts.Side side) {
    return switch (side) {
      case RIGHT -> "at the right";
      case LEFT -> "at the left";
      case FRONT -> "at the front";
      case BACK -> "at the back";
    };
  }
}
