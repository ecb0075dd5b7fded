package facetwright.net.wrap;

import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Which columns or rows of a wrap a word means. */
final class CellChoice {
  private CellChoice() {}

  static IntPredicate columns(String which, Site at) {
    return switch (which.strip().toLowerCase(Locale.ROOT)) {
      case "all" -> _ -> true;
      case "even" -> c -> c % 2 == 1;
      case "odd" -> c -> c % 2 == 0;
      default ->
          throw new NetException(
              "columns are \"even\", \"odd\", \"all\" or numbers, not \"" + which + "\"",
              at,
              NearName.mends(which, WrapDraft.COLUMN_WORDS));
    };
  }

  /** Rows by name, or by name with "upper" or "lower" before. */
  static IntPredicate rows(List<WrapRow> rows, String name, Site at) {
    if (name.equals("all")) {
      return _ -> true;
    }
    List<String> names = rows.stream().map(WrapRow::name).distinct().toList();
    String plain = name.strip().toLowerCase(Locale.ROOT);
    for (boolean upper : new boolean[] {false, true}) {
      String word = upper ? WrapDraft.UPPER : WrapDraft.LOWER;
      String kind = plain.startsWith(word) ? plain.substring(word.length()) : "";
      if (!names.contains(name) && names.contains(kind)) {
        List<Integer> alike =
            IntStream.range(0, rows.size())
                .filter(r -> rows.get(r).name().equals(kind))
                .boxed()
                .toList();
        Ask.that(
            alike.size() > 1,
            "there is one row called \""
                + kind
                + "\" only, no upper and lower one: leave the word out",
            at);
        int meant = upper ? alike.getLast() : alike.getFirst();
        return r -> r == meant;
      }
    }
    if (!names.contains(name)) {
      throw new NetException(
          "no row is called \"" + name + "\"; the rows are " + NearName.listed(name, names),
          at,
          NearName.mends(name, names));
    }
    return r -> rows.get(r).name().equals(name);
  }
}
