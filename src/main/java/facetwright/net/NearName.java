package facetwright.net;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Which known name a maker may have meant. */
final class NearName {
  private static final int LISTED = 12;

  private NearName() {}

  /** Fewest letters to add, drop or change (Levenshtein, 1966). */
  static int distance(String a, String b) {
    int[] row = IntStream.rangeClosed(0, b.length()).toArray();
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }

  /** The names quoted and listed, those near to the asked one first. */
  static String listed(String asked, List<String> known) {
    List<String> names =
        known.stream().sorted(Comparator.comparingInt(n -> distance(asked, n))).toList();
    String list =
        String.join(", ", names.stream().limit(LISTED).map(n -> "\"" + n + "\"").toList());
    return names.size() > LISTED ? list + " and " + (names.size() - LISTED) + " more" : list;
  }
}
