package facetwright.words;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which known name a maker may have meant. */
public final class NearName {
  private static final int LISTED = 12;

  private NearName() {}

  /**
   * The nearest name by edits of one letter (swapping two neighbours counts as one), when no more
   * than a third of its letters are wrong; the first in alphabetical order where several are.
   */
  public static Optional<String> nearest(String typed, Collection<String> names) {
    return names.stream()
        .distinct()
        .filter(name -> !name.equals(typed))
        .filter(name -> distance(typed, name) <= Math.max(1, name.length() / 3))
        .min(
            Comparator.comparingInt((String name) -> distance(typed, name))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** The nearest name in the place of the one typed; none where none is near. */
  public static List<Mend> mends(String typed, Collection<String> names) {
    return nearest(typed, names).<Mend>map(n -> new Mend.Word(typed, n)).stream().toList();
  }

  /** Optimal string alignment distance, capitals counting as small letters. */
  public static int distance(String left, String right) {
    String a = left.toLowerCase(Locale.ROOT);
    String b = right.toLowerCase(Locale.ROOT);
    if (Math.abs(a.length() - b.length()) > 4 || a.length() > 60) {
      return Integer.MAX_VALUE;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(d[i - 1][j], d[i][j - 1]) + 1;
        best = Math.min(best, d[i - 1][j - 1] + (same ? 0 : 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          best = Math.min(best, d[i - 2][j - 2] + 1);
        }
        d[i][j] = best;
      }
    }
    return d[a.length()][b.length()];
  }

  /** The names quoted and listed, those near to the asked one first. */
  public static String listed(String asked, List<String> known) {
    List<String> names =
        known.stream().sorted(Comparator.comparingInt(n -> distance(asked, n))).toList();
    String list =
        String.join(", ", names.stream().limit(LISTED).map(n -> "\"" + n + "\"").toList());
    return names.size() > LISTED ? list + " and " + (names.size() - LISTED) + " more" : list;
  }
}
