package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.scope.Scope;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names that used files offer are offered where they are taken from them. */
class FileOffersTest {
  private static final Map<String, String> FILES =
      Map.of(
          "tubs.js",
          """
          const deep = 12;
          function tub(side) {
            const inner = side - 1;
            return prism({ sides: 4, side: inner, height: deep });
          }
          function lid(side) {
            return tub(side + 2);
          }
          """);

  /** In the quotes the files themselves, taken with the closing quote that lacks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      quoteCharacter = '\u0000',
      textBlock =
          """
          const { tub } = use("|");                    @ golden.js,quay lids.js,tubs.js
          const { tub } = use("|                       @ golden.js,quay lids.js,tubs.js
          const tubs = use("t|");                      @ tubs.js
          const tubs = use("tu|bs.js");                @ tubs.js
          const tubs = use('quay|');                   @ quay lids.js
          sheet("|A4");                                @ none
          design("|");                                 @ none
          """)
  void inTheQuotesOfUse(String marked, String expected) {
    List<String> found = words(marked.strip());
    if (expected.strip().equals("none")) {
      assertThat(found).doesNotContain("tubs.js");
    } else {
      assertThat(found).containsExactlyInAnyOrder(expected.strip().split(",", -1));
    }
  }

  private static Offers at(String marked) {
    String text = marked.replace("|", "");
    return Offers.at(
        Scope.of(text),
        marked.indexOf('|'),
        name -> FILES.getOrDefault(name, ""),
        () -> List.of("tubs.js", "quay lids.js", "golden.js"));
  }

  private static List<String> words(String marked) {
    return at(marked).all().stream().map(Offer::word).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      quoteCharacter = '\u0000',
      textBlock =
          """
          const { | } = use("tubs.js");                @ deep tub lid
          const { t| } = use("tubs.js");               @ tub
          const { tub, | } = use("tubs.js");           @ deep lid
          const { |, tub } = use("tubs.js");           @ deep lid
          const { li|d, tub } = use("tubs.js");        @ lid
          const tubs = use("tubs.js"); tubs.|          @ deep tub lid
          const tubs = use("tubs.js"); tubs.l|         @ lid
          use("tubs.js").|                             @ deep tub lid
          const { | } = use("other.js");               @ none
          """)
  void inBracesAndBehindTheDot(String marked, String expected) {
    List<String> wanted =
        expected.strip().equals("none") ? List.of() : List.of(expected.strip().split(" ", -1));
    assertThat(words(marked)).as(marked).containsExactlyElementsOf(wanted);
  }

  @Test
  void aFunctionIsWrittenWithItsBracketsBehindTheDotAndWithoutInBraces() {
    assertThat(at("const tubs = use(\"tubs.js\"); tubs.tu|").all().getFirst().written())
        .isEqualTo("tub()");
    assertThat(at("const { tu| } = use(\"tubs.js\");").all().getFirst().written()).isEqualTo("tub");
  }

  @Test
  void whatIsSaidOfThemNamesTheFile() {
    Help help = at("use(\"tubs.js\").tu|").all().getFirst().help();
    assertThat(help.belongs()).isEqualTo("made in tubs.js");
    assertThat(help.does()).doesNotContain("script");
  }

  @Test
  void elsewhereAllIsAsWithoutFiles() {
    for (String marked :
        List.of(
            "const body = prism({ sides: 6, | });",
            "const a = { | };",
            "const form = prism({ sides: 6, side: 20, height: 30 }); form.|")) {
      String text = marked.replace("|", "");
      assertThat(words(marked))
          .isEqualTo(
              Offers.at(Scope.of(text), marked.indexOf('|'), _ -> "", List::of).all().stream()
                  .map(Offer::word)
                  .toList());
    }
  }
}
