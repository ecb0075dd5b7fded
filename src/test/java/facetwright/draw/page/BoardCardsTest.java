package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** All that is set stands on the card, and no word on another. */
class BoardCardsTest {
  static List<Path> library() {
    return LibraryDesigns.files();
  }

  @ParameterizedTest
  @MethodSource("library")
  void bearsEveryMeasureOnce(Path file) throws ScriptException {
    Design design = LibraryDesigns.design(file);
    for (Ruler ruler : List.of(Ruler.HALF_MM, Ruler.SIXTEENTHS)) {
      ScoreChart chart = ScoreChart.of(design.net(), ruler);
      Order order = Order.usual(design.unit()).by(ruler);
      List<Drawing> cards = BoardCards.of(design.title(), order, design.net(), chart);
      assertThat(cards).hasSameSizeAs(chart.pieces());
      SheetSize page = order.page();
      for (int i = 0; i < cards.size(); i++) {
        Drawing card = cards.get(i);
        assertThat(card.width() * card.height())
            .isIn(page.width() * page.height() / 4, page.width() * page.height() / 2);
        List<Box2> words =
            card.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(m -> box((Mark.Text) m))
                .toList();
        for (int a = 0; a < words.size(); a++) {
          for (int b = 0; b < a; b++) {
            assertThat(words.get(a).meets(words.get(b))).as("%s on %s", a, b).isFalse();
          }
        }
        PieceChart piece = chart.pieces().get(i);
        if (piece.isForBoard() && !piece.isByTemplate()) {
          assertThat(words(card)).as(file + " " + ruler.name()).containsAll(marks(piece));
        }
      }
    }
  }

  private static Set<String> words(Drawing card) {
    return card.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(m -> ((Mark.Text) m).content())
        .collect(Collectors.toSet());
  }

  /** What the steps at a stop say, as the chart tells them. */
  private static Set<String> marks(PieceChart piece) {
    List<Replay.Frame> frames = Replay.frames(piece.steps());
    Set<String> marks = new HashSet<>();
    for (int i = 0; i < frames.size(); i++) {
      Step step = piece.steps().get(i);
      if (step instanceof Step.FullScores || step instanceof Step.ShortScores) {
        frames
            .get(i)
            .dimensions()
            .forEach(d -> marks.add(d.measure().mark(Telling.english(Unit.MM, piece.ruler()))));
      }
    }
    return marks;
  }

  private static Box2 box(Mark.Text t) {
    double wide = Lettering.width(t.content(), t.weight(), t.size());
    double high = t.size() * Lettering.CAP_HEIGHT;
    if (t.angle() == 90) {
      return new Box2(t.at().x() - high, t.at().y(), t.at().x(), t.at().y() + wide);
    }
    double left =
        switch (t.anchor()) {
          case START -> t.at().x();
          case MIDDLE -> t.at().x() - wide / 2;
          case END -> t.at().x() - wide;
        };
    return new Box2(left, t.at().y(), left + wide, t.at().y() + high);
  }
}
