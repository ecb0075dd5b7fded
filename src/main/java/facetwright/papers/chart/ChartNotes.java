package facetwright.papers.chart;

import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a maker should know of a chart before the first step, in words. */
public final class ChartNotes {
  private static final Ruler GROOVES = Ruler.EIGHTHS;
  private static final int MOST_NAMED = 4;

  private ChartNotes() {}

  /** How the piece is made, how many measures it takes, and what lies off the ruler. */
  public static List<String> of(PieceChart piece, Telling tell) {
    List<String> notes = new ArrayList<>();
    int scores = piece.scoreMeasures().size();
    String why = piece.parallelPart() < ScoreChart.FOR_BOARD ? "slanted" : "coarse";
    String percent = tell.figures(Decimals.places(100 * piece.parallelPart(), 0));
    String ruler = tell.figures(piece.ruler().name());
    if (piece.isByTemplate()) {
      return List.of(
          tell.say(
              "chart.by-template",
              "why",
              why,
              "percent",
              percent,
              "ruler",
              ruler,
              "many",
              String.valueOf(piece.isTooMuch()),
              "measures",
              piece.measures(),
              "most",
              PieceChart.MOST_MARKED));
    }
    notes.add(
        piece.isForBoard()
            ? tell.say("chart.for-board", "scores", scores, "cuts", piece.cutMeasures().size())
            : tell.say(
                "chart.for-tracing",
                "why",
                why,
                "percent",
                percent,
                "ruler",
                ruler,
                "scores",
                scores));
    off(notes, piece, tell);
    if (piece.isForBoard() && piece.ruler().unit().isInFractions()) {
      int grooves =
          (int)
              piece.scoreMeasures().stream()
                  .filter(m -> Measure.of(m.mm(), GROOVES).isOnRuler())
                  .count();
      notes.add(
          grooves == scores
              ? tell.say("chart.all-grooves")
              : tell.say("chart.some-grooves", "grooves", grooves, "scores", scores));
    }
    notes.addAll(toRead(StepText.of(piece, tell), tell));
    return notes;
  }

  /** What has to be explained of the words of steps, a line each; empty where nothing has. */
  public static List<String> toRead(List<StepWords> words, Telling tell) {
    SortedMap<Integer, Sign> first = new TreeMap<>();
    words.forEach(w -> w.signs().forEach(s -> first.putIfAbsent(s.rank(), s)));
    return first.values().stream().map(s -> s.meaning(tell)).toList();
  }

  private static void off(List<String> notes, PieceChart piece, Telling tell) {
    List<Measure> off = piece.offRuler();
    if (off.isEmpty()) {
      notes.add(tell.say("chart.on-marks"));
      return;
    }
    off.stream()
        .limit(MOST_NAMED)
        .forEach(m -> notes.add(tell.say("chart.about", "measure", m.offText(tell))));
    String more =
        off.size() > MOST_NAMED
            ? tell.say("chart.more-off", "more", off.size() - MOST_NAMED) + " "
            : "";
    String most = tell.length(piece.mostOff());
    notes.add(
        more
            + (piece.isFormOff()
                ? tell.say("chart.form-off", "most", most)
                : tell.say("chart.cuts-off", "most", most)));
  }

  /** Common practice, no source. */
  public static List<String> cautions(Telling tell) {
    return List.of(tell.say("chart.caution-knife"), tell.say("chart.caution-inside"));
  }

  /** How to fold it when all is scored and cut. */
  public static String folding(Net net, int piece, Telling tell) {
    return tell.say("chart.fold") + hinges(net, piece, tell);
  }

  /** Which folds of a piece stay hinges, a sentence each after a space; empty where none does. */
  public static String hinges(Net net, int piece, Telling tell) {
    int[] pieceOf = net.pieceOfPanel();
    return net.scores().stream()
        .filter(Score::hinge)
        .filter(s -> pieceOf[s.a().panel()] == piece)
        .map(
            s ->
                " "
                    + tell.say(
                        "chart.hinge",
                        "one",
                        net.panels().get(s.a().panel()).name(),
                        "other",
                        net.panels().get(s.b().panel()).name()))
        .distinct()
        .collect(Collectors.joining());
  }
}
