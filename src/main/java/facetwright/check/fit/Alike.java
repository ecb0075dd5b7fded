package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a rule finds again and again, told once: findings of one place in the script that read alike
 * but for the panels they name are told by the first, with the number and names of the others.
 */
public final class Alike {
  /** So many findings of one rule are told one by one. */
  private static final int MOST_OF_A_KIND = 25;

  /** So many of the others are named. */
  private static final int NAMED = 3;

  /** Between two panels that a message is about. */
  private static final Message.Literal AND = new Message.Literal(" and ");

  private static final Message.Literal TO = new Message.Literal(" to ");

  private record Kind(
      Finding.Severity severity, String message, String fix, Site site, List<Mend> mends) {
    private static Kind of(Finding f) {
      return new Kind(f.severity(), masked(f.what()), masked(f.remedy()), f.site(), f.mends());
    }

    private static String masked(Message words) {
      return words.with(v -> names(v) ? Value.name("") : v).text(Unit.MM);
    }
  }

  private Alike() {}

  /** The findings of one rule. */
  public static List<Finding> told(List<Finding> found) {
    if (found.size() < 2) {
      return found;
    }
    Map<Kind, List<Finding>> kinds = new LinkedHashMap<>();
    found.forEach(f -> kinds.computeIfAbsent(Kind.of(f), _ -> new ArrayList<>()).add(f));
    return few(kinds.values().stream().map(Alike::once).toList());
  }

  private static Finding once(List<Finding> alike) {
    Finding first = alike.getFirst();
    int others = alike.size() - 1;
    if (others == 0) {
      return first;
    }
    Message names =
        Message.join("; ", alike.stream().skip(1).limit(NAMED).map(Alike::subject).toList());
    String more = others > NAMED ? "; and " + (others - NAMED) + " more" : "";
    return new Finding(
            first.rule(),
            first.severity(),
            first.what().plus(Message.of(" The same holds for %s%s.", names, more)),
            first.remedy(),
            first.place(),
            first.site(),
            first.mends())
        .telling(first.verdict());
  }

  /** What a message is about: the panel or place that it names first, or the two. */
  private static Message subject(Finding finding) {
    List<Message.Part> parts = finding.what().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (names(parts.get(i))) {
        boolean areTwo =
            i + 2 < parts.size()
                && (parts.get(i + 1).equals(AND) || parts.get(i + 1).equals(TO))
                && names(parts.get(i + 2));
        Message one = Message.of("%s", unplaced(parts.get(i)));
        return areTwo ? one.plus(parts.get(i + 1)).plus(unplaced(parts.get(i + 2))) : one;
      }
    }
    return Message.text("another");
  }

  /** Whether it tells which panel or place something holds for. */
  private static boolean names(Message.Part part) {
    return part instanceof Value.Name || part instanceof Value.Place;
  }

  private static Message.Part unplaced(Message.Part told) {
    return told instanceof Value.Name panel ? panel.made(0) : told;
  }

  private static List<Finding> few(List<Finding> found) {
    if (found.size() <= MOST_OF_A_KIND) {
      return found;
    }
    List<Finding> few = new ArrayList<>(found.subList(0, MOST_OF_A_KIND));
    Finding like = found.get(MOST_OF_A_KIND);
    few.add(
        new Finding(
            like.rule(),
            like.severity(),
            Message.of("%s more like this.", found.size() - MOST_OF_A_KIND),
            like.remedy(),
            new Place.WholeNet(),
            Site.NONE));
    return few;
  }
}
