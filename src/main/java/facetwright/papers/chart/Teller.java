package facetwright.papers.chart;

import facetwright.language.Telling;
import java.util.ArrayList;
import java.util.List;

/** Tells places and measures of a blank, and notes which short ways of telling it used. */
final class Teller {
  private final Telling tell;
  private final List<Sign> signs = new ArrayList<>();

  Teller(Telling tell) {
    this.tell = tell;
  }

  /** Which short ways it used, each as it was met first. */
  List<Sign> signs() {
    return List.copyOf(signs);
  }

  private void note(Sign sign) {
    if (signs.stream().noneMatch(s -> s.rank() == sign.rank())) {
      signs.add(sign);
    }
  }

  /** As the ruler reads it, or off its marks the nearest: "28 mm", "about 28.5 mm". */
  String measure(Measure measure) {
    noted(measure);
    return measure.text(tell);
  }

  /** The same without its unit. */
  String number(Measure measure) {
    noted(measure);
    return measure.number(tell);
  }

  private void noted(Measure measure) {
    if (!measure.isOnRuler()) {
      note(new Sign.About());
    }
  }

  /** How a guide is told in a sentence. */
  enum Way {
    /** "from line B". */
    FROM("from"),
    /** "to line B". */
    TO("to"),
    /** After "between". */
    BETWEEN("between"),
    /** By itself: "line B". */
    ALONE("alone");

    private final String word;

    Way(String word) {
      this.word = word;
    }
  }

  /** In words: "line B", "40 mm from the top edge". */
  String guide(Guide guide, Way way) {
    return switch (guide) {
      case Guide.Edge(Side side) ->
          tell.say("chart.guide-edge", "way", way.word, "side", side.word());
      case Guide.Line(String line) -> tell.say("chart.guide-line", "way", way.word, "line", line);
      case Guide.Halfway(Guide one, Guide other) ->
          tell.say(
              "chart.guide-mid",
              "way",
              way.word,
              "one",
              guide(one, Way.BETWEEN),
              "other",
              guide(other, Way.BETWEEN));
      case Guide.Measured(Measure measure, Guide.Edge(Side side), Side _) ->
          tell.say(
              "chart.guide-from-edge",
              "way",
              way.word,
              "measure",
              measure(measure),
              "side",
              side.word());
      case Guide.Measured(Measure measure, Guide from, Side toward) ->
          tell.say(
              "chart.guide-from-line",
              "way",
              way.word,
              "measure",
              measure(measure),
              "toward",
              toward.word(),
              "line",
              guide(from, Way.BETWEEN));
    };
  }

  /** As short as it gets: "B", "40 mm from top". */
  private String label(Guide guide) {
    return switch (guide) {
      case Guide.Edge(Side side) -> tell.say("chart.label-edge", "side", side.word());
      case Guide.Line(String line) -> line;
      case Guide.Halfway(Guide one, Guide other) -> {
        note(new Sign.Midway());
        yield tell.say("chart.label-mid", "one", label(one), "other", label(other));
      }
      case Guide.Measured(Measure measure, Guide.Edge(Side side), Side _) ->
          tell.say("chart.label-from-edge", "measure", measure(measure), "side", side.word());
      case Guide.Measured(Measure measure, Guide from, Side toward) -> {
        if (from instanceof Guide.Line(String line)) {
          note(new Sign.FromLine(tell.figures(measure.reading().text()), toward, line));
        }
        yield tell.say(
            "chart.label-line",
            "measure",
            measure(measure),
            "toward",
            toward.word(),
            "line",
            label(from));
      }
    };
  }

  /** A place in a list: "B2", "B top". */
  String spot(Spot spot) {
    return switch (spot) {
      case Spot.At(Guide.Line(String letter), Guide.Line(String number)) -> {
        note(new Sign.Crossing(letter, number));
        yield letter + number;
      }
      case Spot.At(Guide.Line(String letter), Guide.Edge(Side side)) -> edge(letter, side);
      case Spot.At(Guide.Edge(Side side), Guide.Line(String number)) -> edge(number, side);
      case Spot.At(Guide.Edge(Side level), Guide.Edge(Side upright)) ->
          tell.say("chart.spot-corner", "upright", upright.word(), "level", level.word());
      case Spot.At(Guide across, Guide down) -> {
        note(new Sign.InBrackets());
        yield tell.say("chart.spot-brackets", "across", label(across), "down", label(down));
      }
      case Spot.Bow b ->
          tell.say(
              "chart.spot-bow",
              "half",
              String.valueOf(b.isHalf()),
              "across",
              b.isHalf() ? measure(b.across()) : "",
              "radius",
              b.isHalf() ? "" : measure(b.radius()),
              "toward",
              b.toward().replace(" ", ""));
      case Spot.Circle(Spot centre, Measure radius) ->
          tell.say("chart.spot-circle", "radius", measure(radius), "centre", spot(centre));
      case Spot.Numbered(int number) -> String.valueOf(number);
    };
  }

  private String edge(String line, Side side) {
    note(new Sign.AtEdge(line, side));
    return tell.say("chart.spot-edge", "line", line, "side", side.word());
  }

  /** A numbered point: "12 (40 mm, 15 mm)". */
  String point(int number, Spot.At at) {
    note(new Sign.InBrackets());
    return tell.say(
        "chart.point", "number", number, "across", plain(at.across()), "down", plain(at.down()));
  }

  private String plain(Guide guide) {
    return switch (guide) {
      case Guide.Edge(Side side) when side == Side.LEFT || side == Side.TOP -> "0";
      case Guide.Measured m -> measure(m.measure());
      case Guide g -> guide(g, Way.ALONE);
    };
  }
}
