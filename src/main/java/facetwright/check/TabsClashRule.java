package facetwright.check;

import java.util.ArrayList;
import java.util.List;

/** Tabs that lie over each other under one panel once glued. */
final class TabsClashRule implements Rule {
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
                  "Bevel the tab ends where they meet, or make the tabs shallower.",
                  new Place.AtPanel(two.tab()),
                  subject.panel(two.tab()).site()));
        }
      }
    }
    return found;
  }
}
