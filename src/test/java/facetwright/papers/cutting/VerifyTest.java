package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that are wrong in one way each, and the steps of one that is right. */
class VerifyTest {
  private static final Paper PAPER = new Paper("sheet", 100, 60);
  private static final List<Wanted> WANTED =
      List.of(Wanted.of("a", 30, 60, 2, false), Wanted.of("b", 40, 20, 3, true));

  private static final Part A = new Part.Piece(30, 60, 0, false);
  private static final Part B = new Part.Piece(40, 20, 1, false);

  private static Part column() {
    Part two = new Part.Cut(40, 40, FromEdge.BOTTOM, 20, B, B);
    return new Part.Cut(40, 60, FromEdge.BOTTOM, 20, B, two);
  }

  private static Part good() {
    Part rest = new Part.Cut(70, 60, FromEdge.LEFT, 30, A, column());
    return new Part.Cut(100, 60, FromEdge.LEFT, 30, A, rest);
  }

  private static CutPlan plan(Part whole) {
    return new CutPlan(WANTED, 0, List.of(new SheetPlan(PAPER, 1, whole)), false, 0);
  }

  @Test
  void aGoodPlanHasNothingWrong() {
    assertThat(Verify.exactly(plan(good()))).isEmpty();
    assertThat(new SheetPlan(PAPER, 1, good()).part()).isEqualTo(1);
  }

  @Test
  void stepsAsAMakerReadsThem() {
    List<Cut> steps = Cuts.of(new SheetPlan(PAPER, 1, good()), WANTED);
    assertThat(
            steps.stream()
                .map(s -> s.text(s.at() + " mm", n -> n, Telling.english(Unit.MM, Ruler.MM))))
        .containsExactly(
            "Cuts 1 to 2: the whole sheet at 30.0 mm from the left, each from the fresh edge. Off"
                + " come 2 pieces “a”; what is left is part A.",
            "Cuts 3 to 4: part A at 20.0 mm from the bottom, each from the fresh edge. Off come 2"
                + " pieces “b”; what is left is a piece “b”.");
  }

  @Test
  void aCutThatStopsShort() {
    Part shortCut = new Part.Cut(100, 60, FromEdge.LEFT, 30, new Part.Waste(30, 50), good());
    assertThat(String.join("|", Verify.atMost(plan(shortCut)))).contains("first part's edge");
  }

  @Test
  void partsThatDoNotAddUp() {
    Part rest = new Part.Cut(80, 60, FromEdge.LEFT, 30, A, new Part.Waste(50, 60));
    Part whole = new Part.Cut(100, 60, FromEdge.LEFT, 30, A, rest);
    assertThat(String.join("|", Verify.exactly(plan(whole))))
        .contains("second part's length", "b: 0 pieces, wanted 3");
  }

  @Test
  void aPieceOfTheWrongSize() {
    Part whole =
        new Part.Cut(
            100, 60, FromEdge.LEFT, 29, new Part.Piece(29, 60, 0, false), new Part.Waste(71, 60));
    assertThat(String.join("|", Verify.atMost(plan(whole)))).contains("a's width is 29.0");
  }

  @Test
  void aPieceTurnedAgainstItsPattern() {
    Part strip =
        new Part.Cut(100, 30, FromEdge.LEFT, 60, new Part.Piece(60, 30, 0, true), waste(40, 30));
    Part whole = new Part.Cut(100, 60, FromEdge.BOTTOM, 30, strip, waste(100, 30));
    assertThat(Verify.atMost(plan(whole))).containsExactly("a is turned against its pattern");
  }

  @Test
  void aPlanWithoutTheKerf() {
    CutPlan plan = new CutPlan(WANTED, 2, List.of(new SheetPlan(PAPER, 1, good())), false, 0);
    assertThat(String.join("|", Verify.exactly(plan))).contains("over the edge");
  }

  @Test
  void tooManyPieces() {
    CutPlan plan = new CutPlan(WANTED, 0, List.of(new SheetPlan(PAPER, 2, good())), false, 0);
    assertThat(Verify.atMost(plan))
        .containsExactly("a: 4 pieces, wanted 2", "b: 6 pieces, wanted 3");
  }

  private static Part waste(double width, double height) {
    return new Part.Waste(width, height);
  }
}
