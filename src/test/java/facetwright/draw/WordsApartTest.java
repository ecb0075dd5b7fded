package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.page.ChartPages;
import facetwright.draw.page.CutPages;
import facetwright.draw.page.GuidePages;
import facetwright.draw.page.HandoutPages;
import facetwright.draw.picture.HandoutPictures;
import facetwright.geom.Box2;
import facetwright.measure.Ruler;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On no page do words lie on each other. */
class WordsApartTest {
  private static final double HIGH = Lettering.CAP_HEIGHT;

  private static Design design(String name) throws Exception {
    return LibraryDesigns.design(name);
  }

  private static Box2 box(Mark.Text t) {
    double left =
        t.at().x()
            - switch (t.anchor()) {
              case START -> 0;
              case MIDDLE -> t.width() / 2;
              case END -> t.width();
            };
    return new Box2(left, t.at().y(), left + t.width(), t.at().y() + HIGH * t.size());
  }

  private static List<Mark.Text> level(Drawing page) {
    return page.marks().stream()
        .filter(m -> m instanceof Mark.Text t && Math.abs(t.angle()) < 1e-9)
        .map(Mark.Text.class::cast)
        .filter(t -> !t.content().isBlank())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "harbour-lantern",
        "supper-tray",
        "hex-favour-box",
        "beacon-dodecahedron",
        "boathouse",
        "gull-bauble",
        "twisted-tower"
      })
  void wordsLieApart(String name) throws Exception {
    Design d = design(name);
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), 24);
    Handout handout =
        Handout.of(
            d.title(),
            d.header().author(),
            Order.usual(d.unit()),
            d.laid(),
            d.gluing(),
            Judgement.of(d.laid(), d.folded(), d.findings()),
            works);
    HandoutPictures pictures =
        new HandoutPictures(d.laid(), handout, Order.usual(d.unit()).telling());
    List<Drawing> pages = new ArrayList<>();
    pages.addAll(HandoutPages.of(handout, pictures, Order.usual(d.unit()).page(), 0));
    pages.addAll(ChartPages.of(d.title(), Order.usual(d.unit()), d.laid()));
    pages.addAll(CutPages.of(d.title(), Order.usual(d.unit()), works));
    pages.addAll(GuidePages.of(d.title(), Order.usual(d.unit()), d.net(), works));
    for (Drawing page : pages) {
      List<Mark.Text> words = level(page);
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertThat(box(words.get(i)).meets(box(words.get(j))))
              .as("%s | %s", words.get(i).content(), words.get(j).content())
              .isFalse();
        }
      }
    }
  }

  /** A point without its number could not be found again. */
  @ParameterizedTest
  @ValueSource(strings = {"hex-favour-box", "beacon-dodecahedron", "twisted-tower"})
  void everyPointIsNumberedOnThePage(String name) throws Exception {
    Design d = design(name);
    ScoreChart chart = ScoreChart.of(d.net(), Ruler.usual(d.unit()));
    List<String> numbers =
        ChartPages.of(d.title(), Order.usual(d.unit()), d.laid()).stream()
            .flatMap(p -> level(p).stream())
            .map(Mark.Text::content)
            .toList();
    Map<String, Long> found =
        numbers.stream().collect(Collectors.groupingBy(n -> n, Collectors.counting()));
    for (var piece : chart.pieces()) {
      for (Step step : piece.steps()) {
        if (step instanceof Step.Points) {
          for (int number : step.numbers()) {
            assertThat(found.getOrDefault(String.valueOf(number), 0L))
                .as("point %d of %s", number, piece.name())
                .isPositive();
          }
        }
      }
    }
  }
}
