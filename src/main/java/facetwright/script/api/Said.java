package facetwright.script.api;

import facetwright.words.Count;
import facetwright.words.PlainText;
import java.util.ArrayList;
import java.util.List;

/**
 * What a script says, as far as it is kept. A script that runs away may say a line while what it
 * said is asked for.
 */
final class Said {
  /** So many lines are kept. */
  static final int MOST = 1_000;

  private final List<String> lines = new ArrayList<>();
  private long more;

  synchronized void add(String text) {
    if (lines.size() < MOST) {
      lines.add(PlainText.message(text));
    } else {
      more++;
    }
  }

  /** In order; of more than are kept the last tells how many more. */
  synchronized List<String> all() {
    List<String> all = new ArrayList<>(lines);
    if (more > 0) {
      all.add("… and " + Count.of(more, "more line") + " that are not kept");
    }
    return List.copyOf(all);
  }
}
