package facetwright.check;

import facetwright.net.Join;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.List;

/**
 * Glued tabs that reach past the panel over them, or show in its windows. It keeps silent where a
 * tab reaches past only because the sides of its seam differ in length, which have a rule of their
 * own.
 */
final class TabTooBigRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Glued glued : Glued.of(subject)) {
      double past = glued.past(subject);
      double uneven = SeamLengthsRule.difference(subject, subject.net().joins().get(glued.join()));
      if (past > Glued.SHALLOW + uneven) {
        found.add(
            finding(
                subject,
                glued,
                String.format(
                    "%s reaches %s past the edge of %s, under which it is glued.",
                    subject.name(glued.tab()), Mm.text(past), subject.name(glued.host())),
                "Make it shallower, or bevel its ends more."));
      }
      for (Opening opening : subject.panel(glued.host()).openings()) {
        if (Glued.share(glued.lying(), opening.outline())) {
          found.add(
              finding(
                  subject,
                  glued,
                  String.format(
                      "%s shows in a %s of %s, under which it is glued.",
                      subject.name(glued.tab()), opening.word(), subject.name(glued.host())),
                  room(subject, glued, opening)));
        }
      }
    }
    return found;
  }

  private static String room(Subject subject, Glued glued, Opening opening) {
    return switch (subject.net().joins().get(glued.join())) {
      case Join.Seam s -> {
        double room = opening.room(subject.net().segment(s.b()));
        yield "There is room for a tab " + Mm.atMost(room) + " deep; or move the opening.";
      }
      case Join.Lap _ -> "Make the tab smaller, or move the opening.";
    };
  }

  private static Finding finding(Subject subject, Glued glued, String message, String fix) {
    return new Finding(
        "tab-too-big",
        Finding.Severity.WARNING,
        message,
        fix,
        new Place.AtPanel(glued.tab()),
        subject.panel(glued.tab()).site());
  }
}
