package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.papers.chart.ByRuler;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Step;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a handout says fits the piece: nothing is named that it lacks, and what it says is clear.
 */
class HandoutWordsTest {
  private static final Map<Path, Design> DESIGNS = new HashMap<>();

  private static Stream<Path> library() throws IOException {
    return LibraryDesigns.files().stream();
  }

  private static Design design(Path file) throws Exception {
    Design known = DESIGNS.get(file);
    if (known == null) {
      known =
          Facetwright.evaluate(file.toString(), LibraryDesigns.text(file), Map.of(), Budget.USUAL);
      DESIGNS.put(file, known);
    }
    return known;
  }

  private static Handout handout(Design d, Order order) {
    Works works = Works.of(d.laid(), d.gluing(), order.unit(), List.of(), 1);
    return Handout.of(
        d.title(),
        d.header().author(),
        order,
        d.laid(),
        d.gluing(),
        Judgement.of(d.laid(), d.folded(), d.findings()),
        works);
  }

  private static List<String> told(Section section) {
    List<String> all = new ArrayList<>();
    switch (section) {
      case Section.Facts f -> all.addAll(f.lines());
      case Section.Ordered o -> all.addAll(o.lines());
      case Section.Steps s -> {
        all.addAll(s.notes());
        s.pictures().forEach(p -> all.add(p.words()));
      }
      case Section.Pictures p -> p.pictures().forEach(q -> all.add(q.words()));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("library")
  void onlyWhatThePieceHas(Path file) throws Exception {
    Design d = design(file);
    Handout handout = handout(d, Order.usual(d.unit()));
    String words =
        String.join("\n", handout.sections().stream().flatMap(s -> told(s).stream()).toList());
    boolean holes =
        d.net().panels().stream()
            .flatMap(p -> p.openings().stream())
            .anyMatch(Opening.Hole.class::isInstance);
    if (!holes) {
      assertThat(words).doesNotContainIgnoringCase("punch");
    }
    for (PanelRole role : List.of(PanelRole.TAB, PanelRole.GUSSET)) {
      if (d.net().panels().stream().noneMatch(p -> p.role() == role)) {
        assertThat(words).doesNotContain(role == PanelRole.TAB ? "tabs go" : "gussets go");
      }
    }
    for (Section section : handout.sections()) {
      if (section instanceof Section.Steps s && s.heading().startsWith("Cut")) {
        boolean isWaste =
            s.pictures().stream()
                .map(Picture.Scored.class::cast)
                .map(p -> handout.chart().pieces().get(p.piece()).steps().get(p.step()))
                .anyMatch(Step.CutAway.class::isInstance);
        assertThat(String.join(" ", s.notes()).contains("waste comes off last"))
            .isEqualTo(isWaste && s.pictures().size() > 1);
      }
    }
  }

  /**
   * Each sign that stands in steps of a section is explained before them, or in a section before.
   */
  @ParameterizedTest
  @MethodSource("library")
  void whatIsSaidIsExplained(Path file) throws Exception {
    Design d = design(file);
    for (Ruler ruler : List.of(Ruler.MM, Ruler.EIGHTHS)) {
      Handout handout = handout(d, Order.usual(d.unit()).by(ruler));
      String before = "";
      for (Section section : handout.sections()) {
        if (!(section instanceof Section.Steps s)
            || !(s.heading().startsWith("Score") || s.heading().startsWith("Cut"))) {
          continue;
        }
        before += String.join("\n", s.notes());
        String steps =
            String.join(
                "\n",
                s.pictures().stream()
                    .filter(p -> ((Picture.Scored) p).step() > 0)
                    .map(Picture::words)
                    .toList());
        boolean isByBoard = before.contains("scoring board");
        if (isByBoard && steps.contains("about ")) {
          assertThat(before).contains("“about”");
        }
        if (isByBoard && steps.contains("mid ")) {
          assertThat(before).contains("“mid");
        }
        if (isByBoard && steps.matches("(?s).*\\b[A-Z]+\\d+\\b.*")) {
          assertThat(before).contains("cross.");
        }
      }
    }
  }

  /** Every blank has a size to be cut to, and where several lie on a sheet its place. */
  @ParameterizedTest
  @MethodSource("library")
  void everyBlankIsTrimmed(Path file) throws Exception {
    Design d = design(file);
    Handout handout = handout(d, Order.usual(d.unit()));
    List<Picture.Scored> trims =
        handout.sections().stream()
            .filter(Section.Steps.class::isInstance)
            .flatMap(s -> ((Section.Steps) s).pictures().stream())
            .filter(Picture.Scored.class::isInstance)
            .map(Picture.Scored.class::cast)
            .filter(p -> p.step() == 0)
            .toList();
    for (Picture.Scored trim : trims) {
      PieceChart piece = handout.chart().pieces().get(trim.piece());
      Step.Trim size = (Step.Trim) piece.steps().getFirst();
      assertThat(trim.words())
          .contains(size.width().reading().text(), size.height().reading().text());
    }
    assertThat(trims).isNotEmpty();
  }

  /** What the ruler is too coarse for is pricked through the template, and the limit is told. */
  @ParameterizedTest
  @MethodSource("library")
  void aRulerTooCoarseIsNotAskedFor(Path file) throws Exception {
    Design d = design(file);
    for (Ruler ruler : List.of(Ruler.usual(d.unit()), Ruler.EIGHTHS)) {
      Order order = Order.usual(d.unit()).by(ruler);
      Handout handout = handout(d, order);
      boolean isCoarse =
          handout.sections().stream()
              .flatMap(s -> told(s).stream())
              .anyMatch(l -> l.contains("too coarse for it"));
      ByRuler again =
          ByRuler.of(d.laid(), d.folded(), handout.chart(), Telling.english(d.unit(), ruler));
      assertThat(again.why()).as(file + " by " + ruler.name()).isEmpty();
      if (isCoarse) {
        assertThat(handout.chart().pieces()).anyMatch(p -> !p.isForBoard());
      }
    }
  }

  /** Papers to be glued on are told with their number, size and border. */
  @ParameterizedTest
  @MethodSource("library")
  void papersAreToldWhole(Path file) throws Exception {
    Design d = design(file);
    Order order = Order.usual(d.unit());
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), 1);
    List<LayerGroup> groups = works.layers().groups().stream().filter(g -> !g.isBehind()).toList();
    String words =
        String.join(
            "\n", handout(d, order).sections().stream().flatMap(s -> told(s).stream()).toList());
    if (groups.isEmpty()) {
      assertThat(words).doesNotContain("decorative papers");
    } else {
      assertThat(words).contains("Glue on the decorative papers", "border", "Papers to glue on: ");
    }
  }
}
