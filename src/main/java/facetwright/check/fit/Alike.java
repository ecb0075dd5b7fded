package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a rule finds again and again, told once: findings of one place in the script that read alike
 * but for the panels they name are told by the first, with the number and names of the others.
 */
public final class Alike {
  /** So many findings of one rule are told one by one. */
  private static final int MOST_OF_A_KIND = 25;

  /** So many of the others are named. */
  private static final int NAMED = 3;

  /** The name of a panel, and where it was made. */
  private static final Pattern NAME = Pattern.compile("(\"[^\"]*\")( \\(line \\d+\\))?");

  /** What a message is about: the panel that it names first, or the two. */
  private static final Pattern SUBJECT = Pattern.compile(NAME.pattern() + "( and \"[^\"]*\")?");

  private record Kind(
      Finding.Severity severity, String message, String fix, Site site, List<Mend> mends) {
    private static Kind of(Finding f) {
      return new Kind(f.severity(), masked(f.message()), masked(f.fix()), f.site(), f.mends());
    }

    private static String masked(String words) {
      return NAME.matcher(words).replaceAll("*");
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
    String names =
        alike.stream().skip(1).limit(NAMED).map(Alike::subject).collect(Collectors.joining("; "));
    String more = others > NAMED ? "; and " + (others - NAMED) + " more" : "";
    return new Finding(
        first.rule(),
        first.severity(),
        first.message() + " The same holds for " + names + more + ".",
        first.fix(),
        first.place(),
        first.site(),
        first.mends());
  }

  private static String subject(Finding finding) {
    Matcher about = SUBJECT.matcher(finding.message());
    return about.find()
        ? about.group(1) + (about.group(3) == null ? "" : about.group(3))
        : "another";
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
            (found.size() - MOST_OF_A_KIND) + " more like this.",
            like.fix(),
            new Place.WholeNet(),
            Site.NONE));
    return few;
  }
}
