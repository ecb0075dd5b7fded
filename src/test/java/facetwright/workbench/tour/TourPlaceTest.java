package facetwright.workbench.tour;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TourPlaceTest {
  @Property(seed = "20261125", tries = 500)
  void aNoteStaysInTheWindowAndOffItsControlWhereThereIsRoom(
      @ForAll @DoubleRange(min = 0, max = 900) double x,
      @ForAll @DoubleRange(min = 0, max = 600) double y,
      @ForAll @DoubleRange(min = 20, max = 380) double wide,
      @ForAll @DoubleRange(min = 20, max = 200) double high) {
    Bounds control = new BoundingBox(x, y, wide, high);
    Bounds note = TourView.place(control, 340, 160, 1280, 800);
    assertThat(new BoundingBox(0, 0, 1280, 800).contains(note)).isTrue();
    assertThat(note.intersects(control)).isFalse();
  }

  /** What stands in one row with a small control stays in sight. */
  @Property(seed = "20261125", tries = 100)
  void aNoteOnATabLeavesItsRowFree(@ForAll @DoubleRange(min = 0, max = 1200) double x) {
    Bounds tab = new BoundingBox(x, 22, 75, 28);
    Bounds note = TourView.place(tab, 340, 160, 1280, 800);
    assertThat(note.getMinY()).isGreaterThan(tab.getMaxY());
    assertThat(new BoundingBox(0, 0, 1280, 800).contains(note)).isTrue();
  }
}
