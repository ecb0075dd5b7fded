package facetwright.check;

import facetwright.fold.FlatFolding;
import facetwright.geom.Sentence;
import facetwright.net.Site;
import facetwright.net.Stance;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Points where scores meet that are all to be folded right over, 180°, or to stay flat, yet can't:
 * the angles between them, or their mountains and valleys, do not allow it.
 *
 * <p>What it does not detect: layers that get in each other's way farther from the point, points on
 * the edge of the card, and points where other scores stand open.
 */
final class FoldFlatRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    return subject.folded().locked().stream().map(f -> finding(subject, f)).toList();
  }

  /** Which scores can't all be folded right over. */
  static String words(Subject subject, FlatFolding at) {
    int scores = at.sectors().size();
    return (scores == 1 ? "the score that ends" : "the " + scores + " scores that meet")
        + " between "
        + at.corners().stream()
            .map(Stance.Corner::panel)
            .map(subject::name)
            .collect(Collectors.joining(", "))
        + " can't "
        + (scores == 1 ? "be" : "all be")
        + " folded right over";
  }

  private static Finding finding(Subject subject, FlatFolding at) {
    int panel = at.corners().getFirst().panel();
    int scores = at.sectors().size();
    String where = Sentence.capital(words(subject, at)) + ": ";
    String why;
    String fix;
    if (scores % 2 != 0) {
      why = "an odd number of scores never lies flat.";
      fix = "Add a score there, or leave one out.";
    } else if (!at.areAnglesRight()) {
      double one = (360 + at.alternating()) / 2;
      why =
          String.format(
              "every second angle between them has to add up to 180°, and they add up to %s° and"
                  + " %s°.",
              Mm.number(one), Mm.number(360 - one));
      fix = "Turn one of the scores about that point by " + Mm.number(Math.abs(one - 180)) + "°.";
    } else if (Math.abs(at.surplus()) == 2) {
      int sector = at.stuck().orElseThrow();
      panel = at.corners().get(at.first().get(sector)).panel();
      why =
          String.format(
              "%s has its scores on both sides folded the same way, and no room for that between"
                  + " the wider panels beside it.",
              subject.name(panel));
      fix = turn(subject, at);
    } else {
      int mountains = (scores + at.surplus()) / 2;
      why =
          String.format(
              "mountains and valleys have to differ by two, and there are %d and %d.",
              mountains, scores - mountains);
      fix = turn(subject, at);
    }
    Site site = subject.panel(panel).site();
    return new Finding(
        "fold-flat", Finding.Severity.ERROR, where + why, fix, new Place.AtPanel(panel), site);
  }

  /** Which scores have to go the other way. */
  private static String turn(Subject subject, FlatFolding at) {
    List<Integer> turned = at.toTurn();
    if (turned.isEmpty()) {
      return "Turn other scores there into mountains or valleys: the narrowest panel needs one of"
          + " each beside it.";
    }
    return "Make "
        + turned.stream().map(i -> other(subject, at, i)).collect(Collectors.joining(" and "))
        + ".";
  }

  private static String other(Subject subject, FlatFolding at, int score) {
    return subject.name(subject.net().scores().get(at.scores().get(score)))
        + " a "
        + at.senses().get(score).other().name().toLowerCase(Locale.ROOT);
  }
}
