package facetwright.script;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.message.Message;
import facetwright.script.api.Unmet;
import facetwright.script.sandbox.Spot;
import facetwright.script.text.Call;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import java.util.List;
import java.util.OptionalInt;

/**
 * What makers check themselves, with {@code must}, as findings: an error where it does not hold.
 */
final class OwnChecks {
  private static final int MOST_LETTERS = 80;

  private OwnChecks() {}

  static List<Finding> in(String source, List<Unmet> failed) {
    if (failed.isEmpty()) {
      return List.of();
    }
    return failed.stream().map(check -> finding(source, check)).toList();
  }

  private static Finding finding(String source, Unmet check) {
    String condition = condition(Spot.of(source, check.site()));
    return new Finding(
            "must",
            Finding.Severity.ERROR,
            Message.text("What must hold does not: " + condition + "."),
            Message.text(check.toDo()),
            new Place.WholeNet(),
            check.site())
        .telling(Message.text(condition + " does not hold"));
  }

  /** The condition as the script writes it; only said where it can't be read. */
  private static String condition(Spot spot) {
    Reading reading = Reading.of(spot.text());
    OptionalInt at = reading.offset(spot.site().line(), spot.site().column());
    List<Span> given =
        at.isEmpty()
            ? List.of()
            : Call.at(reading, reading.at(at.getAsInt()))
                .map(call -> call.arguments(reading))
                .orElse(List.of());
    String text = given.isEmpty() ? "" : given.getFirst().text(reading).replaceAll("\\s+", " ");
    return text.isEmpty() || text.length() > MOST_LETTERS ? "the condition of this line" : text;
  }
}
