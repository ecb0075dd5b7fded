package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.export.Papers;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Step;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A handout tells all that a student needs, in the order of the work. */
class HandoutTest {
  private static Design design(String name) throws Exception {
    return LibraryDesigns.design(name);
  }

  private static Handout handout(Design d, int pieces) {
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), pieces);
    return Handout.of(
        d.title(),
        d.header().author(),
        Order.usual(d.unit()),
        d.laid(),
        d.gluing(),
        Judgement.of(d.laid(), d.folded(), d.findings()),
        works);
  }

  private static List<Picture.Scored> steps(Handout handout, String heading) {
    return handout.sections().stream()
        .filter(s -> s instanceof Section.Steps && s.heading().startsWith(heading))
        .flatMap(s -> ((Section.Steps) s).pictures().stream())
        .map(Picture.Scored.class::cast)
        .toList();
  }

  private static Step step(Handout handout, Picture.Scored shown) {
    return handout.chart().pieces().get(shown.piece()).steps().get(shown.step());
  }

  @Test
  void sectionsFollowTheWork() throws Exception {
    assertThat(handout(design("harbour-lantern"), 1).sections().stream().map(Section::heading))
        .containsExactly(
            "Finished size",
            "You need",
            "Take care",
            "Score",
            "Cut",
            "Fold once",
            "Shape",
            "Glue in this order");
  }

  /** Four rim tabs of 0.275 mm card meet over either opening. */
  @Test
  void tellsHowThickTheTabsLie() throws Exception {
    Section.Facts size =
        (Section.Facts) handout(design("harbour-lantern"), 1).sections().getFirst();
    assertThat(size.lines())
        .anyMatch(l -> l.startsWith("Where 4 tabs lie on each other the card is 1.1 mm thick"));
    Section.Facts plain = (Section.Facts) handout(design("fog-drum"), 1).sections().getFirst();
    assertThat(plain.lines()).noneMatch(l -> l.contains("lie on each other"));
  }

  /** Every step of a board's chart has its picture, in order, and none stands twice. */
  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "supper-tray", "fog-drum", "gull-bauble"})
  void theChartIsWhole(String name) throws Exception {
    Handout handout = handout(design(name), 1);
    List<Picture.Scored> shown = new ArrayList<>(steps(handout, "Score"));
    shown.addAll(steps(handout, "Cut"));
    List<Step> found = shown.stream().map(s -> step(handout, s)).toList();
    List<Step> wanted =
        handout.chart().pieces().stream()
            .flatMap(
                p -> p.steps().stream().filter(s -> p.isForBoard() || !(s instanceof Step.Points)))
            .toList();
    assertThat(found).containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(shown).allSatisfy(s -> assertThat(s.words()).isNotBlank());
  }

  /** Holes and windows before slits, slits before the waste; common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "supper-tray", "beacon-dodecahedron", "boathouse"})
  void cutsComeInSafeOrderAfterAllScores(String name) throws Exception {
    Handout handout = handout(design(name), 1);
    List<Integer> ranks =
        steps(handout, "Cut").stream()
            .map(
                s ->
                    switch (step(handout, s)) {
                      case Step.Punch _ -> 1;
                      case Step.Windows _ -> 2;
                      case Step.Slits _ -> 3;
                      case Step.CutAway _ -> 4;
                      default -> 0;
                    })
            .toList();
    assertThat(ranks).isNotEmpty().isSorted().doesNotContain(0);
    assertThat(steps(handout, "Score")).noneMatch(s -> step(handout, s).isCut());
  }

  /** A net of slanted scores is pricked through: no student measures 135 points. */
  @Test
  void aTracedPieceIsTakenFromTheTemplate() throws Exception {
    Handout handout = handout(design("beacon-dodecahedron"), 1);
    assertThat(handout.chart().pieces()).noneMatch(PieceChart::isForBoard);
    Section.Steps score =
        (Section.Steps)
            handout.sections().stream()
                .filter(s -> s.heading().equals("Score"))
                .findFirst()
                .orElseThrow();
    assertThat(score.notes().getFirst()).contains("template", "prick");
    assertThat(score.pictures().getFirst().words()).contains("a blank a little larger than");
    assertThat(score.pictures().get(1).words()).contains("30 lines");
  }

  /** Six windows of a boathouse have 32 corners and more: they are pricked, not measured. */
  @Test
  void cutsOfManyCornersAreTakenFromTheTemplate() throws Exception {
    Handout handout = handout(design("boathouse"), 1);
    assertThat(handout.chart().pieces()).allMatch(PieceChart::isForBoard);
    assertThat(steps(handout, "Cut"))
        .allSatisfy(s -> assertThat(s.words().length()).isLessThan(700))
        .anySatisfy(s -> assertThat(s.words()).contains("6 windows", "template"));
    assertThat(steps(handout, "Score")).noneMatch(s -> s.words().contains("template"));
  }

  @Test
  void materialsAreThoseOfTheShoppingList() throws Exception {
    Design d = design("harbour-lantern");
    Section.Facts needs = (Section.Facts) handout(d, 24).sections().get(1);
    assertThat(needs.heading()).isEqualTo("You need, for 24 pieces");
    // Two lanterns a sheet, and one in ten more.
    assertThat(needs.lines().getFirst()).contains("220 g/m²", "buy 14 sheets (needed 12)");
    assertThat(String.join(" ", needs.lines())).contains("Ribbon", "Tools:", "a punch", "trimmer");
  }

  /** Two flags on a strip, at angles that nothing determines. */
  @Test
  void whatDoesNotFoldHasNoShapeAndNoGlue() {
    Laid laid = SheetLayout.lay(Papers.slitSquares(40), Papers.A4, new Room(5, 2));
    FoldedForm form = Folding.fold(laid.net());
    assertThat(form.closure()).isEqualTo(Closure.NOT_SOLVED);
    GlueOrder gluing = GlueOrder.of(laid.net(), form);
    Works works = Works.of(laid, gluing, Unit.MM, List.of(), 1);
    Handout handout =
        Handout.of(
            "Flags",
            "",
            Order.usual(Unit.MM),
            laid,
            gluing,
            Judgement.of(laid, form, List.of()),
            works);
    assertThat(handout.sections().stream().map(Section::heading))
        .contains("Score", "Cut", "Fold once")
        .doesNotContain("Shape", "Glue in this order");
  }
}
