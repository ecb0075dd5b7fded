package facetwright.papers.handout;

import facetwright.fold.making.Bond;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Step;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.PopOut;
import facetwright.language.Telling;
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
  private static Section poppedOut(Telling tell) {
    return new Section.Ordered(
        tell.say("handout.pop-heading"),
        List.of(
            tell.say("handout.pop-bend"),
            tell.say("handout.pop-crease"),
            tell.say("handout.pop-close")));
  }

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
    Telling tell = order.telling();
    ByRuler byRuler = ByRuler.of(laid, form, ScoreChart.of(net, order.ruler()), tell);
    ScoreChart chart = byRuler.chart();
    List<Step> steps = gluing.steps();
    FittingText fittings = new FittingText(net, gluing, tell);
    List<Section> sections = new ArrayList<>();
    List<Making> makings = new ArrayList<>();
    sections.add(FirstPage.size(order, laid, form, judgement, works));
    sections.add(FirstPage.needs(order, net, works, chart));
    sections.add(
        new Section.Facts(tell.say("handout.care-heading"), Cautions.of(net, title, tell)));
    if (net.parts().all().isEmpty()) {
      sections.addAll(Scoring.of(laid, byRuler, works, order));
      if (isSolved(form) && PopOut.is(net)) {
        sections.add(poppedOut(tell));
      }
      if (isSolved(form)) {
        sections.add(
            new Section.Pictures(
                Whose.ALL.heading(tell, "handout.shape"),
                pictures(1, Picture.Folded.ALL, net, steps, tell)));
      }
      if (!steps.isEmpty()) {
        AssemblyText text = new AssemblyText(net, gluing, fittings, tell);
        Making making = new Making(Picture.Folded.ALL, text.actions(steps));
        makings.add(making);
        List<String> lines = text.lines(making.actions());
        sections.add(glue(net, Whose.ALL, 0, making, lines, tell));
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
  static List<Picture> pictures(double made, int part, Net net, List<Step> steps, Telling tell) {
    List<Picture> pictures = new ArrayList<>();
    String inward = inward(net, part);
    if (steps.stream().anyMatch(Step.Glue.class::isInstance)) {
      String on = tell.say("handout.lift-on", "inward", inward);
      pictures.add(folded(made, ON_THE_WAY[0], part, on, tell));
      return pictures;
    }
    pictures.add(folded(made, ON_THE_WAY[0], part, tell.say("handout.lift"), tell));
    String on = tell.say("handout.go-on", "inward", inward);
    pictures.add(folded(made, ON_THE_WAY[1], part, on, tell));
    pictures.add(
        new Picture.Folded(made, part, tell.say("handout.made"), tell.say("handout.alt-side")));
    return pictures;
  }

  private static Picture folded(double made, double way, int part, String words, Telling tell) {
    String alt = tell.say("handout.alt-way", "percent", Math.round(100 * way));
    return new Picture.Folded(made * way, part, words, alt);
  }

  /** The word by which phrases tell which of its panels go inward. */
  private static String inward(Net net, int part) {
    List<Integer> panels =
        part == Picture.Folded.ALL
            ? IntStream.range(0, net.panels().size()).boxed().toList()
            : net.parts().all().get(part).panels();
    Set<PanelRole> roles = EnumSet.noneOf(PanelRole.class);
    panels.forEach(p -> roles.add(net.panels().get(p).role()));
    boolean tabs = roles.contains(PanelRole.TAB);
    boolean gussets = roles.contains(PanelRole.GUSSET);
    return tabs && gussets ? "both" : tabs ? "tabs" : gussets ? "gussets" : "none";
  }

  /**
   * @param part what is made up
   * @param index of the making
   * @param told what each of its actions does, in words
   */
  static Section glue(
      Net net, Whose part, int index, Making making, List<String> told, Telling tell) {
    List<Bond> bonds = making.bonds();
    if (bonds.isEmpty()) {
      return new Section.Ordered(part.heading(tell, "gluing.heading", "how", "make"), told);
    }
    boolean isGlued =
        bonds.stream()
            .anyMatch(
                b ->
                    !(b instanceof Bond.Joined(int join))
                        || net.joins().get(join).hold().isGlued());
    List<Picture> pictures = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      pictures.add(new Picture.Midway(index, i, told.get(i), tell.say("gluing.alt-before")));
    }
    pictures.add(
        new Picture.Midway(
            index, told.size(), tell.say("handout.made"), tell.say("handout.alt-made")));
    return new Section.Steps(
        part.heading(tell, "gluing.heading", "how", isGlued ? "glue" : "close"),
        List.of(tell.say("gluing.numbers", "glued", String.valueOf(isGlued))),
        pictures);
  }
}
