package facetwright.script.api;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known name nearest to a mistyped one. */
public final class Nearest {
  private Nearest() {}

  /** The nearest name, where one is near enough to be meant. */
  public static Optional<String> to(String typed, Collection<String> known) {
    String low = typed.toLowerCase(Locale.ROOT);
    String best = null;
    int least = Math.max(1, typed.length() / 3) + 1;
    for (String name : known) {
      int distance = distance(low, name.toLowerCase(Locale.ROOT));
      if (distance < least) {
        least = distance;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Levenshtein's edit distance. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
