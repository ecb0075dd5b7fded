package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Papers of tiny and of huge things can be read, and have an end. */
class SmallAndLargeTest {
  private static final Pattern ENLARGED = Pattern.compile("(\\d+) times life size");

  private static Job box(double edge, double sheet) throws Exception {
    Design d =
        Facetwright.evaluate(
            "box.js",
            "design('Box', { units: 'mm' });\nbox({ width: %1$s, depth: %1$s, height: %1$s }).unfold();\nsheet({ width: %2$s, height: %2$s });"
                .formatted(edge, sheet),
            Map.of(),
            Budget.USUAL);
    return Jobs.of(d.title(), "", d.laid(), d.folded(), Order.usual(d.unit()));
  }

  private static List<Mark.Text> words(Drawing page) {
    return page.marks().stream()
        .filter(m -> m instanceof Mark.Text t && Math.abs(t.angle()) < 1e-9)
        .map(Mark.Text.class::cast)
        .filter(t -> !t.content().isBlank())
        .toList();
  }

  private static Box2 box(Mark.Text t) {
    double left =
        t.at().x()
            - switch (t.anchor()) {
              case START -> 0;
              case MIDDLE -> t.width() / 2;
              case END -> t.width();
            };
    double high = Lettering.CAP_HEIGHT * t.size();
    return new Box2(left, t.at().y(), left + t.width(), t.at().y() + high);
  }

  @ParameterizedTest
  @CsvSource({"1, 200", "2, 200", "5, 200", "12, 200", "30, 200", "300, 1500", "900, 4000"})
  void wordsLieApartOnTheirPage(double edge, double sheet) throws Exception {
    Job job = box(edge, sheet);
    List<Drawing> pages = new ArrayList<>(new HandoutWriter().pages(job));
    pages.addAll(ChartWriter.ofSteps().pages(job));
    assertThat(pages).hasSizeLessThan(40);
    for (Drawing page : pages) {
      List<Mark.Text> words = words(page);
      Box2 paper = new Box2(0, 0, page.width(), page.height());
      for (int i = 0; i < words.size(); i++) {
        Box2 one = box(words.get(i));
        String content = words.get(i).content();
        assertThat(paper.union(one)).as("%s on its page", content).isEqualTo(paper);
        for (int j = 0; j < i; j++) {
          assertThat(one.meets(box(words.get(j))))
              .as("%s | %s", content, words.get(j).content())
              .isFalse();
        }
      }
    }
  }

  /** The first picture of a chart is the bare blank, four edges by three of the box. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 1, 2})
  void itSaysHowMuchLargerThanLife(double edge) throws Exception {
    Drawing page = ChartWriter.ofSteps().pages(box(edge, 200)).getFirst();
    Matcher told =
        words(page).stream()
            .map(t -> ENLARGED.matcher(t.content()))
            .filter(Matcher::matches)
            .findFirst()
            .orElseThrow();
    Box2 blank =
        page.marks().stream()
            .filter(m -> m instanceof Mark.Fill f && f.kind() == FillKind.CARD)
            .map(m -> ((Mark.Fill) m).rings().getFirst().box())
            .findFirst()
            .orElseThrow();
    assertThat(blank.width() / (4 * edge)).isBetween(0.999 * times(told), 1.001 * times(told));
    assertThat(blank.width()).isGreaterThan(20);
  }

  private static int times(Matcher told) {
    return Integer.parseInt(told.group(1));
  }

  @Test
  void usualThingsAreNotEnlarged() throws Exception {
    List<Drawing> pages = new ArrayList<>(new HandoutWriter().pages(box(40, 200)));
    assertThat(pages.stream().flatMap(p -> words(p).stream()).map(Mark.Text::content))
        .noneMatch(w -> ENLARGED.matcher(w).find());
  }

  /** A template of a hundred pages is a paper of its own, and the handout says which. */
  @Test
  void aHugeTemplateIsNotInTheHandout() throws Exception {
    Job job = box(900, 4000);
    assertThat(job.tiles()).hasSizeGreaterThan(90);
    List<Drawing> pages = new HandoutWriter().pages(job);
    assertThat(pages).hasSizeLessThan(10);
    String key = String.join(" ", words(pages.getLast()).stream().map(Mark.Text::content).toList());
    assertThat(key)
        .contains("over " + (job.tiles().size() - 1) + " pages of A4")
        .contains(job.named().file("template-tiles.pdf"));
    List<Drawing> few = new HandoutWriter().pages(box(200, 900));
    assertThat(few).hasSizeBetween(12, 40);
  }
}
