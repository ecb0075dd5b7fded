package facetwright.papers.handout;

import facetwright.fold.making.Bond;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Step;
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
 * @param gluing in which order all is made up
 * @param makings how it is made up, part by part; none where it is not known how it folds
 */
public record Handout(
    String title,
    String author,
    List<Section> sections,
    ScoreChart chart,
    GlueOrder gluing,
    List<Making> makings) {
  /** How far open the pictures on the way show it. */
  private static final double[] ON_THE_WAY = {0.4, 0.65};

  public Handout {
    sections = List.copyOf(sections);
    makings = List.copyOf(makings);
  }

  /** What stands out of a card that is scored and slit; common practice, no source. */
  private static final List<String> POPPED_OUT =
      List.of(
          "Bend the card a little along the score that runs through its middle. Push the strips"
              + " between the slits through from behind as you do, the lowest first.",
          "Crease each score of the strips the way its line tells, mountain or valley.",
          "Close the card flat, press it, and open it again: what is slit stands out.");

  /**
   * @param order what is set is told by its ruler, what is only read in its unit
   * @param laid the net on its sheets
   * @param gluing how the same net is made up
   * @param judgement the verdict on the same
   * @param works what all pieces take
   */
  public static Handout of(
      String title,
      String author,
      Order order,
      Laid laid,
      GlueOrder gluing,
      Judgement judgement,
      Works works) {
    Net net = laid.net();
    FoldedForm form = gluing.form();
    Unit unit = order.unit();
    ByRuler byRuler = ByRuler.of(laid, form, ScoreChart.of(net, order.ruler()), order.telling());
    ScoreChart chart = byRuler.chart();
    List<Step> steps = gluing.steps();
    FittingText fittings = new FittingText(net, gluing, unit);
    List<Section> sections = new ArrayList<>();
    List<Making> makings = new ArrayList<>();
    sections.add(FirstPage.size(order, laid, form, judgement, works));
    sections.add(FirstPage.needs(order, net, works, chart));
    sections.add(new Section.Facts("Take care", Cautions.of(net, title, order.telling())));
    if (net.parts().all().isEmpty()) {
      sections.addAll(Scoring.of(laid, byRuler, works, order));
      if (isSolved(form) && PopOut.is(net)) {
        sections.add(new Section.Ordered("Push out what is slit", POPPED_OUT));
      }
      if (isSolved(form)) {
        sections.add(new Section.Pictures("Shape", pictures(1, Picture.Folded.ALL, net, steps)));
      }
      if (!steps.isEmpty()) {
        AssemblyText text = new AssemblyText(net, gluing, fittings);
        Making making = new Making(Picture.Folded.ALL, text.actions(steps));
        makings.add(making);
        List<String> lines = text.lines(making.actions());
        sections.add(glue(net, "", 0, making, lines));
      }
    } else {
      sections.addAll(new PartByPart(order, laid, gluing, byRuler, works).sections(makings));
    }
    return new Handout(title, author, sections, chart, gluing, makings);
  }

  static boolean isSolved(FoldedForm form) {
    return form.closure() != Closure.NOT_SOLVED;
  }

  /**
   * On the way; where nothing is glued after it, farther on it and made, too.
   *
   * @param made which part of the way it is until it is made
   * @param part what is shown
   */
  static List<Picture> pictures(double made, int part, Net net, List<Step> steps) {
    List<Picture> pictures = new ArrayList<>();
    String lift = "Lift all panels along their scores, a little everywhere";
    if (steps.stream().anyMatch(Step.Glue.class::isInstance)) {
      pictures.add(
          folded(made, ON_THE_WAY[0], part, lift + "; then go on evenly" + inward(net, part)));
      return pictures;
    }
    pictures.add(folded(made, ON_THE_WAY[0], part, lift + "."));
    pictures.add(folded(made, ON_THE_WAY[1], part, "Go on evenly" + inward(net, part)));
    pictures.add(new Picture.Folded(made, part, "Made.", "The finished piece from the side."));
    return pictures;
  }

  private static Picture folded(double made, double way, int part, String words) {
    long percent = Math.round(100 * way);
    return new Picture.Folded(
        made * way, part, words, "The piece folded " + percent + " % of the way, from the side.");
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
   * @param part what is made up, to follow on a heading; empty for all
   * @param index of the making
   * @param told what each of its actions does, in words
   */
  static Section glue(Net net, String part, int index, Making making, List<String> told) {
    List<Bond> bonds = making.bonds();
    if (bonds.isEmpty()) {
      return new Section.Ordered("Make up" + part + " in this order", told);
    }
    boolean isGlued =
        bonds.stream()
            .anyMatch(
                b ->
                    !(b instanceof Bond.Joined(int join))
                        || net.joins().get(join).hold().isGlued());
    List<Picture> pictures = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      pictures.add(new Picture.Midway(index, i, told.get(i), "The piece before this step."));
    }
    pictures.add(new Picture.Midway(index, told.size(), "Made.", "The finished piece."));
    String note =
        isGlued
            ? "Numbers are those of the template: ringed on what is glued, plain where it goes."
                + " Hatched takes the glue; dotted, on its far side. Fit it dry first; glue thinly."
            : "Numbers are those of the template: ringed on what moves, plain where it goes."
                + " Nothing is glued: it opens again.";
    return new Section.Steps(
        (isGlued ? "Glue" : "Close") + part + " in this order", List.of(note), pictures);
  }
}
