package facetwright.check.fit;

import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.fold.touch.Collision;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join.Hold;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * Glued tabs that reach past the panel over them, or show in its windows. One that reaches through
 * what hangs together with that panel in a form that closes can't be made so; one that sticks out
 * past a free edge can. It keeps silent where a tab sticks out only because the sides of its seam
 * differ in length, which have a rule of their own.
 */
public final class TabTooBigRule implements Rule {
  /** What is proposed shows in a window by less, in mm². */
  private static final double LEAST = 1e-3;

  @Override
  public List<Finding> find(Subject subject) {
    Set<Integer> inTheWay = new HashSet<>();
    for (Collision c : subject.folded().obstacles(subject.net())) {
      if (subject.folded().closes() && c.pastHost(subject.net()).isPresent()) {
        inTheWay.add(c.held().orElseThrow());
      }
    }
    List<Finding> found = new ArrayList<>();
    for (Glued glued : Glued.of(subject)) {
      double past = glued.past(subject);
      boolean isInTheWay = inTheWay.contains(glued.tab());
      if (isInTheWay || past > Glued.SHALLOW + uneven(subject, glued)) {
        found.add(
            finding(
                subject,
                glued,
                isInTheWay ? Finding.Severity.ERROR : Finding.Severity.WARNING,
                Message.of(
                    "%s reaches %s past the edge of %s, %s.",
                    subject.name(glued.tab()),
                    Value.length(past),
                    subject.name(glued.host()),
                    hold(subject, glued).lying()),
                TabShape.within(
                    subject.name(glued.tab()),
                    glued.foot(),
                    glued.lying(),
                    subject.panel(glued.host()).outline())));
      }
      for (Opening opening : subject.panel(glued.host()).openings()) {
        if (!(opening instanceof Opening.Slot) && Glued.share(glued.lying(), opening.outline())) {
          found.add(
              finding(
                  subject,
                  glued,
                  Finding.Severity.WARNING,
                  Message.of(
                      "%s shows in a %s of %s, %s.",
                      subject.name(glued.tab()),
                      opening.word(),
                      subject.name(glued.host()),
                      hold(subject, glued).lying()),
                  room(subject, glued, opening)));
        }
      }
    }
    return found;
  }

  private static Hold hold(Subject subject, Glued glued) {
    return subject.net().joins().get(glued.join()).hold();
  }

  private static double uneven(Subject subject, Glued glued) {
    return SeamLengthsRule.difference(subject, subject.net().joins().get(glued.join()));
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
                    && TabShape.past(tab, host) <= Glued.SHALLOW)
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
