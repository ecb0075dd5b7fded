package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
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
            && Glued.share(one.lying(), two.lying())) {
          found.add(
              new Finding(
                  "tabs-clash",
                  Finding.Severity.WARNING,
                  String.format(
                      "%s and %s lie over each other once glued under %s: the card gets a bump"
                          + " there.",
                      subject.name(one.tab()), subject.name(two.tab()), subject.name(one.host())),
                  fix(subject, one, two),
                  new Place.AtPanel(two.tab()),
                  subject.panel(two.tab()).site()));
        }
      }
    }
    return found;
  }

  /** Both of them shaped alike. */
  private static String fix(Subject subject, Glued one, Glued two) {
    return TabShape.clear(one, two)
        .map(
            s ->
                "Bevel the ends of "
                    + subject.name(one.tab())
                    + " and "
                    + subject.name(two.tab())
                    + " by "
                    + s.bevel()
                    + "° and make them at most "
                    + Mm.atMost(s.depth())
                    + " deep.")
        .orElse("Take one of the two out: there is no room for both.");
  }
}
