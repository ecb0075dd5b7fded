package facetwright.papers.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AsSetTest {
  private static final Ruler FINEST = new Ruler(Unit.MM, 1000);

  private static Design library(String name) throws Exception {
    return LibraryDesigns.design(name);
  }

  /** By a ruler whose marks are a thousandth of a millimetre apart all comes out as it should. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "harbour-lantern",
        "boathouse",
        "hex-favour-box",
        "gull-bauble",
        "twisted-tower",
        "beacon-dodecahedron"
      })
  void aPerfectRulerChangesNothing(String name) throws Exception {
    Design design = library(name);
    ScoreChart chart = ScoreChart.of(design.net(), FINEST);
    Net set = AsSet.net(design.net(), chart).orElseThrow();
    for (int p = 0; p < set.panels().size(); p++) {
      List<Vec2> was = design.net().panels().get(p).outline().corners();
      List<Vec2> is = set.panels().get(p).outline().corners();
      for (int c = 0; c < was.size(); c++) {
        int d = (c + 1) % was.size();
        assertThat(is.get(c).distance(is.get(d)))
            .isEqualTo(was.get(c).distance(was.get(d)), within(0.01));
      }
    }
    FoldedForm form = AsSet.of(design.laid(), chart).orElseThrow().form();
    assertThat(form.gap()).isLessThan(0.05);
    assertThat(form.measures().height())
        .isEqualTo(design.folded().measures().height(), within(0.05));
  }

  // By sixteenths of an inch 28 mm is set as 1 1/8 in and 56 mm as 2 3/16 in: the first column
  // comes to 28.58 mm, the second to 26.99 mm.
  @Test
  void setsColumnsByTheNearestMarks() throws Exception {
    Design lantern = library("harbour-lantern");
    ScoreChart chart = ScoreChart.of(lantern.net(), Ruler.SIXTEENTHS);
    Net set = AsSet.net(lantern.net(), chart).orElseThrow();
    assertThat(
            set.panels().stream()
                .flatMap(p -> p.outline().corners().stream())
                .flatMap(c -> Stream.of(c.x(), c.y())))
        .anySatisfy(x -> assertThat(x).isEqualTo(28.575, within(1e-9)))
        .anySatisfy(x -> assertThat(x).isEqualTo(2.1875 * 25.4, within(1e-9)));
  }

  /** A wrap of uneven columns has other closed forms; the one told is the lantern's own. */
  @ParameterizedTest
  @ValueSource(ints = {8, 16, 32, 64})
  void foldsItAsItIsMeant(int parts) throws Exception {
    Design lantern = library("harbour-lantern");
    ScoreChart chart = ScoreChart.of(lantern.net(), new Ruler(Unit.INCH, parts));
    FoldedForm form = AsSet.of(lantern.laid(), chart).orElseThrow().form();
    double off = 25.4 / parts;
    assertThat(form.measures().height())
        .isEqualTo(lantern.folded().measures().height(), within(3 * off));
    assertThat(form.measures().width())
        .isEqualTo(lantern.folded().measures().width(), within(3 * off));
  }

  @Test
  void saysNothingWhereAllLiesOnMarks() throws Exception {
    Design tray = library("supper-tray");
    ScoreChart inches = ScoreChart.of(tray.net(), Ruler.SIXTEENTHS);
    assertThat(
            AsSet.text(
                tray.laid(), tray.folded(), inches, Telling.english(Unit.INCH, Ruler.SIXTEENTHS)))
        .isEmpty();
    ScoreChart metric = ScoreChart.of(tray.net(), Ruler.MM);
    assertThat(
            AsSet.text(tray.laid(), tray.folded(), metric, Telling.english(Unit.MM, Ruler.HALF_MM))
                .orElseThrow())
        .isEqualTo(
            "All set on the nearest marks, the form comes out within 0.9 mm, and its joins meet.");
  }
}
