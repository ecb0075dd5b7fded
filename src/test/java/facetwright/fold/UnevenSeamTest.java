package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A seam whose one side is 2 mm short misses by 2 mm and lets all others meet. */
class UnevenSeamTest {
  private static final double SHORT = 2;
  private static final Site AT = Site.NONE;

  private static void missesByTwo(Net whole) {
    assertThat(Folding.fold(whole).closure()).isEqualTo(Closure.CLOSES);
    FoldedForm form = Folding.fold(ShortSeam.in(whole, SHORT));
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    assertThat(form.gap()).isCloseTo(SHORT, within(1e-6));
    assertThat(form.gaps().stream().filter(g -> g.mm() > 1e-6)).hasSize(1);
    assertThat(form.strains()).isEmpty();
  }

  /** However short and wherever found, the miss is what the sides differ; past what is forgiven. */
  @Property(tries = 40, seed = "20261125")
  void byWhateverLength(
      @ForAll @DoubleRange(min = 0.21, max = 9) double mm,
      @ForAll @DoubleRange(min = 20, max = 120) double width,
      @ForAll @DoubleRange(min = 20, max = 120) double depth,
      @ForAll boolean known) {
    Net tray = Card.tray(width, depth, 25, known ? Card.SQUARE : FoldAngle.TO_SOLVE).net();
    FoldedForm form = Folding.fold(ShortSeam.in(tray, mm));
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    assertThat(form.gap()).isCloseTo(mm, within(1e-6));
  }

  @Test
  void ofATray() {
    missesByTwo(Card.tray(60, 40, 25, Card.SQUARE).net());
    missesByTwo(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE).net());
  }

  @Test
  void ofAPlainWrap() {
    missesByTwo(
        WrapDraft.of(Collections.nCopies(8, 24.0), WrapRow.usual(List.of(60.0)), AT)
            .seam(0, AT)
            .build());
  }

  @Test
  void ofAGussetedWrap() {
    for (int columns : new int[] {6, 8, 12}) {
      WrapDraft wrap =
          WrapDraft.of(Collections.nCopies(columns, 24.0), WrapRow.usual(List.of(80.0, 80.0)), AT)
              .seam(0, AT);
      wrap.all().columns("even", AT).gusset(Pinch.IN, null, AT);
      missesByTwo(wrap.build());
    }
  }

  @Test
  void ofAFormsNet() {
    for (Tabs tabs : List.of(Tabs.NONE, Tabs.USUAL)) {
      missesByTwo(
          new Nets(
                  Solids.prismBySide(6, 30, 40).withoutFacet("top"),
                  Unfolding.as(UnfoldStyle.PETALS).with(tabs))
              .on(0, 0)
              .net());
    }
  }
}
