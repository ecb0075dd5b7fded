package facetwright.papers.handout;

import facetwright.fold.making.Bond;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.fold.making.Steps;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.PopOut;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ByRuler;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a student needs to make a piece, and a teacher to prepare for a class.
 *
 * @param title of the design
 * @param author who made it, blank where not said
 * @param sections in the order to be read
 * @param chart whose steps the sections show
 * @param steps in which it is made up; nothing is glued where it is not known how it folds
 */
public record Handout(
    String title, String author, List<Section> sections, ScoreChart chart, List<Step> steps) {
  /** How far open the pictures on the way show it. */
  private static final double[] ON_THE_WAY = {0.3, 0.65};

  public Handout {
    sections = List.copyOf(sections);
    steps = List.copyOf(steps);
  }

  /** What stands out of a card that is scored and slit; common practice, no source. */
  private static final List<String> POPPED_OUT =
      List.of(
          "Bend the card a little along the score that runs through its middle. Push the strips"
              + " between the slits through from behind as you do, the lowest first.",
          "Crease each score of the strips the way its line tells, mountain or valley.",
          "Close the card flat, press it, and open it again: what is slit stands out.");

  /** In which it is glued. */
  public List<Gluing.Stage> turns() {
    return Steps.stages(steps);
  }

  /**
   * @param order what is set is told by its ruler, what is only read in its unit
   * @param laid the net on its sheets
   * @param form the folded form of the same net
   * @param judgement the verdict on the same
   * @param works what all pieces take
   */
  public static Handout of(
      String title,
      String author,
      Order order,
      Laid laid,
      FoldedForm form,
      Judgement judgement,
      Works works) {
    Net net = laid.net();
    Unit unit = order.unit();
    ByRuler byRuler =
        ByRuler.of(laid, form, ScoreChart.of(net, order.ruler()), order.ruler(), unit);
    ScoreChart chart = byRuler.chart();
    List<Step> steps = Steps.of(net, form);
    FittingText fittings = new FittingText(net, form, unit, steps);
    List<Section> sections = new ArrayList<>();
    sections.add(FirstPage.size(order, laid, form, judgement, works));
    sections.add(FirstPage.needs(order, net, works, chart));
    sections.add(new Section.Facts("Take care", Cautions.of(net, title)));
    if (net.parts().all().isEmpty()) {
      sections.addAll(Scoring.of(laid, byRuler, works, order));
      if (isSolved(form) && PopOut.is(net)) {
        sections.add(new Section.Ordered("Push out what is slit", List.of(), POPPED_OUT));
      }
      if (isSolved(form)) {
        sections.add(new Section.Pictures("Shape", pictures(1, Picture.Folded.ALL, net, steps)));
      }
      if (!steps.isEmpty()) {
        List<Integer> sheets = IntStream.range(0, laid.sheets()).boxed().toList();
        List<String> lines = new AssemblyText(net, form, fittings, steps).lines(steps);
        sections.add(glue(net, "", sheets, Picture.Folded.ALL, steps, lines));
      }
    } else {
      sections.addAll(new PartByPart(order, laid, form, byRuler, works, steps).sections());
    }
    return new Handout(title, author, sections, chart, steps);
  }

  static boolean isSolved(FoldedForm form) {
    return form.closure() != Closure.NOT_SOLVED;
  }

  /**
   * On the way, and made where nothing is glued after it.
   *
   * @param made which part of the way it is until it is made
   * @param part what is shown
   */
  static List<Picture> pictures(double made, int part, Net net, List<Step> steps) {
    List<Picture> pictures = new ArrayList<>();
    String[] words = {
      "Lift all panels along their scores, a little everywhere.", "Go on evenly" + inward(net, part)
    };
    for (int i = 0; i < ON_THE_WAY.length; i++) {
      long percent = Math.round(100 * ON_THE_WAY[i]);
      pictures.add(
          new Picture.Folded(
              made * ON_THE_WAY[i],
              part,
              words[i],
              "The piece folded " + percent + " % of the way, from the side."));
    }
    if (Steps.stages(steps).isEmpty()) {
      pictures.add(new Picture.Folded(made, part, "Made.", "The finished piece from the side."));
    }
    return pictures;
  }

  /** Which of its panels go inward, to follow on a few words; a stop where none does. */
  private static String inward(Net net, int part) {
    List<Integer> panels =
        part == Picture.Folded.ALL
            ? IntStream.range(0, net.panels().size()).boxed().toList()
            : net.parts().all().get(part).panels();
    Set<PanelRole> roles = EnumSet.noneOf(PanelRole.class);
    panels.forEach(p -> roles.add(net.panels().get(p).role()));
    boolean tabs = roles.contains(PanelRole.TAB);
    boolean gussets = roles.contains(PanelRole.GUSSET);
    String what = tabs && gussets ? "tabs and gussets" : tabs ? "tabs" : gussets ? "gussets" : "";
    return what.isEmpty() ? "." : "; " + what + " go inward.";
  }

  /**
   * @param part what is glued, to follow on a heading; empty for all
   * @param sheets on which it lies
   * @param shown index of the part that is shown alone, or {@link Picture.Folded#ALL}
   * @param steps what is glued and goes in, in order
   * @param told the same in words
   */
  static Section glue(
      Net net, String part, List<Integer> sheets, int shown, List<Step> steps, List<String> told) {
    List<Picture> pictures = new ArrayList<>();
    if (Steps.stages(steps).isEmpty()) {
      return new Section.Ordered("Make up" + part + " in this order", pictures, told);
    }
    for (int i : sheets) {
      pictures.add(
          new Picture.Numbered(
              i,
              shown,
              "The numbers in rings are those of the tabs and flaps below; the same number without"
                  + " a ring stands at the edge or on the panel where it goes.",
              "The flat net with a number on every tab and at the edge it is glued under."));
    }
    List<String> lines = new ArrayList<>();
    boolean isGlued =
        Steps.stages(steps).stream()
            .flatMap(s -> s.bonds().stream())
            .anyMatch(
                b ->
                    !(b instanceof Bond.Joined(int join))
                        || net.joins().get(join).hold().isGlued());
    lines.add(
        isGlued
            ? "Fit everything dry once. Glue thinly; hold each place until it grips."
            : "Nothing of it is glued: it opens again.");
    lines.addAll(told);
    return new Section.Ordered(
        (isGlued ? "Glue" : "Close") + part + " in this order", pictures, lines);
  }
}
