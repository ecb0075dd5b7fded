package facetwright.workbench.file;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Work that can be brought back.
 *
 * @param kept the work
 * @param when it was put aside
 * @param taken what to do once it is open
 * @param safe what to do once this window has kept it itself
 */
record Recoverable(Kept kept, Instant when, Runnable taken, Runnable safe) {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMMM 'at' HH:mm", Locale.UK);
  private static final int LONGEST = 60;
  private static final int MOST_DIALS = 3;

  /** What tells it from other work: its title, where it belongs, when it was kept, what is new. */
  String text() {
    String title = FileName.title(kept.work().text());
    return (title.isEmpty() ? "" : "\"" + title + "\", ")
        + kept.name()
        + ", of "
        + TIME.format(when.atZone(ZoneId.systemDefault()))
        + fresh();
  }

  /** The first line that is not in its file, or else the dials. */
  private String fresh() {
    Set<String> before = kept.base().lines().map(String::strip).collect(Collectors.toSet());
    String line =
        kept.work()
            .text()
            .lines()
            .map(String::strip)
            .filter(l -> !l.isEmpty() && !before.contains(l))
            .findFirst()
            .orElse("");
    if (!line.isEmpty()) {
      return ", with the line: "
          + (line.length() > LONGEST ? line.substring(0, LONGEST) + " …" : line);
    }
    Map<String, String> dials = kept.work().dials();
    return dials.isEmpty()
        ? ""
        : ", with "
            + dials.entrySet().stream()
                .limit(MOST_DIALS)
                .map(d -> d.getKey() + " " + d.getValue())
                .collect(Collectors.joining(", "))
            + (dials.size() > MOST_DIALS ? " …" : "");
  }
}
