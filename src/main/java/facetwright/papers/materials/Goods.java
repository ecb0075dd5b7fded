package facetwright.papers.materials;

import facetwright.language.Telling;
import facetwright.net.Layer;
import facetwright.net.fitting.LightKind;
import facetwright.net.sheet.Stock;

/** What is bought. Lengths in mm. */
public sealed interface Goods {
  /** Card of a net. */
  record Card(Stock stock) implements Goods {}

  /**
   * Paper for layers.
   *
   * @param name of the paper, empty where it has none
   * @param size name of its sheet
   */
  record Decorative(String name, String size) implements Goods {}

  /** Double-sided tape. */
  record Tape() implements Goods {}

  /**
   * Ribbon of any width, or of one.
   *
   * @param width 0 where any will do
   */
  record Ribbon(double width) implements Goods {}

  /**
   * A light, and how large it is at most.
   *
   * @param called what the script calls it
   */
  record Light(String called, double across, double height) implements Goods {}

  /**
   * What goes in.
   *
   * @param what in the maker's words
   * @param isToFill whether as much is taken as goes in
   */
  record Filling(String what, boolean isToFill) implements Goods {}

  /** In words, without a capital where it is no name. */
  default String text(Telling tell) {
    return switch (this) {
      case Card(Stock stock) ->
          tell.say(
              "materials.card",
              "named",
              String.valueOf(!stock.name().isBlank()),
              "name",
              stock.name(),
              "weight",
              tell.number(stock.weight(), 0),
              "caliper",
              tell.number(stock.caliper(), 2),
              "coloured",
              String.valueOf(!stock.colour().isEmpty()),
              "colour",
              stock.colour());
      case Decorative(String name, String size) -> paper(name, tell) + ", " + sheet(size, tell);
      case Tape() -> tell.say("materials.tape");
      case Ribbon(double width) ->
          tell.say("materials.ribbon", "wide", width == 0 ? "none" : tell.read(width));
      case Light(String called, double across, double height) ->
          tell.say(
              "materials.light",
              "kind",
              LightKind.word(called),
              "called",
              called,
              "across",
              tell.read(across),
              "height",
              tell.read(height));
      case Filling(String what, boolean isToFill) ->
          isToFill ? tell.say("materials.to-fill", "what", what) : what;
    };
  }

  /** What a paper for layers is called. */
  static String paper(String name, Telling tell) {
    return name.isEmpty() || name.equals(Layer.UNNAMED) ? tell.say("materials.paper") : name;
  }

  /** What a sheet of it is called. */
  static String sheet(String size, Telling tell) {
    return size.equals(Works.AS_LARGE) ? tell.say("materials.as-large") : tell.figures(size);
  }
}
