package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Checks;
import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.FormException;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Whatever comes in, verdict, findings and whether it can be made say the same. */
class VerdictAgreesTest {
  /** What the verdict says, what it comes to, and whether an error is found. */
  private static void agrees(Net net) {
    Laid laid = SheetLayout.lay(net, Papers.A4, new Room(0, SheetLayout.USUAL_GAP));
    FoldedForm folded = Folding.fold(laid);
    List<Finding> findings = Checks.all(laid, GlueOrder.of(laid.net(), folded));
    Verdict verdict = Verdict.of(laid, folded, findings);
    boolean isSound = findings.stream().noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    String told = verdict.text(Unit.MM);
    switch (verdict.outcome()) {
      case CLOSES -> assertThat(told).startsWith("Closes");
      case FAILS -> {
        assertThat(told).matches("(?s)(Does not close|Can't be made).*");
        assertThat(isSound).as(told).isFalse();
      }
      case UNKNOWN -> assertThat(told).startsWith("Not known");
    }
    assertThat(verdict.outcome() == Verdict.Outcome.CLOSES)
        .isEqualTo(folded.canBeMade(net) && isSound);
    assertThat(verdict.cause().isEmpty()).isEqualTo(verdict.outcome() == Verdict.Outcome.CLOSES);
  }

  /** Verdict, error and whether it can be made say one thing, whichever way a net comes in. */
  @Property(tries = 6, seed = "20261130", shrinking = ShrinkingMode.OFF)
  void whatIsToldAgrees(@ForAll @IntRange(max = 1_000_000) int seed) {
    everyWay(seed);
  }

  /** Sides of hundredths of a millimetre, which have no direction to speak of. */
  @Test
  void tinyOnesToo() {
    everyWay(12);
  }

  private static void everyWay(int seed) {
    for (int way = 0; way < 6; way++) {
      Net net;
      try {
        net = EveryPaperTest.net(way, new Random(seed));
      } catch (NetException | FormException refused) {
        continue;
      }
      agrees(net);
    }
  }
}
