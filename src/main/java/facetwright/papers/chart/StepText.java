package facetwright.papers.chart;

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
  /** What stands before a list of points. */
  public static final String INTRO_TO_POINTS =
      "Mark these points lightly and number them. Each is measured from the left edge, then from"
          + " the top.";

  /** A picture with more different measures is read more slowly than a list of them. */
  private static final int MOST_SHOWN = 6;

  private final PieceChart chart;
  private Placing placing = Placing.FIRST;
  private boolean isPlaced;

  private StepText(PieceChart chart) {
    this.chart = chart;
  }

  /** One text for each step, in order. */
  public static List<String> of(PieceChart chart) {
    StepText words = new StepText(chart);
    return chart.steps().stream().map(words::text).toList();
  }

  /** A step for who has pricked every point through the template. */
  public static String byTemplate(Step step) {
    return switch (step) {
      case Step.Trim t ->
          "Take a blank a little larger than "
              + t.width().reading().text()
              + " wide and "
              + t.height().reading().text()
              + " high. Outside of the form faces up, now and to the end.";
      case Step.Points _ -> "Prick the points through the template.";
      case Step.FullScores s -> lines(s.lines().size(), s.isPerforated());
      case Step.ShortScores s -> lines(s.lines().size(), s.isPerforated());
      case Step.SpotScores s -> lines(s.lines().size(), s.isPerforated());
      case Step.Punch p ->
          "Punch "
              + count(p.centres().size(), "hole")
              + " of "
              + p.diameter().text()
              + ", shown bold.";
      case Step.Windows w ->
          "Cut out "
              + count(w.outlines().size(), w.word())
              + ", shown bold. Turn the sheet, not the knife.";
      case Step.Slits s when s.isForTongues() ->
          "Cut "
              + count(s.cuts().size(), "single line")
              + (s.cuts().size() == 1 ? " for the tongue" : " for the tongues")
              + ", shown bold, from end to end.";
      case Step.Slits s ->
          "Slit " + count(s.cuts().size(), "line") + ", shown bold, and stop at the score.";
      case Step.CutAway _ -> "Cut away the waste, shaded, along the bold lines.";
    };
  }

  /**
   * A step in few words, for who sees its measures on a picture; the step's own words where they
   * are as short.
   *
   * @param full its words
   * @param frame what it adds to the blank
   */
  public static String brief(Step step, String full, Replay.Frame frame) {
    List<String> measures =
        frame.dimensions().stream().map(d -> d.measure().text()).distinct().toList();
    if (!frame.isPlain() || measures.size() > MOST_SHOWN) {
      return full;
    }
    String what =
        switch (step) {
          case Step.Trim _, Step.FullScores _, Step.ShortScores _, Step.Points _ -> "";
          case Step.SpotScores s ->
              verb(s.isPerforated())
                  + " the bold "
                  + (s.lines().size() == 1 ? "line" : s.lines().size() + " lines")
                  + ", from point to point.";
          case Step.Punch p ->
              "Punch "
                  + count(p.centres().size(), "hole")
                  + " of "
                  + p.diameter().text()
                  + ", shown bold.";
          case Step.Windows w -> "Cut out " + count(w.outlines().size(), w.word()) + ", bold.";
          case Step.Slits s ->
              "Slit the bold "
                  + (s.cuts().size() == 1 ? "line" : s.cuts().size() + " lines")
                  + ", and stop at the score.";
          case Step.CutAway c ->
              "Cut away the "
                  + (c.areas().size() == 1 ? "hatched area" : c.areas().size() + " hatched areas")
                  + " along the bold lines; keep the rest.";
        };
    String told =
        what
            + (measures.isEmpty()
                ? " Each place is on a line, on an edge, or midway between two."
                : " "
                    + Sentence.capital(Sentence.listed(measures))
                    + (measures.size() == 1 ? " is" : " are")
                    + " shown once, for all places that look alike; all else is on a line, on an"
                    + " edge, or midway between two.");
    return what.isEmpty() || told.length() >= full.length() ? full : told;
  }

  private static String lines(int n, boolean isPerforated) {
    return verb(isPerforated) + " " + count(n, "line") + ", shown bold, from end to end.";
  }

  private String text(Step step) {
    return switch (step) {
      case Step.Trim t ->
          "Trim the sheet to "
              + t.width().text()
              + " wide and "
              + t.height().text()
              + " high. Outside of the form faces up, now and to the end. Write left, right, top"
              + " and bottom lightly on the edges.";
      case Step.FullScores s -> place(s.placing()) + full(s);
      case Step.ShortScores s -> place(s.placing()) + shorts(s);
      case Step.SpotScores s -> verb(s.isPerforated()) + " from point to point:" + paths(s.lines());
      case Step.Points p ->
          "Mark these points lightly and number them: "
              + String.join(", ", points(p))
              + ". Each is measured from the left edge, then from the top.";
      case Step.Punch p ->
          "Punch "
              + count(p.centres().size(), "hole")
              + " of "
              + p.diameter().text()
              + " at: "
              + spots(p.centres())
              + ".";
      case Step.Windows w ->
          "Cut out "
              + count(w.outlines().size(), w.word())
              + (w.outlines().stream().allMatch(o -> o.getFirst() instanceof Spot.Circle)
                  ? ":"
                  : ", from corner to corner:")
              + areas(w.outlines())
              + ".";
      case Step.Slits s when s.isForTongues() ->
          (s.cuts().size() == 1
                  ? "Cut a single line for the tongue, from point to point:"
                  : "Cut single lines for the tongues, from point to point:")
              + paths(s.cuts());
      case Step.Slits s -> "Slit, and stop at the score:" + paths(s.cuts());
      case Step.CutAway c ->
          "Cut away "
              + (c.areas().size() == 1 ? "the waste" : c.areas().size() + " areas of waste")
              + ", shaded in the picture:"
              + areas(c.areas())
              + ".";
    };
  }

  private String place(Placing next) {
    if (isPlaced && next == placing) {
      return "";
    }
    String how = "";
    if (isPlaced || next != Placing.FIRST) {
      how =
          switch (Math.floorMod(next.quarters() - placing.quarters(), 4)) {
            case 1 -> "Turn the sheet a quarter to the left";
            case 2 -> "Turn the sheet end for end";
            default -> "Turn the sheet a quarter to the right";
          };
      how += ": ";
    }
    boolean isLong =
        next.scoresDown() ? chart.width() >= chart.height() : chart.height() >= chart.width();
    String against =
        next.atTop().word()
            + " edge against the top stop, "
            + next.atLeft().word()
            + " edge against the left stop. ";
    String edge = isLong && how.isEmpty() ? "Long edge up: " : how;
    placing = next;
    isPlaced = true;
    return edge.isEmpty() ? Sentence.capital(against) : edge + against;
  }

  private static String full(Step.FullScores s) {
    String same = s.lines().size() == 1 ? "The same measure again: " : "The same measures again: ";
    String again = s.isAgain() ? same : "";
    String verb = s.isPerforated() ? "perforate" : "score";
    return again
        + (again.isEmpty() ? Sentence.capital(verb) : verb)
        + " the whole height at "
        + ruled(s.lines())
        + ".";
  }

  private static String shorts(Step.ShortScores s) {
    return (s.isPerforated() ? "Perforate" : "Score")
        + " from "
        + s.from().text()
        + " to "
        + s.to().text()
        + " only, at "
        + ruled(s.lines())
        + ".";
  }

  /** "28, 56 and 84 mm (lines A to C)". */
  private static String ruled(List<Step.Ruled> lines) {
    List<String> measures = new ArrayList<>(lines.stream().map(l -> l.measure().number()).toList());
    measures.set(measures.size() - 1, lines.getLast().measure().text());
    String labels = lines.stream().map(Step.Ruled::label).collect(Collectors.joining(", "));
    return Sentence.listed(measures) + (lines.size() == 1 ? " (line " : " (lines ") + labels + ")";
  }

  private static String verb(boolean isPerforated) {
    return isPerforated ? "Perforate" : "Score";
  }

  /** Lines that follow one another are told in one go: "A1–B2–C1". */
  private static String paths(List<Step.Path> paths) {
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
      chains.add(chain.stream().map(Spot::text).collect(Collectors.joining("–")));
    }
    // Spots told by measures are long: then each chain has a line of its own.
    boolean isLong = chains.size() > 1 && chains.stream().anyMatch(c -> c.contains("("));
    return (isLong ? "\n" : " ") + String.join(isLong ? ",\n" : ", ", chains) + ".";
  }

  private static Step.Path next(List<Step.Path> left, Spot end) {
    return left.stream()
        .filter(p -> p.from().equals(end) || p.to().equals(end))
        .findFirst()
        .orElse(null);
  }

  private static String spots(List<Spot> spots) {
    return spots.stream().map(Spot::text).collect(Collectors.joining(", "));
  }

  private static String areas(List<List<Spot>> areas) {
    return areas.stream()
        .map(a -> a.stream().map(Spot::text).collect(Collectors.joining("–")))
        .collect(Collectors.joining(";\n", areas.size() > 1 ? "\n" : " ", ""));
  }

  /** One text for each point, such as "12 (40 mm, 15 mm)", in order. */
  public static List<String> points(Step.Points points) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < points.at().size(); i++) {
      Spot.At at = points.at().get(i);
      all.add((points.first() + i) + " (" + plain(at.across()) + ", " + plain(at.down()) + ")");
    }
    return all;
  }

  private static String plain(Guide guide) {
    return switch (guide) {
      case Guide.Edge(Side side) when side == Side.LEFT || side == Side.TOP -> "0";
      case Guide.Measured m -> m.measure().text();
      case Guide g -> g.text();
    };
  }

  static String count(int n, String what) {
    return n == 1 ? "a " + what : n + " " + what + "s";
  }
}
