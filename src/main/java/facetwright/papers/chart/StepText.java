package facetwright.papers.chart;

import facetwright.language.Telling;
import facetwright.pace.Pace;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The steps of a chart in a maker's words, one or more sentences a step; what is a list stands in
 * lines of its own.
 */
public final class StepText {
  /** A picture with more different measures is read more slowly than a list of them. */
  private static final int MOST_SHOWN = 6;

  private final PieceChart chart;
  private final Telling tell;
  private Teller places;
  private Placing placing = Placing.FIRST;
  private boolean isPlaced;

  private StepText(PieceChart chart, Telling tell) {
    this.chart = chart;
    this.tell = tell;
    this.places = new Teller(tell);
  }

  /** One text for each step, in order. */
  public static List<StepWords> of(PieceChart chart, Telling tell) {
    StepText words = new StepText(chart, tell);
    return chart.steps().stream().map(words::words).toList();
  }

  /** What stands before a list of points. */
  public static String introToPoints(Telling tell) {
    return tell.say("chart.points-below");
  }

  /** A step for who has pricked every point through the template. */
  public static StepWords byTemplate(Step step, Telling tell) {
    Teller places = new Teller(tell);
    String text =
        switch (step) {
          case Step.Trim t ->
              tell.say(
                  "chart.prick-blank",
                  "width",
                  tell.figures(t.width().reading().text()),
                  "height",
                  tell.figures(t.height().reading().text()));
          case Step.Points _ -> tell.say("chart.prick");
          case Step.FullScores s -> lines(s.lines().size(), s.isPerforated(), tell);
          case Step.ShortScores s -> lines(s.lines().size(), s.isPerforated(), tell);
          case Step.SpotScores s -> lines(s.lines().size(), s.isPerforated(), tell);
          case Step.Punch p -> holes(p, places, tell);
          case Step.Windows w ->
              tell.say("chart.bold-windows", "count", w.outlines().size(), "word", w.word());
          case Step.Slits s when s.isForTongues() ->
              tell.say("chart.bold-tongues", "count", s.cuts().size());
          case Step.Slits s -> tell.say("chart.bold-slits", "count", s.cuts().size());
          case Step.CutAway _ -> tell.say("chart.bold-waste");
        };
    return new StepWords(text, places.signs());
  }

  /**
   * A step in few words, for who sees its measures on a picture; the step's own words where they
   * are as short.
   *
   * @param full its words
   * @param frame what it adds to the blank
   */
  public static StepWords brief(Step step, StepWords full, Replay.Frame frame, Telling tell) {
    Teller places = new Teller(tell);
    String what =
        switch (step) {
          case Step.Trim _, Step.FullScores _, Step.ShortScores _, Step.Points _ -> "";
          case Step.SpotScores s ->
              tell.say(
                  "chart.brief-spots",
                  "perforated",
                  String.valueOf(s.isPerforated()),
                  "count",
                  s.lines().size());
          case Step.Punch p -> holes(p, places, tell);
          case Step.Windows w ->
              tell.say("chart.brief-windows", "count", w.outlines().size(), "word", w.word());
          case Step.Slits s -> tell.say("chart.brief-slits", "count", s.cuts().size());
          case Step.CutAway c -> tell.say("chart.brief-waste", "count", c.areas().size());
        };
    List<String> measures =
        frame.dimensions().stream().map(d -> places.measure(d.measure())).distinct().toList();
    if (what.isEmpty() || !frame.isPlain() || measures.size() > MOST_SHOWN) {
      return full;
    }
    String where =
        measures.isEmpty()
            ? tell.say("chart.brief-places")
            : tell.say(
                "chart.brief-measures",
                "count",
                measures.size(),
                "measures",
                Sentence.capital(tell.numbers(measures)));
    String told = what + " " + where;
    return told.length() >= full.text().length() ? full : new StepWords(told, places.signs());
  }

  private static String lines(int n, boolean isPerforated, Telling tell) {
    return tell.say("chart.bold-lines", "perforated", String.valueOf(isPerforated), "count", n);
  }

  private static String holes(Step.Punch p, Teller places, Telling tell) {
    return tell.say(
        "chart.bold-holes", "count", p.centres().size(), "diameter", places.measure(p.diameter()));
  }

  private StepWords words(Step step) {
    places = new Teller(tell);
    String text = text(step);
    return new StepWords(text, places.signs());
  }

  private String text(Step step) {
    return switch (step) {
      case Step.Trim t ->
          tell.say(
              "chart.trim",
              "width",
              places.measure(t.width()),
              "height",
              places.measure(t.height()));
      case Step.FullScores s -> place(s.placing()) + full(s);
      case Step.ShortScores s -> place(s.placing()) + shorts(s);
      case Step.SpotScores s ->
          tell.say(
              "chart.spot-scores",
              "perforated",
              String.valueOf(s.isPerforated()),
              "paths",
              paths(s.lines()));
      case Step.Points p ->
          tell.say("chart.points", "points", String.join(", ", points(p, places)));
      case Step.Punch p ->
          tell.say(
              "chart.punch",
              "count",
              p.centres().size(),
              "diameter",
              places.measure(p.diameter()),
              "spots",
              p.centres().stream().map(places::spot).collect(Collectors.joining(", ")));
      case Step.Windows w ->
          tell.say(
              "chart.windows",
              "count",
              w.outlines().size(),
              "word",
              w.word(),
              "circles",
              String.valueOf(
                  w.outlines().stream().allMatch(o -> o.getFirst() instanceof Spot.Circle)),
              "areas",
              areas(w.outlines()));
      case Step.Slits s when s.isForTongues() ->
          tell.say("chart.tongues", "count", s.cuts().size(), "paths", paths(s.cuts()));
      case Step.Slits s -> tell.say("chart.slits", "paths", paths(s.cuts()));
      case Step.CutAway c ->
          tell.say("chart.waste", "count", c.areas().size(), "areas", areas(c.areas()));
    };
  }

  /** How the blank is laid, where that is new; with a space after it. */
  private String place(Placing next) {
    if (isPlaced && next == placing) {
      return "";
    }
    String turn = "none";
    if (isPlaced || next != Placing.FIRST) {
      turn =
          switch (Math.floorMod(next.quarters() - placing.quarters(), 4)) {
            case 1 -> "left";
            case 2 -> "end";
            default -> "right";
          };
    } else if (next.scoresDown()
        ? chart.width() >= chart.height()
        : chart.height() >= chart.width()) {
      turn = "long";
    }
    placing = next;
    isPlaced = true;
    String told = tell.say("chart.place", "turn", turn, "left", next.atLeft().word());
    return Sentence.capital(told) + " ";
  }

  private String full(Step.FullScores s) {
    return tell.say(
        "chart.full",
        "again",
        !s.isAgain() ? "no" : s.lines().size() == 1 ? "one" : "more",
        "perforated",
        String.valueOf(s.isPerforated()),
        "measures",
        measures(s.lines()),
        "count",
        s.lines().size(),
        "labels",
        labels(s.lines()));
  }

  private String shorts(Step.ShortScores s) {
    return tell.say(
        "chart.short",
        "perforated",
        String.valueOf(s.isPerforated()),
        "from",
        places.guide(s.from(), Teller.Way.FROM),
        "to",
        places.guide(s.to(), Teller.Way.TO),
        "measures",
        measures(s.lines()),
        "count",
        s.lines().size(),
        "labels",
        labels(s.lines()));
  }

  /** "28, 56 and 84 mm". */
  private String measures(List<Step.Ruled> lines) {
    List<String> measures =
        new ArrayList<>(lines.stream().map(l -> places.number(l.measure())).toList());
    measures.set(measures.size() - 1, places.measure(lines.getLast().measure()));
    return tell.numbers(measures);
  }

  private static String labels(List<Step.Ruled> lines) {
    return lines.stream().map(Step.Ruled::label).collect(Collectors.joining(", "));
  }

  /** Lines that follow one another are told in one go: "A1–B2–C1"; with a space before them. */
  private String paths(List<Step.Path> paths) {
    List<Step.Path> left = new ArrayList<>(paths);
    List<String> chains = new ArrayList<>();
    while (!left.isEmpty()) {
      Step.Path first = left.removeFirst();
      List<Spot> chain = new ArrayList<>(List.of(first.from(), first.to()));
      for (Step.Path next = next(left, chain.getLast());
          next != null;
          next = next(left, chain.getLast())) {
        Pace.step(1 + left.size() / 16);
        left.remove(next);
        chain.add(next.from().equals(chain.getLast()) ? next.to() : next.from());
      }
      chains.add(chain(chain));
    }
    // Spots told by measures are long: then each chain has a line of its own.
    boolean isLong = chains.size() > 1 && chains.stream().anyMatch(c -> c.contains("("));
    return (isLong ? "\n" : " ") + String.join(isLong ? ",\n" : ", ", chains);
  }

  private static Step.Path next(List<Step.Path> left, Spot end) {
    return left.stream()
        .filter(p -> p.from().equals(end) || p.to().equals(end))
        .findFirst()
        .orElse(null);
  }

  private String chain(List<Spot> spots) {
    return spots.stream().map(places::spot).collect(Collectors.joining("–"));
  }

  /** Outlines, each of several in a line of its own; with a space before them. */
  private String areas(List<List<Spot>> areas) {
    return areas.size() == 1
        ? " " + chain(areas.getFirst())
        : areas.stream()
            .map(this::chain)
            .collect(Collectors.joining(tell.semicolon() + "\n", "\n", ""));
  }

  /** One text for each point, such as "12 (40 mm, 15 mm)", in order. */
  public static List<String> points(Step.Points points, Telling tell) {
    return points(points, new Teller(tell));
  }

  private static List<String> points(Step.Points points, Teller places) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < points.at().size(); i++) {
      all.add(places.point(points.first() + i, points.at().get(i)));
    }
    return all;
  }
}
