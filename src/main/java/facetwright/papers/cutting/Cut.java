package facetwright.papers.cutting;

/**
 * Equal cuts that follow each other, as a maker does them.
 *
 * @param first number of the first cut of its sheet, from 1
 * @param times how many cuts, each from the fresh edge
 * @param part the letter of what is cut, empty for the whole sheet
 * @param of how many equal parts are cut so, all in one go
 * @param way from which edge the measure is taken
 * @param at the measure, in mm
 * @param off what comes off at each cut
 * @param rest what is left at the end
 */
public record Cut(
    int first, int times, String part, int of, FromEdge way, double at, Name off, Name rest) {

  /** What a part is from now on. */
  public sealed interface Name {
    /** Wanted, by name. */
    record Piece(String name) implements Name {}

    /** To be cut on, under a letter. */
    record Part(String letter) implements Name {}

    record Waste() implements Name {}
  }

  /** Number of the last cut, where several equal parts are cut counted for one of them. */
  int last() {
    return first + times - 1;
  }

  /**
   * As a maker reads it.
   *
   * @param measure the measure in words
   */
  public String text(String measure) {
    String number = times == 1 ? "Cut " + first : "Cuts " + first + " to " + last();
    String what =
        part.isEmpty()
            ? "the whole sheet"
            : of == 1 ? "part " + part : "each of the " + of + " parts " + part;
    return "%s: %s at %s %s%s. Off %s %s; what is left is %s."
        .formatted(
            number,
            what,
            measure,
            way.text(),
            times == 1 ? "" : ", each from the fresh edge",
            times == 1 ? "comes" : "come",
            text(off, times),
            text(rest, 1));
  }

  private static String text(Name name, int count) {
    return switch (name) {
      case Name.Piece(String what) ->
          count == 1 ? "a piece “" + what + "”" : count + " pieces “" + what + "”";
      case Name.Part(String letter) -> count == 1 ? "part " + letter : count + " parts " + letter;
      case Name.Waste() -> "waste";
    };
  }
}
