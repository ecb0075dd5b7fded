package facetwright.papers.handout;

import facetwright.language.Telling;
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
  private final Whose part;
  private final Works works;
  private final Order order;
  private final Telling tell;

  private Scoring(
      Laid laid,
      ByRuler byRuler,
      List<Integer> pieces,
      List<Integer> sheets,
      Whose part,
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
    this.tell = order.telling();
  }

  static List<Section> of(Laid laid, ByRuler byRuler, Works works, Order order) {
    return of(
        laid,
        byRuler,
        IntStream.range(0, byRuler.chart().pieces().size()).boxed().toList(),
        IntStream.range(0, laid.sheets()).boxed().toList(),
        Whose.ALL,
        works,
        order);
  }

  /**
   * Of some pieces.
   *
   * @param pieces which
   * @param sheets on which they lie
   * @param part what they are of
   */
  static List<Section> of(
      Laid laid,
      ByRuler byRuler,
      List<Integer> pieces,
      List<Integer> sheets,
      Whose part,
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
      String where = step instanceof Step.Trim ? new Place(laid, tell).of(index, piece) : "";
      (step.isCut() ? cuts : scores)
          .add(new Picture.Scored(index, s, said.text() + where, full.with(where), alt(step)));
    }
    List<Section> sections = new ArrayList<>();
    List<String> toRead = ChartNotes.toRead(scored, tell);
    List<String> notes = new ArrayList<>(notes(piece));
    notes.addAll(toRead);
    sections.add(new Section.Steps(heading("handout.score", index), notes, scores));
    if (!cuts.isEmpty()) {
      List<String> before = new ArrayList<>(inOrder(piece));
      before.addAll(ChartNotes.toRead(cut, tell));
      before.removeAll(toRead);
      sections.add(new Section.Steps(heading("handout.cut", index), before, cuts));
    }
    return sections;
  }

  /** Which piece it is, where there are several. */
  private String heading(String key, int index) {
    boolean isAlone = pieces.size() == 1;
    return part.heading(
        tell,
        key,
        "piece",
        isAlone ? 0 : pieces.indexOf(index) + 1,
        "with",
        chart.pieces().get(index).name());
  }

  /** Why what is cut comes in this order, where several kinds of cuts do. */
  private List<String> inOrder(PieceChart piece) {
    boolean isInside = piece.steps().stream().anyMatch(s -> s.isCut() && !isWaste(s));
    boolean isWaste = piece.steps().stream().anyMatch(Scoring::isWaste);
    return isInside && isWaste ? List.of(tell.say("handout.inside-first")) : List.of();
  }

  private static boolean isWaste(Step step) {
    return step instanceof Step.CutAway;
  }

  /** Cuts of many corners are pricked through, too: nobody measures dozens of places. */
  private StepWords brief(Step step, StepWords words) {
    return step.isCut() && words.text().length() > LONGEST
        ? StepText.byTemplate(step, tell).with(" " + tell.say("handout.prick"))
        : words;
  }

  private List<String> notes(PieceChart piece) {
    if (piece.isForBoard()) {
      return List.of(tell.say("handout.on-board"));
    }
    String why =
        piece.parallelPart() < ScoreChart.FOR_BOARD
            ? piece.hindrance(tell)
            : byRuler.why().orElseGet(() -> piece.hindrance(tell));
    return List.of(
        tell.say(
                "handout.by-template",
                "why",
                why,
                "chart",
                piece.isTooMuch() ? "many" : piece.isByTemplate() ? "none" : "told",
                "measures",
                piece.measures())
            .strip());
  }

  private String alt(Step step) {
    return tell.say(
        "handout.alt-step",
        "step",
        switch (step) {
          case Step.Trim _ -> "trim";
          case Step.FullScores _, Step.ShortScores _, Step.SpotScores _ -> "scores";
          case Step.Points _ -> "points";
          case Step.Punch _ -> "punch";
          case Step.Windows _ -> "windows";
          case Step.Slits s when s.isForTongues() -> "tongues";
          case Step.Slits _ -> "slits";
          case Step.CutAway _ -> "waste";
        });
  }

  private String behind(List<Backings.Piece> backings) {
    List<String> papers = backings.stream().map(b -> b.asked().paper()).distinct().toList();
    double least = backings.stream().mapToDouble(Backings.Piece::overlap).min().orElseThrow();
    return tell.say("handout.backings", "papers", tell.listed(papers), "overlap", tell.read(least));
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
      words.add(tell.say("handout.cut-labels"));
    }
    if (net.fittings().labels().stream().anyMatch(l -> !l.asked().cut())) {
      words.add(tell.say("handout.write-labels"));
    }
    return String.join(" ", words);
  }

  private Section folding() {
    List<Picture> pictures = new ArrayList<>();
    for (int i : pieces) {
      pictures.add(
          new Picture.Senses(
              i,
              (i == pieces.getFirst()
                      ? tell.say("handout.crease")
                      : tell.say("handout.crease-same", "name", chart.pieces().get(i).name()))
                  + ChartNotes.hinges(laid.net(), i, tell),
              tell.say("handout.alt-senses")));
    }
    String on = goesOn();
    for (int i : on.isEmpty() ? List.<Integer>of() : sheets) {
      pictures.add(new Picture.Layered(i, on, tell.say("handout.alt-layered")));
    }
    int[] pieceOf = laid.net().pieceOfPanel();
    List<Backings.Piece> backings =
        Backings.of(laid.net()).stream().filter(b -> pieces.contains(pieceOf[b.panel()])).toList();
    for (int i : backings.isEmpty() ? List.<Integer>of() : sheets) {
      pictures.add(new Picture.Backed(i, behind(backings), tell.say("handout.alt-backed")));
    }
    return new Section.Steps(part.heading(tell, "handout.fold"), List.of(), pictures);
  }
}
