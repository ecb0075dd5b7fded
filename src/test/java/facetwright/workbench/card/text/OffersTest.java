package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.Facetwright;
import facetwright.script.api.Thing;
import facetwright.script.sandbox.Budget;
import facetwright.script.scope.CallSite;
import facetwright.script.scope.Scope;
import facetwright.script.text.Reading;
import facetwright.script.vocabulary.Language;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OffersTest {
  private static final String HEAD =
      """
      design("Band");
      const side = dial("side", 28, { from: 20, to: 32 });
      const body = wrap({ columns: 6, width: side, rows: [9, 30, 9], names: ["foot", "wall", "rim"] });
      const form = prism({ sides: 6, side: 20, height: 30 }).twist(4);
      let again = form;
      const foot = panel("foot", { width: 80, height: 50 });
      const back = foot.attach("top", "back", { depth: 9 });
      // body.
      """;

  private static Offers at(String marked) {
    String text = HEAD + marked.replace("|", "");
    return Offers.at(Scope.of(text), HEAD.length() + marked.indexOf('|'), _ -> "", List::of);
  }

  private static List<String> words(String marked) {
    return at(marked).all().stream().map(Offer::word).toList();
  }

  private static List<String> functions(String thing) {
    Thing<?> found =
        Language.things().stream().filter(t -> t.name().equals(thing)).findFirst().orElseThrow();
    return found.functions().stream().map(f -> f.name()).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          body.|                              ; wrap
          body.columns("odd").|               ; selection of cells
          body.columns([1, 3]).rows("rim").|  ; selection of cells
          form.|                              ; form
          again.|                             ; form
          foot.|                              ; panel
          back.|                              ; panel
          back.attach("top", "lid").|         ; panel
          blank({ width: 9, height: 9 }).|    ; blank
          """)
  void afterADotTheFunctionsOfWhatStandsBefore(String marked, String thing) {
    assertThat(words(marked)).containsExactlyElementsOf(functions(thing));
  }

  @Test
  void afterADotBehindSomethingUnknownAnyFunction() {
    assertThat(words("other.|")).contains("gusset", "attach", "unfold", "score");
    assertThat(words("other.gus|")).containsExactly("gusset");
  }

  @Test
  void theFunctionsThatGiveAThingGiveThatThing() throws Exception {
    // What a chain really comes to, as the language itself names it.
    String script =
        HEAD
            + """
            say([body, body.rows("all"), body.rows("all").columns("odd"), form, form.dual(), foot,
              back, foot.tab("left", { depth: 5 }), blank({ width: 9, height: 9 })]);
            """;
    List<String> said = Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL).said();
    Scope scope = Scope.of(script);
    Reading reading = scope.reading();
    int open = reading.before(script.indexOf("[body, body.rows") + 1);
    StringBuilder told = new StringBuilder();
    for (int i = open + 1; i <= reading.partner(open); i++) {
      boolean top = reading.is(i, ',') || i == reading.partner(open);
      if (top) {
        told.append("a ")
            .append(scope.thingEnding(reading.back(i)).orElseThrow().name())
            .append(' ');
      } else if (reading.partner(i) > i) {
        i = reading.partner(i);
      }
    }
    assertThat(told.toString().strip()).isEqualTo(said.getLast());
  }

  @Test
  void inBracesTheOptionsNotYetGiven() {
    assertThat(words("wrap({ columns: 6, | })"))
        .containsExactly("width", "widths", "rows", "names", "seam", "on");
    assertThat(words("wrap({ columns: 6, wi| })")).containsExactly("width", "widths");
    assertThat(words("body.rows(\"rim\").tabs({ |")).contains("hole");
    assertThat(at("wrap({ r| })").all().getFirst().written()).isEqualTo("rows: ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          body.columns("|")              ; even,odd,all
          body.columns("e|               ; even
          body.rows("|")                 ; rim,upper rim,lower rim,wall,all,foot
          design("a", { units: "|" })    ; mm,cm,in
          sheet("lett|")                 ; Letter
          sheet("A4", { grain: "|" })    ; long,short,unknown
          """)
  void inQuotesTheWordsItTakes(String marked, String words) {
    assertThat(words(marked)).containsExactlyInAnyOrder(words.split(","));
  }

  @Test
  void aTextThatIsOpenIsClosed() {
    Offers offers = at("body.columns(\"e|");
    assertThat(offers.all().getFirst().written()).isEqualTo("even\"");
  }

  @Test
  void elsewhereTheScriptsNamesAndTheFunctionsThatStandAlone() {
    List<String> words = words("const x = |");
    assertThat(words).startsWith("back", "foot", "again", "form", "body", "side");
    assertThat(words).contains("prism", "wrap", "const").doesNotContain("x", "gusset");
    assertThat(words("wrap({ width: si| })")).startsWith("side");
    assertThat(at("pri|").all().getFirst().written()).isEqualTo("prism({  })");
  }

  @ParameterizedTest
  @CsvSource(quoteCharacter = '\u0000', textBlock = "// bo|\n/* bo| */\nsay(\"bo|\")\na(28|)")
  void nothingInCommentsTextsAndNumbers(String marked) {
    assertThat(words(marked)).isEmpty();
  }

  @Test
  void eachOfferHasItsHelp() {
    assertThat(at("body.columns(\"odd\").gus|").all().getFirst().help().does()).isNotBlank();
    assertThat(at("sid|").all().getFirst().help().does()).isEqualTo("A dial of this script.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          dial("a", | )                       ; dial  ; value
          dial("a", 8, { from: | })           ; dial  ; from
          dial("a", 8, { from: 3, to: 4| })   ; dial  ; to
          wrap({ rows: [1, |3] })             ; wrap  ; rows
          body.rows("rim").tabs({ hole: | })  ; tabs  ; hole
          dial("a", length("|2 in"))          ; length ; text
          """)
  void theArgumentAPlaceIsIn(String marked, String function, String argument) {
    String text = HEAD + marked.replace("|", "");
    CallSite call = CallSite.at(Scope.of(text), HEAD.length() + marked.indexOf('|')).orElseThrow();
    assertThat(call.fn().name()).isEqualTo(function);
    assertThat(call.arg().orElseThrow().name()).isEqualTo(argument);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          body.col|umns("odd")      ; body.columns("odd")
          body.col|                 ; body.columns()
          body.col|sheet("A4")      ; body.columns()sheet("A4")
          body.columns("e|dd")      ; body.columns("even")
          body.columns("e|).rows("rim") ; body.columns("even").rows("rim")
          wrap({ co|: 6 })          ; wrap({ columns: 6 })
          """)
  void takingAnOffer(String marked, String after) {
    String text = HEAD + marked.replace("|", "");
    int caret = HEAD.length() + marked.indexOf('|');
    Scope scope = Scope.of(text);
    Offers offers = Offers.at(scope, caret, _ -> "", List::of);
    assertThat(offers.edit(scope.reading(), offers.all().getFirst(), caret).in(text))
        .isEqualTo(HEAD + after);
  }

  @Test
  void helpOnAWord() {
    String text = HEAD + "body.rows(\"rim\").tabs({ hole: 3 });";
    Scope scope = Scope.of(text);
    assertThat(Help.at(scope, text.lastIndexOf("tabs")).orElseThrow().title()).startsWith("tabs(");
    assertThat(Help.at(scope, text.lastIndexOf("hole")).orElseThrow().belongs())
        .isEqualTo("an option of tabs");
    assertThat(Help.at(scope, text.lastIndexOf("body")).orElseThrow().does())
        .isEqualTo("A wrap of this script.");
    assertThat(Help.at(scope, text.lastIndexOf("3")).orElseThrow().title()).isEqualTo("hole");
    assertThat(Help.at(scope, text.indexOf("// body"))).isEmpty();
  }
}
