package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.measure.Unit;
import facetwright.pace.Pace;
import facetwright.pace.Stopped;
import facetwright.pace.TooMuch;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every paper counts its steps as it goes, so that it is seen to go, and ends when it has to. */
class PaperStepsTest {
  private static Design design;

  @BeforeAll
  static void lantern() throws Exception {
    design = LibraryDesigns.design("harbour-lantern");
  }

  private static Job job() {
    Unit unit = design.unit();
    return Jobs.of(design.title(), "", design.laid(), design.folded(), Order.usual(unit).of(8));
  }

  static List<Exporter> exporters() {
    List<Exporter> all = new ArrayList<>(Exporters.all().sequencedValues());
    return all;
  }

  private static void write(Exporter exporter, Pace pace) {
    Job job = job();
    assertThat(pace.<Integer, RuntimeException>of(() -> exporter.files(job).size())).isPositive();
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void itIsSeenToGoAndEnds(Exporter exporter) {
    Pace whole = new Pace();
    write(exporter, whole);
    assertThat(whole.steps()).as(exporter.ending()).isGreaterThan(20);
    Pace half = new Pace(whole.steps() / 2);
    assertThatThrownBy(() -> write(exporter, half)).isInstanceOf(TooMuch.class);
    Pace stopped = new Pace();
    stopped.stop();
    assertThatThrownBy(() -> write(exporter, stopped)).isInstanceOf(Stopped.class);
  }
}
