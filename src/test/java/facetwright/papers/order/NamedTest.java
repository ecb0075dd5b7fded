package facetwright.papers.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.Normalizer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class NamedTest {
  @Test
  void isNamedByTheDesignThenThePaper() {
    Named lantern = new Named("Harbour lantern");
    assertThat(lantern.file("handout.pdf")).isEqualTo("harbour-lantern-handout.pdf");
    assertThat(lantern.file("template.svg", 1)).isEqualTo("harbour-lantern-template.svg");
    assertThat(lantern.file("template.svg", 2)).isEqualTo("harbour-lantern-template-2.svg");
    assertThat(lantern.title("Handout")).isEqualTo("Harbour lantern: handout");
    assertThat(lantern.title("Cutting file (DXF)"))
        .isEqualTo("Harbour lantern: cutting file (DXF)");
  }

  @Test
  void lettersOfAnyScriptStayAndTheRestIsAHyphen() {
    assertThat(new Named(" Brücke/№ 7: «Ost» ").file("net.png")).isEqualTo("brücke-7-ost-net.png");
    assertThat(new Named("../..").file("net.png")).isEqualTo("design-net.png");
    assertThat(new Named("").title("Handout")).isEqualTo("Handout");
  }

  /**
   * Whatever the title, it is one name of a file: no place in other folders, none that is hidden,
   * and at most 255 bytes (from memory: the bound of common file systems).
   */
  @Property(tries = 1000)
  void isAlwaysAFileOfTheFolder(@ForAll String title) {
    String name = new Named(title).file("template-tiles.pdf", 99);
    assertThat(name.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(255);
    assertThat(name).doesNotContainPattern("[\\p{Cntrl}/\\\\:*?\"<>| ]").doesNotStartWith("-");
    assertThat(name).isEqualTo(name.strip()).endsWith("-template-tiles-99.pdf");
    assertThat(Path.of("papers").resolve(name).normalize().getParent())
        .isEqualTo(Path.of("papers"));
    assertThat(Normalizer.isNormalized(name, Normalizer.Form.NFC)).isTrue();
    assertThat(new Named(title).title("Handout")).doesNotContainPattern("\\p{Cntrl}");
  }
}
