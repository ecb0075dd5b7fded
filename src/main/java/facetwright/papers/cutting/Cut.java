package facetwright.papers.cutting;

import facetwright.language.Telling;
import java.util.function.UnaryOperator;

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
   * @param called what a piece of some name is called
   */
  public String text(String measure, UnaryOperator<String> called, Telling tell) {
    return tell.say(
        "cuts.step",
        "times",
        times,
        "first",
        String.valueOf(first),
        "last",
        String.valueOf(last()),
        "part",
        part.isEmpty() ? "whole" : of == 1 ? "one" : "several",
        "of",
        of,
        "letter",
        part,
        "measure",
        measure,
        "way",
        way.word(),
        "off",
        text(off, times, called, tell),
        "rest",
        text(rest, 1, called, tell));
  }

  private static String text(Name name, int count, UnaryOperator<String> called, Telling tell) {
    return switch (name) {
      case Name.Piece(String what) ->
          tell.say("cuts.piece", "count", count, "name", called.apply(what));
      case Name.Part(String letter) -> tell.say("cuts.part", "count", count, "letter", letter);
      case Name.Waste() -> tell.say("cuts.waste");
    };
  }
}
