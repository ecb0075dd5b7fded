package facetwright.check;

import facetwright.fold.FlatFolding;
import facetwright.fold.Vertices;
import facetwright.net.Site;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Points where scores meet that are all to be folded right over, 180°, yet can't be: the angles
 * between them or their mountains and valleys do not allow it.
 *
 * <p>What it does not detect: layers that get in each other's way though both conditions hold, and
 * points on the edge of the card.
 */
final class FoldFlatRule implements Rule {
  private static final double SAME_DEGREES = 1e-6;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Vertices.Vertex vertex : Vertices.of(subject.net(), subject.folded())) {
      FlatFolding.at(subject.net(), vertex)
          .filter(FlatFolding::isMeant)
          .filter(f -> !f.isPossible())
          .ifPresent(f -> found.add(finding(subject, f)));
    }
    return found;
  }

  private static Finding finding(Subject subject, FlatFolding at) {
    int panel = at.corners().getFirst().panel();
    int scores = at.corners().size();
    String where =
        "The "
            + scores
            + " scores that meet between "
            + at.corners().stream()
                .map(Stance.Corner::panel)
                .map(subject::name)
                .collect(Collectors.joining(", "))
            + " can't all be folded right over: ";
    String why;
    String fix;
    if (scores % 2 != 0) {
      why = "an odd number of scores never lies flat.";
      fix = "Add a score there, or leave one out.";
    } else if (Math.abs(at.alternating()) > SAME_DEGREES) {
      double one = (360 + at.alternating()) / 2;
      why =
          String.format(
              "every second angle between them has to add up to 180°, and they add up to %s° and"
                  + " %s°.",
              Mm.number(one), Mm.number(360 - one));
      fix = "Turn one of the scores about that point by " + Mm.number(Math.abs(one - 180)) + "°.";
    } else {
      int mountains = (scores + at.surplus()) / 2;
      why =
          String.format(
              "mountains and valleys have to differ by two, and there are %d and %d.",
              mountains, scores - mountains);
      fix = sense(at.surplus());
    }
    Site site = subject.panel(panel).site();
    return new Finding(
        "fold-flat", Finding.Severity.ERROR, where + why, fix, new Place.AtPanel(panel), site);
  }

  private static String sense(int surplus) {
    if (surplus == 0) {
      return "Turn one mountain there into a valley, or one valley into a mountain.";
    }
    int turn = (Math.abs(surplus) - 2) / 2;
    String from = surplus > 0 ? "mountain" : "valley";
    String to = surplus > 0 ? "valley" : "mountain";
    return turn == 1
        ? "Turn one " + from + " there into a " + to + "."
        : "Turn " + turn + " " + from + "s there into " + to + "s.";
  }
}
