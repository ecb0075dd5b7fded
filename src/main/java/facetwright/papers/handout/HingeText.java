package facetwright.papers.handout;

import facetwright.fold.pose.Together;
import facetwright.language.Telling;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.papers.materials.HingeStrip;
import facetwright.words.Decimals;

/** How a part is hinged to another: by a strip of card over the joint. */
final class HingeText {
  private HingeText() {}

  static String words(Parts parts, Together.Swing swing, Telling tell) {
    Placing.Hinged hinged = (Placing.Hinged) parts.placings().get(swing.placing());
    return tell.say(
        "together.hinge",
        "one",
        tell.quoted(parts.all().get(hinged.part()).name()),
        "other",
        tell.quoted(parts.all().get(hinged.onto()).name()),
        "side",
        TogetherText.word(hinged.edge()),
        "width",
        tell.read(HingeStrip.WIDE),
        "length",
        tell.read(swing.from().distance(swing.to())),
        "degrees",
        tell.figures(Decimals.plain(hinged.open())));
  }
}
