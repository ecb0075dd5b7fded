package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A script and its files in one text, and that taken apart again. */
class GatheredTest {
  private static final String LINE = "// ======== gathered in: tubs.js ========\n";

  private static Piece piece(String name, String text) {
    return new Piece(name, Piece.State.GATHERED, text);
  }

  @Test
  void everyFileComesBackAsItWas() {
    Random random = new Random(7);
    String[] bits = {
      "const a = 1;", "// ====", "\n", "`", "/*", "x", "\u2028", "\"", "use(\"b.js\")", " "
    };
    for (int trial = 0; trial < 2_000; trial++) {
      List<Piece> pieces = new ArrayList<>();
      for (int i = random.nextInt(4); i > 0; i--) {
        pieces.add(piece("file " + i + ".js", lines(random, bits)));
      }
      Gathered all = new Gathered(lines(random, bits), pieces);
      Gathered again = Gathered.of(all.text());
      assertThat(again.main()).isEqualTo(all.main());
      assertThat(again.pieces().stream().map(p -> p.name() + p.text()))
          .isEqualTo(pieces.stream().map(p -> p.name() + p.text()).toList());
      assertThat(again.text()).isEqualTo(all.text());
    }
  }

  /** Whole lines, for a file that does not end with one gets its line end. */
  private static String lines(Random random, String[] bits) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(8); i > 0; i--) {
      text.append(bits[random.nextInt(bits.length)]);
    }
    return text.isEmpty() ? "" : text.append('\n').toString();
  }

  @Test
  void aFileKnowsItsFirstLine() {
    Gathered all = new Gathered("one\ntwo", List.of(piece("a.js", "x\ny\n"), piece("b.js", "z")));
    String text = all.text();
    for (Piece piece : Gathered.of(text).pieces()) {
      assertThat(text.lines().skip(piece.line() - 1).findFirst())
          .isEqualTo(piece.text().lines().findFirst());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        " // ======== gathered in: tubs.js ========",
        "// ======== gathered in: tubs.js =======",
        "// ======== gathered in: ../tubs.js ========",
        "// ======== gathered in: con.js ========",
        "// ======== gathered in:  ========",
        "// ======== gathered in: ========",
        "// ======== brought in: tubs.js ========",
        "// ========  ========",
        "x // ======== gathered in: tubs.js ========"
      })
  void aLineThatOnlyLooksLikeItIsAComment(String line) {
    String script = "a;\n" + line + "\nb;\n";
    assertThat(Gathered.of(script).pieces()).isEmpty();
    assertThat(Gathered.of(script).main()).isEqualTo(script);
  }

  @Test
  void whatIsBelowIsNoScript() {
    Reading reading = Reading.of("const a = 1;\n" + LINE + "const b = 2;\n");
    assertThat(Names.of(reading).all()).extracting(Name::word).containsExactly("a");
    assertThat(reading.tokens().getLast().kind()).isEqualTo(Token.Kind.COMMENT);
    assertThat(reading.lineCount()).isEqualTo(4);
  }

  @Test
  void anOpenCommentOfTheScriptEndsWithIt() {
    Gathered all = Gathered.of("a; /* open\n" + LINE + "const b = 1; /* c */\n");
    assertThat(all.main()).isEqualTo("a; /* open\n");
    assertThat(all.pieces()).hasSize(1);
  }

  @Test
  void onlyWhatWasReadIsLeftOut() {
    Gathered all =
        new Gathered(
            "a;\n",
            List.of(
                piece("in.js", "x;\n"),
                new Piece("read.js", Piece.State.READ, "y;\n"),
                new Piece("no.js", Piece.State.LACKING, "there is no no.js")));
    assertThat(Gathered.of(all.text()).pieces().getLast().text()).isEqualTo("there is no no.js");
    assertThat(Gathered.own(all.text()))
        .isEqualTo("a;\n// ======== gathered in: in.js ========\nx;\n");
    assertThat(all.gathered().pieces())
        .extracting(Piece::state)
        .containsExactly(Piece.State.GATHERED, Piece.State.GATHERED, Piece.State.LACKING);
  }

  @Test
  void whatStandsAtTheTopIsOffered() {
    String file =
        """
        const wide = 3, [tall, { deep }] = [1, { deep: 2 }];
        let f = function inner() {};
        const g = async () => { const hidden = 1; };
        function tub(side) { let other; }
        async function late() {}
        class Lid { method(given) {} }
        for (const i of [1]) { var lost = i; }
        { const block = 1; }
        const wide2 = class Named {};
        """;
    assertThat(Gathered.offered(file).stream().map(Name::word))
        .containsExactlyInAnyOrder("wide", "tall", "deep", "f", "g", "tub", "late", "Lid", "wide2");
  }

  @Test
  void aLineMoreIsPutAboveWhatIsGathered() {
    String script = "a;\n" + LINE + "b;\n";
    assertThat(Edit.append(script, "c;").in(script)).isEqualTo("a;\nc;\n" + LINE + "b;\n");
    assertThat(Edit.append("a;", "c;").in("a;")).isEqualTo("a;\nc;\n");
    assertThat(Edit.append("", "c;").in("")).isEqualTo("c;\n");
  }

  @Test
  void theUsesThatAreWrittenOutAreFound() {
    assertThat(
            Gathered.used(
                "use('a.js'); const u = use; /* use(\"no.js\") */ x.use(\"no.js\");\n"
                    + "const { q } = use(\"b\\u002ejs\"); use(`c.js`); use(name); use();"))
        .containsExactly("a.js", "b.js", "c.js");
  }

  /** It is done at every letter that is typed. */
  @Test
  void manyLinesThatOnlyLookLikeItAreReadInOneGo() {
    String line = "// ======== gathered in: tubs.js =\n";
    String text = String.join("", IntStream.range(0, 5_000).mapToObj(_ -> line).toList());
    assertThat(Gathered.of(text).main()).hasSize(text.length());
  }
}
