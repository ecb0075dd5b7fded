package facetwright.papers.chart;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a maker should know of a chart before the first step, in words. */
public final class ChartNotes {
  private static final Ruler GROOVES = Ruler.EIGHTHS;
  private static final int MOST_NAMED = 4;

  /** Common practice, no source. */
  private static final List<String> CAUTIONS =
      List.of(
          "Knives are sharp: cut on a mat, away from yourself, in several light strokes; hold the"
              + " straightedge well clear of the blade. Children cut only with an adult beside"
              + " them.",
          "Punch and cut what lies inside first, while the sheet is whole and firm; waste comes off"
              + " last.");

  private ChartNotes() {}

  /**
   * How the piece is made, how many measures it takes, and what lies off the ruler.
   *
   * @param unit what the maker reckons in
   */
  public static List<String> of(PieceChart piece, Unit unit) {
    List<String> notes = new ArrayList<>();
    int scores = piece.scoreMeasures().size();
    int cuts = piece.cutMeasures().size();
    String percent = Decimals.places(100 * piece.parallelPart(), 0);
    String why =
        piece.parallelPart() < ScoreChart.FOR_BOARD
            ? "a board serves where at least half of the length of the scores runs along or across"
                + " one direction; here it is "
                + percent
                + " %."
            : Sentence.small(piece.hindrance());
    if (piece.isByTemplate()) {
      return List.of(
          "Made by its template: "
              + why
              + (piece.isTooMuch()
                  ? " Its points would take "
                      + piece.measures()
                      + " different measures, and more than "
                      + PieceChart.MOST_MARKED
                      + " are too many to be marked one by one: prick them"
                  : " Prick its points")
              + " through the printed template.");
    }
    if (piece.isForBoard()) {
      notes.add(
          "For a scoring board. Beside the size of the blank, the scores take "
              + StepText.count(scores, "different measure").replace("a ", "1 ")
              + (cuts == 0 ? " and the cuts none." : " and the cuts " + cuts + " more."));
    } else {
      notes.add(
          "For tracing: "
              + why
              + " Mark the points and join them, or prick them through the template. "
              + scores
              + " different measures.");
    }
    off(notes, piece, unit);
    if (piece.isForBoard() && piece.ruler().unit().isInFractions()) {
      long grooves =
          piece.scoreMeasures().stream()
              .filter(m -> Measure.of(m.mm(), GROOVES).isOnRuler())
              .count();
      notes.add(
          grooves == scores
              ? "Every measure of the scores falls on a board's grooves, 1/8 in apart."
              : grooves
                  + " of "
                  + scores
                  + " measures of the scores fall on a board's grooves, 1/8 in apart.");
    }
    notes.addAll(toRead(StepText.of(piece)));
    return notes;
  }

  /** A way of telling a place or a measure, and what it means. */
  private record Sign(Pattern in, Function<MatchResult, String> means) {}

  private static final List<Sign> SIGNS =
      List.of(
          new Sign(
              Pattern.compile("about "),
              _ -> "“about”, on pictures “~”, is the mark of your ruler nearest to it."),
          new Sign(
              Pattern.compile("(?<![\\w(])([A-Z]+)(\\d+)\\b"),
              m ->
                  "“"
                      + m.group()
                      + "” is where lines "
                      + m.group(1)
                      + " and "
                      + m.group(2)
                      + " cross."),
          new Sign(
              Pattern.compile(
                  "(?<![\\w(] ?)\\b(\\d+|[A-Z]+) (left|right|top|bottom)\\b(?! (edge|corner))"),
              m ->
                  "“"
                      + m.group()
                      + "” is where line "
                      + m.group(1)
                      + " meets the "
                      + m.group(2)
                      + " edge."),
          new Sign(
              Pattern.compile("\\(([^(),]+), ([^(),]+)\\)"),
              _ ->
                  "A place in brackets is told twice: first how far across the blank, then how far"
                      + " up or down it."),
          new Sign(
              Pattern.compile("[\\d/. ]*\\d \\w+ (left of|right of|above|below) ([A-Z]+|\\d+)\\b"),
              m -> "“" + m.group().strip() + "” is measured from line " + m.group(2) + "."),
          new Sign(Pattern.compile("mid "), _ -> "“mid A/B” is halfway between A and B."));

  /** What has to be explained of the words of steps, a line each; empty where nothing has. */
  public static List<String> toRead(List<String> words) {
    List<String> notes = new ArrayList<>();
    for (Sign sign : SIGNS) {
      words.stream()
          .map(sign.in()::matcher)
          .filter(Matcher::find)
          .findFirst()
          .ifPresent(m -> notes.add(sign.means().apply(m.toMatchResult())));
    }
    return notes;
  }

  private static void off(List<String> notes, PieceChart piece, Unit unit) {
    List<Measure> off = piece.offRuler();
    if (off.isEmpty()) {
      notes.add("Every measure lies on a mark of your ruler.");
      return;
    }
    off.stream().limit(MOST_NAMED).forEach(m -> notes.add("About: " + m.offText(unit) + "."));
    String more =
        off.size() > MOST_NAMED ? off.size() - MOST_NAMED + " more lie between marks. " : "";
    String most = new Length(piece.mostOff()).text(unit);
    notes.add(
        more
            + (piece.isFormOff()
                ? "Set on the nearest marks, neighbouring lines come out up to "
                    + most
                    + " nearer or farther apart, and so do the sides of the finished form."
                : "Only cuts and holes are off, by at most "
                    + most
                    + "; the form keeps its size."));
  }

  public static List<String> cautions() {
    return CAUTIONS;
  }

  /** How to fold it when all is scored and cut. */
  public static String folding(Net net, int piece) {
    return "Fold. Outside up, mountains (dash-dot) fold away from you, valleys (dashed) toward"
        + " you."
        + hinges(net, piece);
  }

  /** Which folds of a piece stay hinges, a sentence each after a space; empty where none does. */
  public static String hinges(Net net, int piece) {
    int[] pieceOf = net.pieceOfPanel();
    return net.scores().stream()
        .filter(Score::hinge)
        .filter(s -> pieceOf[s.a().panel()] == piece)
        .map(
            s ->
                " The fold between “"
                    + net.panels().get(s.a().panel()).name()
                    + "” and “"
                    + net.panels().get(s.b().panel()).name()
                    + "” is a hinge: fold it both ways, so that it opens and shuts.")
        .distinct()
        .collect(Collectors.joining());
  }
}
