package facetwright.papers.handout;

import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.backing.Backings;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ByRuler;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The score chart and the cut list of a handout, piece by piece. A piece that no board can score is
 * pricked through the template: its many points are left to the chart itself.
 */
final class Scoring {
  /** Longer words of a cut are no help to a student, in characters. */
  private static final int LONGEST = 720;

  private final Laid laid;
  private final ByRuler byRuler;
  private final ScoreChart chart;
  private final List<Integer> pieces;
  private final List<Integer> sheets;
  private final String part;
  private final Works works;
  private final Order order;
  private final Unit unit;
  private final Telling tell;

  private Scoring(
      Laid laid,
      ByRuler byRuler,
      List<Integer> pieces,
      List<Integer> sheets,
      String part,
      Works works,
      Order order) {
    this.laid = laid;
    this.byRuler = byRuler;
    this.chart = byRuler.chart();
    this.pieces = pieces;
    this.sheets = sheets;
    this.part = part;
    this.works = works;
    this.order = order;
    this.unit = order.unit();
    this.tell = order.telling();
  }

  static List<Section> of(Laid laid, ByRuler byRuler, Works works, Order order) {
    return of(
        laid,
        byRuler,
        IntStream.range(0, byRuler.chart().pieces().size()).boxed().toList(),
        IntStream.range(0, laid.sheets()).boxed().toList(),
        "",
        works,
        order);
  }

  /**
   * Of some pieces.
   *
   * @param pieces which
   * @param sheets on which they lie
   * @param part what they are of, to follow on a heading: “box”; empty for all
   */
  static List<Section> of(
      Laid laid,
      ByRuler byRuler,
      List<Integer> pieces,
      List<Integer> sheets,
      String part,
      Works works,
      Order order) {
    Scoring scoring = new Scoring(laid, byRuler, pieces, sheets, part, works, order);
    List<Section> sections = new ArrayList<>();
    for (int i : pieces) {
      sections.addAll(scoring.piece(i));
    }
    sections.add(scoring.folding());
    return sections;
  }

  private List<Section> piece(int index) {
    PieceChart piece = chart.pieces().get(index);
    String of =
        pieces.size() == 1
            ? part
            : part + ": piece " + (pieces.indexOf(index) + 1) + ", with “" + piece.name() + "”";
    List<Picture> scores = new ArrayList<>();
    List<Picture> cuts = new ArrayList<>();
    List<StepWords> scored = new ArrayList<>();
    List<StepWords> cut = new ArrayList<>();
    List<StepWords> words = StepText.of(piece, tell);
    List<Replay.Frame> frames = Replay.frames(piece.steps());
    for (int s = 0; s < piece.steps().size(); s++) {
      Step step = piece.steps().get(s);
      if (!piece.isForBoard() && step instanceof Step.Points) {
        continue;
      }
      StepWords full =
          piece.isForBoard() ? brief(step, words.get(s)) : StepText.byTemplate(step, tell);
      StepWords said =
          piece.isForBoard() ? StepText.brief(step, words.get(s), frames.get(s), tell) : full;
      said = said.equals(words.get(s)) ? full : said;
      (step.isCut() ? cut : scored).add(said);
      String where = step instanceof Step.Trim ? new Place(laid, order).of(index, piece) : "";
      (step.isCut() ? cuts : scores)
          .add(new Picture.Scored(index, s, said.text() + where, full.with(where), alt(step)));
    }
    List<Section> sections = new ArrayList<>();
    List<String> toRead = ChartNotes.toRead(scored, tell);
    List<String> notes = new ArrayList<>(notes(piece));
    notes.addAll(toRead);
    sections.add(new Section.Steps("Score" + of, notes, scores));
    if (!cuts.isEmpty()) {
      List<String> before = new ArrayList<>(inOrder(piece));
      before.addAll(ChartNotes.toRead(cut, tell));
      before.removeAll(toRead);
      sections.add(new Section.Steps("Cut" + of, before, cuts));
    }
    return sections;
  }

  /** Why what is cut comes in this order, where several kinds of cuts do. */
  private static List<String> inOrder(PieceChart piece) {
    boolean isInside = piece.steps().stream().anyMatch(s -> s.isCut() && !isWaste(s));
    boolean isWaste = piece.steps().stream().anyMatch(Scoring::isWaste);
    return isInside && isWaste
        ? List.of(
            "What lies inside comes first, while the sheet is whole and firm; waste comes off"
                + " last.")
        : List.of();
  }

  private static boolean isWaste(Step step) {
    return step instanceof Step.CutAway;
  }

  /** Cuts of many corners are pricked through, too: nobody measures dozens of places. */
  private StepWords brief(Step step, StepWords words) {
    return step.isCut() && words.text().length() > LONGEST
        ? StepText.byTemplate(step, tell)
            .with(
                " Prick the corners through the printed template; the score chart tells them by"
                    + " their measures.")
        : words;
  }

  private List<String> notes(PieceChart piece) {
    if (piece.isForBoard()) {
      return List.of(
          "On a scoring board, or with a ruler and a bone folder; the template is not needed for"
              + " it. Score while the sheet is square; the outside faces up.");
    }
    String why =
        piece.parallelPart() < ScoreChart.FOR_BOARD
            ? piece.hindrance(tell)
            : byRuler.why().orElseGet(() -> piece.hindrance(tell));
    return List.of(
        (why
                + " Fix the printed template on the card with two bits of tape, outside up, prick"
                + " both ends of every score and every corner of the cuts through with a pin, and"
                + " lift it off. "
                + (piece.isTooMuch()
                    ? "Its points would take "
                        + piece.measures()
                        + " different measures: too many to be marked one by one."
                    : piece.isByTemplate()
                        ? ""
                        : "The score chart of this design tells every point by its measures, for"
                            + " anyone without a printer."))
            .strip());
  }

  private static String alt(Step step) {
    return switch (step) {
      case Step.Trim _ -> "The blank.";
      case Step.FullScores _, Step.ShortScores _, Step.SpotScores _ ->
          "The blank as it lies in this step, the new scores bold.";
      case Step.Points _ -> "The blank with its points.";
      case Step.Punch _ -> "The blank with its holes.";
      case Step.Windows _ -> "The blank with its windows.";
      case Step.Slits s when s.isForTongues() -> "The blank, the cuts for tongues bold.";
      case Step.Slits _ -> "The blank, the slits bold.";
      case Step.CutAway _ -> "The blank, the waste shaded.";
    };
  }

  private String behind(List<Backings.Piece> backings) {
    List<String> papers = backings.stream().map(b -> b.asked().paper()).distinct().toList();
    double least = backings.stream().mapToDouble(Backings.Piece::overlap).min().orElseThrow();
    return "Turn the piece over. Glue "
        + String.join(" and ", papers)
        + " behind the windows, inside the dashed lines, so that each reaches "
        + new Length(least).read(unit)
        + " or more past its window all round. No glue may reach the window.";
  }

  /** What is glued or written on while it is flat; empty where nothing is. */
  private String goesOn() {
    Net net = laid.net();
    int[] pieceOf = net.pieceOfPanel();
    List<Integer> panels =
        IntStream.range(0, pieceOf.length)
            .filter(p -> pieces.contains(pieceOf[p]))
            .boxed()
            .toList();
    List<String> words = new ArrayList<>();
    String papers = new LayerText(net, works, order).gluedOn(panels);
    if (!papers.isEmpty()) {
      words.add(papers);
    }
    boolean isCut = net.fittings().labels().stream().anyMatch(l -> l.asked().cut());
    if (isCut) {
      words.add(
          "Cut out the labels, which are printed at true size with the guides, and glue each where"
              + " it is outlined, its words the way up that they have on the template.");
    }
    if (net.fittings().labels().stream().anyMatch(l -> !l.asked().cut())) {
      words.add(
          "Write or stamp the words on as the template has them; one that is printed on the card"
              + " has them already.");
    }
    return String.join(" ", words);
  }

  private Section folding() {
    List<Picture> pictures = new ArrayList<>();
    for (int i : pieces) {
      pictures.add(
          new Picture.Senses(
              i,
              i == pieces.getFirst()
                  ? "Fold every score once, sharply, and open it again. Dash-dot are mountains: the"
                      + " crest toward you. Dashed are valleys: the crest away from you."
                      + ChartNotes.hinges(laid.net(), i, tell)
                  : "The same for “"
                      + chart.pieces().get(i).name()
                      + "”."
                      + ChartNotes.hinges(laid.net(), i, tell),
              "The piece scored and cut, mountains dash and dot, valleys dashed."));
    }
    String on = goesOn();
    for (int i : on.isEmpty() ? List.<Integer>of() : sheets) {
      pictures.add(new Picture.Layered(i, on, "The flat net with what goes on it."));
    }
    int[] pieceOf = laid.net().pieceOfPanel();
    List<Backings.Piece> backings =
        Backings.of(laid.net()).stream().filter(b -> pieces.contains(pieceOf[b.panel()])).toList();
    for (int i : backings.isEmpty() ? List.<Integer>of() : sheets) {
      pictures.add(
          new Picture.Backed(
              i,
              behind(backings),
              "The flat net, its inside up, with a" + " dashed line round each backing."));
    }
    return new Section.Steps("Fold once" + part, List.of(), pictures);
  }
}
