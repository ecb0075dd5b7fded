package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts that go nowhere while the script says of others where they go, though their names say that
 * they go over or into another. How they fit is not guessed: it is told that it is not known.
 */
final class Unplaced {
  private Unplaced() {}

  static List<Finding> of(Subject subject) {
    Parts parts = subject.net().parts();
    List<Finding> found = new ArrayList<>();
    for (int i : parts.kinds()) {
      Part.Use use = Part.use(parts.all().get(i).name());
      if (use != Part.Use.UNTOLD && goesNowhere(parts, i)) {
        found.add(finding(parts, i, use));
      }
    }
    return found;
  }

  private static boolean goesNowhere(Parts parts, int first) {
    return parts.placings().stream()
        .flatMapToInt(p -> IntStream.of(p.part(), p.onto()))
        .noneMatch(p -> parts.all().get(p).first() == first);
  }

  private static Finding finding(Parts parts, int i, Part.Use use) {
    Parts.Part part = parts.all().get(i);
    String word = use == Part.Use.INNER ? "into" : "over";
    return new Finding(
        FitRule.NAME,
        Finding.Severity.NOTE,
        Message.of(
            "It is not told whether %s fits: the script does not say what it goes %s.",
            Value.name(parts.called(i)), word),
        Message.of(
            "Say where it goes: .%s(part) measures the two against each other, .beside(part) stands"
                + " it by another.",
            word),
        new Place.AtPanel(part.panels().getFirst()),
        part.site());
  }
}
