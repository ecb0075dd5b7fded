package facetwright.workbench.card.text;

import facetwright.script.text.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where a text is found.
 *
 * @param all in order, none over another
 */
public record Hits(List<Stretch> all) {
  public static final Hits NONE = new Hits(List.of());

  public Hits {
    all = List.copyOf(all);
  }

  /** Finds a text; capitals matter only where asked. */
  public static Hits of(String text, String sought, boolean capitals) {
    if (sought.isEmpty()) {
      return NONE;
    }
    List<Stretch> found = new ArrayList<>();
    for (int i = 0; i + sought.length() <= text.length(); ) {
      if (text.regionMatches(!capitals, i, sought, 0, sought.length())) {
        found.add(new Stretch(i, i + sought.length()));
        i += sought.length();
      } else {
        i++;
      }
    }
    return new Hits(found);
  }

  /**
   * The index of the first hit from an offset on, from the top again after the last; -1 for none.
   */
  public int next(int offset) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).start() >= offset) {
        return i;
      }
    }
    return all.isEmpty() ? -1 : 0;
  }

  /** The index of the last hit that ends by an offset, from the end again; -1 for none. */
  public int previous(int offset) {
    for (int i = all.size() - 1; i >= 0; i--) {
      if (all.get(i).end() <= offset) {
        return i;
      }
    }
    return all.size() - 1;
  }

  /** The whole text with every hit replaced. */
  public String replaced(String text, String by) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (Stretch hit : all) {
      out.append(text, at, hit.start()).append(by);
      at = hit.end();
    }
    return out.append(text.substring(at)).toString();
  }

  /** How many, and which one is looked at: "2 of 7". */
  public String count(int current) {
    return all.isEmpty()
        ? "none"
        : current < 0
            ? String.format(Locale.ROOT, "%d found", all.size())
            : String.format(Locale.ROOT, "%d of %d", current + 1, all.size());
  }
}
