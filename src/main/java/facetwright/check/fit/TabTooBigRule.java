package facetwright.check.fit;

import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * Glued tabs that reach past the panel over them, or show in its windows. What reaches past farther
 * than pressing makes up stands in the way of what is beside the panel: it can't be made so. It
 * keeps silent where a tab reaches past only because the sides of its seam differ in length, which
 * have a rule of their own.
 */
public final class TabTooBigRule implements Rule {
  /** So far past it lies in the way of what is beside, in mm; common practice, no source. */
  private static final double FAR = 2;

  /** What is proposed shows in a window by less, in mm². */
  private static final double LEAST = 1e-3;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Glued glued : Glued.of(subject)) {
      double past = glued.past(subject);
      if (past > Glued.SHALLOW + uneven(subject, glued)) {
        found.add(
            finding(
                subject,
                glued,
                isFar(subject, glued) ? Finding.Severity.ERROR : Finding.Severity.WARNING,
                Message.of(
                    "%s reaches %s past the edge of %s, under which it is glued.",
                    subject.name(glued.tab()), Value.length(past), subject.name(glued.host())),
                TabShape.within(
                    subject.name(glued.tab()),
                    glued.foot(),
                    glued.lying(),
                    Planar.polygon(subject.panel(glued.host()).outline()))));
      }
      for (Opening opening : subject.panel(glued.host()).openings()) {
        if (Glued.share(glued.lying(), opening.outline())) {
          found.add(
              finding(
                  subject,
                  glued,
                  Finding.Severity.WARNING,
                  Message.of(
                      "%s shows in a %s of %s, under which it is glued.",
                      subject.name(glued.tab()), opening.word(), subject.name(glued.host())),
                  room(subject, glued, opening)));
        }
      }
    }
    return found;
  }

  /**
   * Whether it reaches so far past its host, by more than unlike sides explain, that it can't be
   * made.
   */
  private static boolean isFar(Subject subject, Glued glued) {
    return glued.past(subject) - uneven(subject, glued) > FAR;
  }

  private static double uneven(Subject subject, Glued glued) {
    return SeamLengthsRule.difference(subject, subject.net().joins().get(glued.join()));
  }

  /** Of the tabs that reach so far past their host that it can't be made the one that does most. */
  public static Optional<Message> words(Subject subject) {
    return Glued.of(subject).stream()
        .filter(g -> isFar(subject, g))
        .max(Comparator.comparingDouble(g -> g.past(subject)))
        .map(
            g ->
                Message.of(
                    "%s reaches %s past the edge of %s",
                    subject.name(g.tab()), Value.length(g.past(subject)), subject.name(g.host())));
  }

  private static Message room(Subject subject, Glued glued, Opening opening) {
    Polygon2 host = subject.panel(glued.host()).outline();
    Polygon window = Planar.polygon(opening.outline());
    return TabShape.words(
            subject.name(glued.tab()),
            glued.foot(),
            glued.lying(),
            tab ->
                Planar.sharedArea(Planar.polygon(tab), window) <= LEAST
                    && TabShape.past(tab, Planar.polygon(host)) <= Glued.SHALLOW)
        .plus("; or move the opening.");
  }

  private static Finding finding(
      Subject subject, Glued glued, Finding.Severity severity, Message message, Message fix) {
    return new Finding(
        "tab-too-big",
        severity,
        message,
        fix,
        new Place.AtPanel(glued.tab()),
        subject.panel(glued.tab()).site());
  }
}
