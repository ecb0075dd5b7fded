package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.GlueMarks;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.SheetPart;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The template for the inside is the other face of the one for the outside: held against the light,
 * their lines cover each other, and what is a mountain on the one is a valley on the other.
 */
class InsideTemplateTest {
  static List<Path> library() {
    return LibraryDesigns.files();
  }

  @ParameterizedTest
  @MethodSource("library")
  void itsLinesCoverThoseOfTheOutside(Path file) throws ScriptException {
    Design design = LibraryDesigns.design(file);
    Laid laid = design.laid();
    GlueMarks gluing = GlueMarks.of(design.gluing());
    for (int i = 0; i < laid.sheets(); i++) {
      SheetPart part = SheetPart.of(laid, i);
      Drawing outside = Template.outside(gluing).net(part);
      Drawing inside = Template.inside(gluing).net(part);
      double width = outside.width();
      assertThat(lines(inside, LineKind.CUT, 0)).isEqualTo(lines(outside, LineKind.CUT, width));
      assertThat(lines(inside, LineKind.VALLEY, 0))
          .isEqualTo(lines(outside, LineKind.MOUNTAIN, width));
      assertThat(lines(inside, LineKind.MOUNTAIN, 0))
          .isEqualTo(lines(outside, LineKind.VALLEY, width));
      assertThat(lines(inside, LineKind.LAYER, 0)).isEmpty();
      assertThat(hatched(inside, 0)).isEqualTo(dotted(outside, width));
      assertThat(dotted(inside, 0)).isEqualTo(hatched(outside, width));
    }
  }

  /** The words stand clear of the card on the other face, too. */
  @ParameterizedTest
  @MethodSource("library")
  void itsWordsStandBesideThePieces(Path file) throws ScriptException {
    Design design = LibraryDesigns.design(file);
    Laid laid = design.laid();
    Template template = Template.inside(GlueMarks.of(design.gluing()));
    List<Drawing> pages =
        TemplatePages.of("Trial", Order.usual(design.unit()).telling(), laid, template);
    for (int i = 0; i < laid.sheets(); i++) {
      SheetPart part = SheetPart.of(laid, i);
      int netMarks = template.net(part).marks().size();
      for (Mark mark : pages.get(i).marks().subList(netMarks, pages.get(i).marks().size())) {
        if (mark instanceof Mark.Text t) {
          assertThat(panelAt(part, template, t.at())).as(t.content()).isEqualTo(-1);
        }
      }
    }
    assertThat(pages.stream().flatMap(p -> p.marks().stream()))
        .anyMatch(m -> m instanceof Mark.Text t && t.content().contains("Inside faces up"));
  }

  /** Areas hatched for glue, by the corners of their rings. */
  private static Set<Set<String>> hatched(Drawing page, double width) {
    return page.marks().stream()
        .filter(m -> m instanceof Mark.Fill f && f.kind() == FillKind.GLUE)
        .flatMap(m -> ((Mark.Fill) m).rings().stream())
        .map(r -> places(r.corners(), width))
        .collect(Collectors.toSet());
  }

  /** Areas dotted, as the other face takes the glue. */
  private static Set<Set<String>> dotted(Drawing page, double width) {
    return page.marks().stream()
        .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.GLUE_INSIDE && s.closed())
        .map(m -> places(((Mark.Stroke) m).points(), width))
        .collect(Collectors.toSet());
  }

  private static int panelAt(SheetPart part, Template template, Vec2 at) {
    return part.panels().stream()
        .filter(
            p ->
                Planar.polygon(template.onPage(part, part.laid().net().panels().get(p).outline()))
                    .contains(Planar.factory().createPoint(Planar.coordinate(at))))
        .findFirst()
        .orElse(-1);
  }

  /** Lines as sets of ends, to a thousandth, seen through the page where it has a width. */
  private static Set<Set<String>> lines(Drawing page, LineKind kind, double width) {
    return page.marks().stream()
        .filter(Mark.Stroke.class::isInstance)
        .map(Mark.Stroke.class::cast)
        .filter(s -> s.kind() == kind)
        .map(s -> places(s.points(), width))
        .collect(Collectors.toSet());
  }

  private static Set<String> places(List<Vec2> points, double width) {
    return points.stream()
        .map(p -> width > 0 ? new Vec2(width - p.x(), p.y()) : p)
        .map(p -> Math.round(p.x() * 1000) + " " + Math.round(p.y() * 1000))
        .collect(Collectors.toSet());
  }
}
