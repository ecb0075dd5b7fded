package facetwright.script.text;

import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tokens of a reading that follow each other.
 *
 * @param first index of the first
 * @param last index of the last
 */
public record Span(int first, int last) {

  /** A single token. */
  public static Span of(int token) {
    return new Span(token, token);
  }

  /**
   * The parts between commas inside a bracket, in their order; none where it is not closed. What
   * stands between two commas without anything there is left out.
   */
  public static List<Span> parts(Reading reading, int open) {
    List<Span> parts = new ArrayList<>();
    int close = reading.partner(open);
    int first = reading.forth(open);
    for (int i = first; i <= close; i = reading.forth(i)) {
      if (i == close || reading.is(i, ',')) {
        if (first < i) {
          parts.add(new Span(first, reading.back(i)));
        }
        first = reading.forth(i);
      } else if (reading.partner(i) > i) {
        i = reading.partner(i);
      }
    }
    return parts;
  }

  /** Whether it is a single token of a kind. */
  public boolean is(Reading reading, Kind kind) {
    return first == last && reading.is(first, kind);
  }

  /** Whether a bracket opens it and the bracket's partner ends it. */
  public boolean isBetween(Reading reading, char bracket) {
    return reading.is(first, bracket) && reading.partner(first) == last;
  }

  /** Of an option in braces, its name: {@code side} of {@code side: 30} as of {@code side}. */
  public String key(Reading reading) {
    return reading.said(first).orElseGet(() -> reading.word(first));
  }

  /** Of an option in braces, its value: behind the colon, or the name itself where it is alone. */
  public Span value(Reading reading) {
    int colon = reading.forth(first);
    return reading.is(colon, ':') && colon < last ? new Span(reading.forth(colon), last) : this;
  }

  /** The value of an option in these braces. */
  public Optional<Span> option(Reading reading, String name) {
    return isBetween(reading, '{')
        ? parts(reading, first).stream()
            .filter(p -> p.key(reading).equals(name))
            .map(p -> p.value(reading))
            .findFirst()
        : Optional.empty();
  }

  public Stretch stretch(Reading reading) {
    return new Stretch(reading.token(first).start(), reading.token(last).end());
  }

  /** Its characters, with what stands between its tokens. */
  public String text(Reading reading) {
    return reading.text().substring(reading.token(first).start(), reading.token(last).end());
  }
}
