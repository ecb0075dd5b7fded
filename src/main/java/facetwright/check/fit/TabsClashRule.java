package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;

/** Tabs that lie over each other under one panel once glued. */
public final class TabsClashRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Glued> all = Glued.of(subject);
    List<Finding> found = new ArrayList<>();
    for (int j = 0; j < all.size(); j++) {
      for (int i = 0; i < j; i++) {
        Glued one = all.get(i);
        Glued two = all.get(j);
        if (one.host() == two.host()
            && one.tab() != two.tab()
            && !(isDust(subject, one) && isDust(subject, two))
            && Glued.share(one.lying(), two.lying())) {
          found.add(
              new Finding(
                  "tabs-clash",
                  Finding.Severity.WARNING,
                  Message.of(
                      isGlued(subject, one) && isGlued(subject, two)
                          ? "%s and %s lie over each other once glued under %s: the card gets a"
                              + " bump there."
                          : "%s and %s come to lie over each other behind %s: the one is in the"
                              + " other's way.",
                      subject.name(one.tab()),
                      subject.name(two.tab()),
                      subject.name(one.host())),
                  fix(subject, one, two),
                  new Place.AtPanel(two.tab()),
                  subject.panel(two.tab()).site()));
        }
      }
    }
    return found;
  }

  /** Dust flaps have a rule of their own. */
  private static boolean isDust(Subject subject, Glued glued) {
    return subject.net().joins().get(glued.join()).hold() == Join.Hold.FLAP;
  }

  private static boolean isGlued(Subject subject, Glued glued) {
    return subject.net().joins().get(glued.join()).hold().isGlued();
  }

  /** Both of them shaped alike. */
  private static Message fix(Subject subject, Glued one, Glued two) {
    return TabShape.clear(
            one.foot(), one.lying(), two.foot(), two.lying(), (a, b) -> !Glued.share(a, b))
        .map(
            s ->
                Message.of(
                    "Bevel the ends of %s and %s by %s and make them at most %s deep.",
                    subject.name(one.tab()),
                    subject.name(two.tab()),
                    Value.angle(s.bevel()),
                    Value.atMost(s.depth())))
        .orElse(Message.text("Take one of the two out: there is no room for both."));
  }
}
