package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Segment2;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where the numbered cuts of a plan run. */
class CutPlaceTest {
  private static final List<Wanted> WANTED =
      List.of(
          Wanted.of("wall", 57, 25, 192, true),
          Wanted.of("roof", 80, 61, 20, true),
          Wanted.of("step", 40, 10, 31, false));

  private static CutPlan plan() {
    return Planner.plan(List.of(new Paper("A4", 210, 297)), WANTED, 0, Effort.USUAL);
  }

  /** Each cut of the words has a line, and each line a cut of the words. */
  @Test
  void numbersAreThoseOfTheSteps() {
    for (SheetPlan sheet : plan().sheets()) {
      Set<Integer> told = new TreeSet<>();
      for (Cut step : Cuts.of(sheet, WANTED)) {
        for (int n = step.first(); n <= step.last(); n++) {
          assertThat(told.add(n)).as("cut %d stands once", n).isTrue();
        }
      }
      Set<Integer> drawn =
          CutPlace.of(sheet, WANTED).stream()
              .map(CutPlace::number)
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(drawn).isEqualTo(told);
    }
  }

  /** As often as the blade comes down, and in as many equal parts as the step says. */
  @Test
  void equalPartsBearOneNumber() {
    for (SheetPlan sheet : plan().sheets()) {
      List<CutPlace> places = CutPlace.of(sheet, WANTED);
      assertThat(places).hasSize(sheet.whole().cuts());
      for (Cut step : Cuts.of(sheet, WANTED)) {
        for (int n = step.first(); n <= step.last(); n++) {
          int number = n;
          assertThat(places.stream().filter(p -> p.number() == number)).hasSize(step.of());
        }
      }
    }
  }

  /** The first cut runs edge to edge over the sheet, at the measure that the step tells. */
  @Test
  void theFirstCutRunsOverTheSheet() {
    for (SheetPlan sheet : plan().sheets()) {
      Cut first = Cuts.of(sheet, WANTED).getFirst();
      Segment2 line =
          CutPlace.of(sheet, WANTED).stream()
              .filter(p -> p.number() == 1)
              .findFirst()
              .orElseThrow()
              .line();
      if (first.way() == FromEdge.LEFT) {
        assertThat(line.from().x()).isEqualTo(first.at());
        assertThat(line.length()).isEqualTo(297);
      } else {
        assertThat(line.from().y()).isEqualTo(first.at());
        assertThat(line.length()).isEqualTo(210);
      }
    }
  }
}
