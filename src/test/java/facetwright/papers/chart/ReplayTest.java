package facetwright.papers.chart;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.words.Site;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Who follows the steps of a chart, and knows nothing but them, gets the scores and cuts of its
 * net.
 */
class ReplayTest {
  /** The usual ones, and some that are coarser than any maker's. */
  private static final List<Ruler> RULERS =
      List.of(
          Ruler.HALF_MM,
          Ruler.SIXTEENTHS,
          new Ruler(Unit.MM, 1),
          new Ruler(Unit.INCH, 8),
          new Ruler(Unit.INCH, 2));

  @TestFactory
  Stream<DynamicTest> everyDesignOfTheLibrary() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path file : LibraryDesigns.files()) {
      for (Ruler ruler : RULERS) {
        tests.add(
            DynamicTest.dynamicTest(file.getFileName() + " by " + ruler, () -> holds(file, ruler)));
      }
    }
    assertThat(tests).hasSizeGreaterThan(15);
    return tests.stream();
  }

  private static void holds(Path file, Ruler ruler) throws Exception {
    Design design =
        Facetwright.evaluate(
            file.getFileName().toString(), LibraryDesigns.text(file), Map.of(), Budget.USUAL);
    ScoreChart chart = ScoreChart.of(design.net(), ruler);
    Sample.holdsToItsNet(design.net(), chart, false);
    if (chart.pieces().stream().allMatch(PieceChart::isForBoard)) {
      Sample.holdsToItsNet(design.net(), chart, true);
    }
  }

  @Property(seed = "20261125", tries = 60)
  void anyWrap(
      @ForAll @IntRange(min = 2, max = 7) int half,
      @ForAll @DoubleRange(min = 12, max = 45) double width,
      @ForAll @DoubleRange(min = 10, max = 30) double rim,
      @ForAll @DoubleRange(min = 20, max = 70) double wall,
      @ForAll @DoubleRange(min = 4, max = 11) double seam,
      @ForAll @IntRange(min = 1, max = 3) int walls,
      @ForAll @IntRange(min = 0, max = 3) int kind,
      @ForAll boolean isOnGrid) {
    Net net = wrap(half, width, rim, wall, seam, walls, kind, isOnGrid);
    ScoreChart chart = ScoreChart.of(net, Ruler.HALF_MM);
    assertThat(chart.pieces()).allMatch(PieceChart::isForBoard);
    Sample.holdsToItsNet(net, chart, false);
    Sample.holdsToItsNet(net, chart, true);
  }

  private static Net wrap(
      int half,
      double width,
      double rim,
      double wall,
      double seam,
      int walls,
      int kind,
      boolean isOnGrid) {
    List<Double> rows = new ArrayList<>();
    rows.add(set(rim, isOnGrid));
    for (int i = 0; i < walls; i++) {
      rows.add(set(wall, isOnGrid));
    }
    rows.add(set(rim, isOnGrid));
    WrapDraft wrap =
        WrapDraft.of(
                Collections.nCopies(2 * half, set(width, isOnGrid)), WrapRow.usual(rows), Site.NONE)
            .seam(set(seam, isOnGrid), Site.NONE);
    if (kind > 0) {
      wrap.all().columns("even", Site.NONE).rows("rim", Site.NONE).remove(Site.NONE);
      wrap.all()
          .columns("odd", Site.NONE)
          .rows("rim", Site.NONE)
          .tabs(Site.NONE)
          .hole(3, Site.NONE);
    }
    if (kind > 1 && walls == 2 && half > 2) {
      wrap.all()
          .columns("even", Site.NONE)
          .rows("wall", Site.NONE)
          .gusset(Pinch.IN, null, Site.NONE);
    }
    return wrap.build();
  }

  private static double set(double mm, boolean isOnGrid) {
    return isOnGrid ? Math.rint(mm) : mm;
  }
}
