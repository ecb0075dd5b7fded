package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The guide's table of facets' names holds for what it says, row by row. */
class FacetTableTest {
  private static final Pattern ROW = Pattern.compile("\\| `(.+)` \\| (\".+\") \\|");

  static List<Arguments> rows() throws Exception {
    try (Stream<String> lines = Files.lines(Path.of("docs/writing-a-design.md"))) {
      return lines
          .map(ROW::matcher)
          .filter(Matcher::matches)
          .map(m -> Arguments.of(m.group(1), m.group(2)))
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void facetsAreCalledSo(String form, String names) throws Exception {
    Design design =
        Facetwright.evaluate(
            "table.js",
            "design(\"Table\");\n" + form + ".unfold({ tabs: false });",
            Map.of(),
            Budget.USUAL);
    assertThat(
            design.net().panels().stream()
                .filter(p -> p.role() == PanelRole.FACET)
                .map(Panel::name)
                .map(n -> '"' + n + '"')
                .collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(names.split(", ", -1));
  }

  /** Each function that makes a form has its row. */
  @Test
  void everyFormHasItsRow() throws Exception {
    String all = rows().stream().map(a -> a.get()[0].toString()).collect(Collectors.joining());
    for (String form :
        List.of("box", "prism", "frustum", "antiprism", "pyramid", "bipyramid", "turned", "skin")) {
      assertThat(all).contains(form + "(");
    }
  }
}
