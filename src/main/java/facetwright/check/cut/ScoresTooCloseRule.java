package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Score;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** Scores that face each other over a strip too narrow to fold twice. */
public final class ScoresTooCloseRule implements Rule {
  /** Narrowest strip between two scores, in thicknesses of the card; common practice, no source. */
  static final double CALIPERS = 5;

  /** Cosine of 150°: sides that face each other run nearly opposite ways. */
  private static final double FACING = -0.866;

  @Override
  public List<Finding> find(Subject subject) {
    List<List<Segment2>> sides = subject.scoredSides();
    List<Finding> found = new ArrayList<>();
    for (int p = 0; p < sides.size(); p++) {
      double strip = narrowest(sides.get(p));
      double caliper = subject.laid().cardOf(p).caliper();
      double least = CALIPERS * caliper;
      if (strip < least) {
        found.add(
            new Finding(
                "scores-too-close",
                Finding.Severity.WARNING,
                Message.of(
                    "Two scores of %s are only %s apart; card %s thick needs %s to fold twice.",
                    subject.name(p),
                    Value.length(strip),
                    Value.length(caliper),
                    Value.atLeast(least)),
                Message.of(
                    "Move them %s farther apart, use one score, or use thinner card.",
                    Value.atLeast(least - strip)),
                new Place.AtPanel(p),
                site(subject, p)));
      }
    }
    return found;
  }

  private static double narrowest(List<Segment2> sides) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.size(); i++) {
      for (int j = 0; j < i; j++) {
        Segment2 a = sides.get(i);
        Segment2 b = sides.get(j);
        boolean touch = a.from().equals(b.to()) || a.to().equals(b.from());
        if (!touch && a.direction().dot(b.direction()) < FACING) {
          least = Math.min(least, Math.min(a.distance(b.from()), a.distance(b.to())));
          least = Math.min(least, Math.min(b.distance(a.from()), b.distance(a.to())));
        }
      }
    }
    return least;
  }

  private static Site site(Subject subject, int panel) {
    return subject.net().scores().stream()
        .filter(s -> s.isOf(panel))
        .map(Score::site)
        .filter(Site::isKnown)
        .findFirst()
        .orElse(subject.panel(panel).site());
  }
}
