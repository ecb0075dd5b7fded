package facetwright.workbench.table;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.List;
import org.junit.jupiter.api.Test;

/** On the table only the face that takes glue is hatched. */
class GlueOnTableTest {
  /**
   * The harbour lantern: the seam's two tabs take glue outside; of four rim tabs over an opening
   * the first lies on nothing, the three over it are glued by their inner face.
   */
  @Test
  void onlyTheFaceThatTakesItIsHatched() throws Exception {
    Design d = LibraryDesigns.design("harbour-lantern");
    List<Mark> outside = marks(d, false);
    assertThat(hatched(outside)).isEqualTo(2);
    assertThat(dotted(outside)).isEqualTo(6);
    List<Mark> inside = marks(d, true);
    assertThat(hatched(inside)).isEqualTo(6);
    assertThat(dotted(inside)).isEqualTo(2);
  }

  private static List<Mark> marks(Design d, boolean inside) {
    TableLook look = new TableLook(inside, false, false, true);
    return Sheets.of(d.laid(), d.gluing(), look).drawings().stream()
        .flatMap(s -> s.marks().stream())
        .toList();
  }

  private static long hatched(List<Mark> marks) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Fill f && f.kind() == FillKind.GLUE)
        .count();
  }

  /** A tab whose other face takes the glue has its outline dotted, and that of its hole. */
  private static long dotted(List<Mark> marks) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.GLUE_INSIDE)
        .filter(m -> ((Mark.Stroke) m).points().size() < HOLE)
        .count();
  }

  private static final int HOLE = 12;
}
