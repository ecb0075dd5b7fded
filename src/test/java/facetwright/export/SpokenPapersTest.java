package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.language.Language;
import facetwright.net.Layer;
import facetwright.net.Panel;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Papers in the learner's language: all of it, and all of it to be read. */
class SpokenPapersTest {
  /** Papers with pages, those that are made by the hand at the board, the knife and the glue. */
  private static final Set<String> PAPERS =
      Set.of("pdf", "ring", "tiles", "inside", "layout", "layers", "guides", "chart", "board-card");

  private static final List<Language> OTHERS =
      List.of(Language.FRENCH, Language.GERMAN, Language.SPANISH);

  /** No English sentence of any length does without them all; no other language here has them. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|and|with|from|of|at|is|it|each|sheet|score|fold|paper|layer)\\b",
          Pattern.UNICODE_CHARACTER_CLASS);

  /** Numbers in these languages have a comma (Unicode CLDR, symbols-numberSystem-latn-decimal). */
  private static final Pattern POINT = Pattern.compile("\\d\\.\\d");

  private static Job job(String name, int copies, Language language) throws Exception {
    Design d = LibraryDesigns.design(name);
    return Jobs.of(
        d.title(),
        d.header().author(),
        d.laid(),
        d.folded(),
        Order.usual(d.unit()).of(copies).in(language));
  }

  /** What the script gave, the longest first: it stays as it was written. */
  private static List<String> given(Job job) {
    Stream<String> names =
        Stream.of(
                Stream.of(job.title(), job.author()),
                job.laid().net().panels().stream().map(Panel::name),
                job.laid().cards().stream().flatMap(c -> Stream.of(c.name(), c.colour())),
                job.laid().net().layers().stream()
                    .map(Layer::paper)
                    .filter(p -> !p.equals(Layer.UNNAMED)))
            .flatMap(s -> s);
    return names
        .filter(n -> !n.isBlank())
        .distinct()
        .sorted(Comparator.comparingInt(String::length).reversed())
        .toList();
  }

  private static List<Mark.Text> texts(Drawing page) {
    return page.marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .filter(t -> !t.content().isBlank())
        .toList();
  }

  private static String told(List<Drawing> pages, List<String> given) {
    StringBuilder all = new StringBuilder();
    pages.forEach(
        p -> {
          texts(p).forEach(t -> all.append(t.content()).append(' '));
          p.headings().forEach(h -> all.append(h.text()).append(' '));
        });
    String told = all.toString().toLowerCase(Locale.ROOT);
    for (String name : given) {
      told = told.replace(name.toLowerCase(Locale.ROOT), "…");
    }
    return told;
  }

  @ParameterizedTest
  @CsvSource({
    "harbour-lantern, 24",
    "slip-lantern, 1",
    "hex-favour-box, 24",
    "beacon-dodecahedron, 5",
    "gull-bauble, 8",
    "chandlers-carton, 6",
    "ropewalk-drawer, 1",
    "twisted-tower, 1"
  })
  void eachPaperSpeaksOneLanguageAndHasRoomForIt(String name, int copies) throws Exception {
    for (Language language : OTHERS) {
      Job job = job(name, copies, language);
      List<String> given = given(job);
      for (Exporter exporter : Exporters.all().sequencedValues()) {
        if (!PAPERS.contains(exporter.format()) || !exporter.adds(job)) {
          continue;
        }
        String which = exporter.format() + " of " + name + " in " + language;
        List<Drawing> pages = exporter.pages(job);
        String told = told(pages, given);
        Set<String> english = new TreeSet<>();
        ENGLISH.matcher(told).results().forEach(m -> english.add(around(told, m.start())));
        assertThat(english).as(which).isEmpty();
        assertThat(told).as(which).doesNotContainPattern(POINT);
        pages.forEach(page -> lieApartOnThePage(which, page));
      }
    }
  }

  private static String around(String told, int at) {
    return told.substring(Math.max(0, at - 30), Math.min(told.length(), at + 30));
  }

  /** No words leave the page, and none lie on others. */
  private static void lieApartOnThePage(String which, Drawing page) {
    Box2 all = new Box2(0, 0, page.width(), page.height());
    List<Box2> taken = new ArrayList<>();
    for (Mark.Text text : texts(page)) {
      if (Math.abs(text.angle()) > 1e-9) {
        continue;
      }
      Box2 box = box(text);
      assertThat(all.holds(box, LengthTolerance.FINE)).as("%s: %s", which, text.content()).isTrue();
      assertThat(taken.stream().filter(box::meets)).as("%s: %s", which, text.content()).isEmpty();
      taken.add(box);
    }
  }

  private static Box2 box(Mark.Text t) {
    double left =
        t.at().x()
            - switch (t.anchor()) {
              case START -> 0;
              case MIDDLE -> t.width() / 2;
              case END -> t.width();
            };
    double high = t.size() * Lettering.CAP_HEIGHT;
    return new Box2(left, t.at().y(), left + t.width(), t.at().y() + high);
  }

  /** What is asked for in English reads the same whether the language was said or not. */
  @ParameterizedTest
  @CsvSource({"harbour-lantern, 24", "hex-favour-box, 1"})
  void englishIsTheUsual(String name, int copies) throws Exception {
    Job said = job(name, copies, Language.ENGLISH);
    for (Exporter exporter : Exporters.all().sequencedValues()) {
      if (PAPERS.contains(exporter.format()) && exporter.adds(said)) {
        assertThat(ENGLISH.matcher(told(exporter.pages(said), given(said))).find())
            .as(exporter.format())
            .isTrue();
      }
    }
  }
}
