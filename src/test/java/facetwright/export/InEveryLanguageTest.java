package facetwright.export;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.Mark;
import facetwright.language.Language;
import facetwright.net.Panel;
import facetwright.net.fitting.Extra;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A handout speaks one language from its title to its last page. English is told by small words
 * that stand in nearly every sentence of it, and in none of the others; they are from memory.
 */
class InEveryLanguageTest {
  private static final Pattern ENGLISH =
      Pattern.compile("(?i)\\b(the|and|with|from|of|each|its|into|this|every|where|about)\\b");

  static Stream<Arguments> handouts() throws Exception {
    List<Arguments> all = new ArrayList<>();
    for (String name :
        List.of(
            "harbour-lantern",
            "gull-bauble",
            "boathouse",
            "ropewalk-drawer",
            "netmenders-carton",
            "quay-stairs")) {
      Design design = LibraryDesigns.design(name);
      for (Language language : List.of(Language.FRENCH, Language.GERMAN, Language.SPANISH)) {
        all.add(Arguments.of(design, language));
      }
    }
    return all.stream();
  }

  private static Job job(Design d, Language language) {
    return new Job(
        d.title(),
        d.header().author(),
        d.laid(),
        d.gluing(),
        Order.usual(d.unit()).in(language),
        Judgement.of(d.laid(), d.folded(), d.findings()));
  }

  /** What is said, and what is told of pictures. */
  private static List<String> told(Section section) {
    List<String> all = new ArrayList<>(List.of(section.heading()));
    List<Picture> pictures =
        switch (section) {
          case Section.Facts f -> {
            all.addAll(f.lines());
            yield f.picture().stream().toList();
          }
          case Section.Ordered o -> {
            all.addAll(o.lines());
            yield List.of();
          }
          case Section.Steps s -> {
            all.addAll(s.notes());
            yield s.pictures();
          }
          case Section.Pictures p -> p.pictures();
        };
    pictures.forEach(p -> all.addAll(List.of(p.words(), p.alt())));
    return all;
  }

  /** What stays as its maker wrote it. */
  private static List<String> names(Design d) {
    List<String> all = new ArrayList<>(List.of(d.title(), d.header().author()));
    d.net().panels().stream().map(Panel::name).forEach(all::add);
    d.net().parts().all().forEach(p -> all.add(p.name()));
    d.net().fittings().labels().forEach(l -> all.addAll(l.asked().text().lines().toList()));
    d.net()
        .fittings()
        .all()
        .forEach(
            f -> {
              if (f.thing() instanceof Extra.Note(String text)) {
                all.add(text);
              }
            });
    return all;
  }

  private static String without(List<String> names, String told) {
    String rest = told;
    for (String name : names) {
      rest = name.isBlank() ? rest : rest.replace(name, "");
    }
    return rest;
  }

  @ParameterizedTest
  @MethodSource("handouts")
  void noEnglishIsLeft(Design d, Language language) throws Exception {
    Job job = job(d, language);
    List<String> names = names(d);
    job.handout().handout().sections().stream()
        .flatMap(s -> told(s).stream())
        .forEach(t -> assertThat(without(names, t)).doesNotContainPattern(ENGLISH));
    HandoutWriter writer = new HandoutWriter();
    for (Drawing page : writer.pages(job)) {
      page.marks().stream()
          .filter(Mark.Text.class::isInstance)
          .map(m -> ((Mark.Text) m).content())
          .forEach(t -> assertThat(without(names, t)).doesNotContainPattern(ENGLISH));
      page.headings()
          .forEach(h -> assertThat(without(names, h.text())).doesNotContainPattern(ENGLISH));
    }
    try (PDDocument document = Loader.loadPDF(writer.write(job))) {
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language.tag());
      assertThat(document.getDocumentInformation().getTitle())
          .startsWith(d.title())
          .doesNotContain("handout");
    }
  }

  @ParameterizedTest
  @MethodSource("handouts")
  void thePageForAScreenSaysItsLanguage(Design d, Language language) {
    String page = new String(new HtmlWriter().write(job(d, language)), UTF_8);
    assertThat(page).contains("lang=\"" + language.tag() + "\"");
    String words =
        page.replaceAll("(?s)<style>.*?</style>|<script>.*?</script>", " ")
            .replaceAll("(?s)<[^>]*?(?:aria-label|data-told)=\"([^\"]*)\"[^>]*>", "\n$1\n")
            .replaceAll("(?s)<[^>]*>", "\n");
    words.lines().forEach(t -> assertThat(without(names(d), t)).doesNotContainPattern(ENGLISH));
  }
}
