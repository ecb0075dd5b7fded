package facetwright.workbench.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DocTextTest {
  static List<Path> docs() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("docs"))) {
      return files.filter(f -> f.toString().endsWith(".md")).sorted().toList();
    }
  }

  @Test
  void readsWhatADocumentIsMadeOf() {
    DocText text =
        DocText.of(
            """
            # A *small* page

            Two lines
            are one `paragraph`.

            - a point
              that goes on
              - one below, [see](#a-small-page)

            | takes | what |
            |---|---|
            | `a\\|b` | text |

            ```js
            wrap({ a });

            // # no heading
            ```

                scripts/facetwright check
            """);
    assertThat(text.blocks())
        .containsExactly(
            new DocText.Heading(
                1,
                List.of(
                    new DocText.Words("A "),
                    new DocText.Stressed("small"),
                    new DocText.Words(" page"))),
            new DocText.Paragraph(
                List.of(
                    new DocText.Words("Two lines are one "),
                    new DocText.Inline("paragraph"),
                    new DocText.Words("."))),
            new DocText.Item(0, List.of(new DocText.Words("a point that goes on"))),
            new DocText.Item(
                1,
                List.of(
                    new DocText.Words("one below, "), new DocText.Link("see", "#a-small-page"))),
            new DocText.Table(
                List.of(
                    List.of(
                        List.of(new DocText.Words("takes")), List.of(new DocText.Words("what"))),
                    List.of(
                        List.of(new DocText.Inline("a|b")), List.of(new DocText.Words("text"))))),
            new DocText.Code("wrap({ a });\n\n// # no heading"),
            new DocText.Code("scripts/facetwright check"));
  }

  /** Every word of every document is somewhere on its page. */
  @ParameterizedTest
  @MethodSource("docs")
  void losesNoWord(Path doc) throws IOException {
    String text = Files.readString(doc);
    String shown =
        DocText.of(text).blocks().stream().map(DocTextTest::plain).collect(Collectors.joining(" "));
    List<String> words =
        Stream.of(text.replaceAll("\\]\\([^)]*\\)", " ").split("[^\\p{L}\\p{N}]+"))
            .filter(w -> !w.isEmpty() && !w.equals("js"))
            .toList();
    assertThat(List.of(shown.split("[^\\p{L}\\p{N}]+"))).containsAll(words);
  }

  /** Links lead to a heading of the page, or to a document that is there. */
  @ParameterizedTest
  @MethodSource("docs")
  void linksLeadSomewhere(Path doc) throws IOException {
    DocText text = DocText.of(Files.readString(doc));
    List<String> anchors =
        text.blocks().stream()
            .filter(DocText.Heading.class::isInstance)
            .map(h -> "#" + DocText.anchor(((DocText.Heading) h).words()))
            .toList();
    List<String> names = docs().stream().map(d -> d.getFileName().toString()).toList();
    for (DocText.Block block : text.blocks()) {
      for (DocText.Piece piece : pieces(block)) {
        if (piece instanceof DocText.Link(_, String target)) {
          String file = target.replaceAll("#.*", "");
          assertThat(file.isEmpty() ? anchors : names).contains(file.isEmpty() ? target : file);
        }
      }
    }
  }

  private static List<DocText.Piece> pieces(DocText.Block block) {
    return switch (block) {
      case DocText.Heading h -> h.words();
      case DocText.Paragraph p -> p.words();
      case DocText.Item i -> i.words();
      case DocText.Code c -> List.of(new DocText.Words(c.text()));
      case DocText.Table t ->
          t.rows().stream().flatMap(List::stream).flatMap(List::stream).toList();
    };
  }

  private static String plain(DocText.Block block) {
    return pieces(block).stream().map(DocText.Piece::text).collect(Collectors.joining(" "));
  }
}
