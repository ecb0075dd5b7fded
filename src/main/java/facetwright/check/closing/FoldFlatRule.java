package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.FlatMend;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Stance;
import java.util.List;
import java.util.Locale;

/**
 * Points where scores meet that are all to be folded right over, 180°, or to stay flat, yet can't:
 * the angles between them, or their mountains and valleys, do not allow it.
 *
 * <p>What it does not detect: layers that get in each other's way farther from the point, points on
 * the edge of the card, and points where other scores stand open.
 */
public final class FoldFlatRule implements Rule {
  /** Narrower by so much is narrower, in degrees. */
  private static final double NARROWER = 0.05;

  @Override
  public List<Finding> find(Subject subject) {
    return subject.folded().locked().stream().map(f -> finding(subject, f)).toList();
  }

  /** Which scores can't all be folded right over. */
  public static Message words(Subject subject, FlatFolding at) {
    int scores = at.sectors().size();
    return Message.of(
        "%s %s can't %s folded right over",
        scores == 1 ? "the score that ends" : Message.of("the %s scores that meet", scores),
        subject.place(at.corners()).orElseGet(() -> between(subject, at)),
        scores == 1 ? "be" : "all be");
  }

  private static Message between(Subject subject, FlatFolding at) {
    return Message.of(
        "between %s",
        Message.join(
            ", ", at.corners().stream().map(Stance.Corner::panel).map(subject::name).toList()));
  }

  private static Finding finding(Subject subject, FlatFolding at) {
    int panel =
        at.areAnglesRight() && Math.abs(at.surplus()) == 2
            ? panelOf(at, at.stuck().orElseThrow())
            : at.corners().getFirst().panel();
    return new Finding(
        "fold-flat",
        Finding.Severity.ERROR,
        Message.of("%s: %s", words(subject, at).capital(), why(subject, at)),
        fix(subject, at),
        new Place.AtPanel(panel),
        subject.siteBeside(panel));
  }

  private static Message why(Subject subject, FlatFolding at) {
    int scores = at.sectors().size();
    if (scores % 2 != 0) {
      return Message.text("an odd number of scores never lies flat.");
    }
    if (!at.areAnglesRight()) {
      double one = (360 + at.alternating()) / 2;
      return Message.of(
          "every second angle between them has to add up to 180°, and they add up to %s and %s.",
          Value.angle(one), Value.angle(360 - one));
    }
    int mountains = (scores + at.surplus()) / 2;
    if (Math.abs(at.surplus()) != 2) {
      return Message.of(
          "mountains and valleys have to differ by two, and there are %s and %s.",
          mountains, scores - mountains);
    }
    int stuck = at.stuck().orElseThrow();
    return isNarrowest(at, stuck)
        ? Message.of(
            "%s has its scores on both sides folded the same way, and no room for that between the"
                + " wider panels beside it.",
            subject.name(panelOf(at, stuck)))
        : Message.of(
            "there are as many mountains and valleys as it takes, %s and %s, but in this order one"
                + " panel gets in the way of another.",
            mountains, scores - mountains);
  }

  private static boolean isNarrowest(FlatFolding at, int sector) {
    int n = at.sectors().size();
    double wide = at.sectors().get(sector) + NARROWER;
    return at.senses().get(sector) == at.senses().get(Math.floorMod(sector - 1, n))
        && wide < at.sectors().get((sector + 1) % n)
        && wide < at.sectors().get(Math.floorMod(sector - 1, n));
  }

  private static int panelOf(FlatFolding at, int sector) {
    return at.corners().get(at.first().get(sector)).panel();
  }

  private static Message fix(Subject subject, FlatFolding at) {
    FlatMend mend = FlatMend.of(at).orElse(null);
    Message others =
        mend == null
            ? Message.EMPTY
            : Message.join(
                " and ", mend.others().stream().map(i -> other(subject, at, i)).toList());
    Message also = others.isEmpty() ? Message.text(".") : Message.of(", and make %s.", others);
    return switch (mend) {
      case null ->
          Message.text(
              "Score it otherwise: no turn of one score and no other mountains and valleys let it"
                  + " lie flat.");
      case FlatMend.Senses _ -> Message.of("Make %s.", others);
      case FlatMend.Refold(int place, double degrees, _) ->
          Message.of(
              "Turn %s about that point by %s toward %s%s",
              subject.name(score(subject, at, place)),
              Value.angle(Math.abs(degrees)),
              subject.name(beside(at, place, degrees > 0)),
              also);
      case FlatMend.Add(int sector, double degrees, Sense sense, _) ->
          Message.of(
              "Add a score across %s, from that point, %s from %s: 180°, a %s%s",
              subject.name(panelOf(at, sector)),
              Value.angle(degrees),
              subject.name(score(subject, at, Math.floorMod(sector - 1, at.sectors().size()))),
              sense.name().toLowerCase(Locale.ROOT),
              also);
    };
  }

  private static Score score(Subject subject, FlatFolding at, int place) {
    return subject.net().scores().get(at.scores().get(place));
  }

  /** The panel that a score lies at, after it or before it as one goes round the corner. */
  private static int beside(FlatFolding at, int place, boolean after) {
    int next = at.first().get((place + 1) % at.first().size());
    return at.corners().get(Math.floorMod(after ? next : next - 1, at.corners().size())).panel();
  }

  private static Message other(Subject subject, FlatFolding at, int place) {
    return Message.of(
        "%s a %s",
        subject.name(score(subject, at, place)),
        at.senses().get(place).other().name().toLowerCase(Locale.ROOT));
  }
}
