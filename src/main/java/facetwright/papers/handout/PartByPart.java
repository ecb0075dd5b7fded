package facetwright.papers.handout;

import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.fold.making.WhenTogether;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.fold.walk.FoldPath;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ByRuler;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The making of a design of several parts: one part after the other, then all put together. */
final class PartByPart {
  /** How much of its time a part is on its way when it is shown before its place. */
  private static final double BEFORE = 0.7;

  private final Order order;
  private final Telling tell;
  private final Laid laid;
  private final FoldedForm form;
  private final ByRuler byRuler;
  private final Works works;
  private final GlueOrder gluing;
  private final Net net;
  private final Parts parts;
  private final int[] piece;
  private final FittingText fittings;

  /**
   * @param gluing in which order all is made up
   */
  PartByPart(Order order, Laid laid, GlueOrder gluing, ByRuler byRuler, Works works) {
    this.order = order;
    this.tell = order.telling();
    this.laid = laid;
    this.form = gluing.form();
    this.byRuler = byRuler;
    this.works = works;
    this.gluing = gluing;
    this.net = laid.net();
    this.parts = net.parts();
    this.piece = net.pieceOfPanel();
    this.fittings = new FittingText(net, gluing, tell);
  }

  /**
   * @param makings to which the making of each part is added
   */
  List<Section> sections(List<Making> makings) {
    List<List<Step>> glued = glued();
    AssemblyText text = new AssemblyText(net, gluing, fittings, tell);
    double made = form.together().isSome() ? FoldPath.APART : 1;
    List<Section> sections = new ArrayList<>();
    for (int i : inOrder()) {
      Parts.Part part = parts.all().get(i);
      Whose of = Whose.part(parts.called(i), parts.count(i));
      sections.addAll(of(of, part.panels()));
      if (Handout.isSolved(form)) {
        List<Picture> pictures = Handout.pictures(made, i, net, glued.get(i), tell);
        sections.add(new Section.Pictures(of.heading(tell, "handout.shape"), pictures));
      }
      if (!glued.get(i).isEmpty()) {
        sections.add(glue(of, i, glued.get(i), text, makings));
      }
    }
    List<Integer> left = left();
    if (!left.isEmpty()) {
      sections.addAll(of(Whose.REST, left));
      if (!glued.getLast().isEmpty()) {
        sections.add(glue(Whose.REST, Picture.Folded.ALL, glued.getLast(), text, makings));
      }
    }
    if (form.together().isSome()) {
      sections.add(together());
      List<String> last = together(form.together().stages().size());
      if (!last.isEmpty()) {
        sections.add(new Section.Ordered(tell.say("together.last"), last));
      }
    }
    return sections;
  }

  private Section glue(
      Whose of, int part, List<Step> own, AssemblyText text, List<Making> makings) {
    Making making = new Making(part, text.actions(own));
    makings.add(making);
    return Handout.glue(net, of, makings.size() - 1, making, text.lines(making.actions()), tell);
  }

  /** Of parts made alike the first, in the order of their pieces in the chart. */
  private List<Integer> inOrder() {
    return parts.kinds().stream()
        .sorted(
            Comparator.comparingInt(
                i -> parts.all().get(i).panels().stream().mapToInt(p -> piece[p]).min().orElse(0)))
        .toList();
  }

  private List<Section> of(Whose of, List<Integer> panels) {
    List<Integer> pieces = panels.stream().map(p -> piece[p]).distinct().toList();
    return Scoring.of(laid, byRuler, pieces, sheets(panels), of, works, order);
  }

  private List<Integer> sheets(List<Integer> panels) {
    return panels.stream()
        .map(p -> laid.sheetAt(net.panels().get(p).outline().box().centre()))
        .distinct()
        .sorted()
        .toList();
  }

  /** Panels of no part. */
  private List<Integer> left() {
    return IntStream.range(0, net.panels().size())
        .filter(p -> parts.of(p).isEmpty())
        .boxed()
        .toList();
  }

  /** What is glued and goes in of each part, and last of what is none. */
  private List<List<Step>> glued() {
    List<List<Step>> glued = new ArrayList<>();
    for (int i = 0; i <= parts.all().size(); i++) {
      glued.add(new ArrayList<>());
    }
    for (Step step : gluing.steps()) {
      int panel =
          switch (step) {
            case Step.Glue(Gluing.Stage stage) -> Gluing.panel(net, stage.bonds().getFirst());
            case Step.Fit(int fitting) -> net.fittings().all().get(fitting).panels().getFirst();
          };
      if (step instanceof Step.Fit(int fitting)
          && WhenTogether.stage(net, form, net.fittings().all().get(fitting)).isPresent()) {
        continue;
      }
      int of = parts.of(panel).map(parts.all()::indexOf).orElse(parts.all().size());
      glued.get(of).add(step);
    }
    return glued;
  }

  private Section together() {
    List<Together.Stage> stages = form.together().stages();
    List<Together.Swing> swings = form.together().swings();
    double all = stages.size() + swings.size();
    List<Picture> pictures = new ArrayList<>();
    TogetherText text = new TogetherText(parts, form.together(), tell);
    int done = 0;
    for (List<Together.Stage> run : text.runs()) {
      List<String> before = new ArrayList<>();
      for (int i = done; i < done + run.size(); i++) {
        before.addAll(together(i));
      }
      done += run.size();
      pictures.add(
          together(
              (done - 1 + BEFORE) / all,
              told(before, text.words(run)),
              tell.say("together.alt-coming")));
    }
    for (int i = 0; i < swings.size(); i++) {
      double shut = (stages.size() + i) / all;
      String words = HingeText.words(parts, swings.get(i), tell);
      pictures.add(together(shut, words, tell.say("together.alt-shut")));
    }
    pictures.add(new Picture.Folded(1, tell.say("together.made"), tell.say("handout.alt-side")));
    return new Section.Steps(
        tell.say("together.heading"), List.of(tell.say("together.dry")), pictures);
  }

  private static Picture together(double part, String words, String shown) {
    return new Picture.Folded(FoldPath.APART + (1 - FoldPath.APART) * part, words, shown);
  }

  /** What goes in or round before a stage of putting together, or after all of them. */
  private List<String> together(int stage) {
    return gluing.steps().stream()
        .flatMap(
            s ->
                s instanceof Step.Fit(int f)
                    ? Stream.of(net.fittings().all().get(f))
                    : Stream.empty())
        .filter(f -> WhenTogether.stage(net, form, f).equals(OptionalInt.of(stage)))
        .map(f -> fittings.of(f, false))
        .toList();
  }

  private String told(List<String> first, String then) {
    return first.isEmpty()
        ? then
        : tell.say(
            "together.then", "before", String.join(" ", first), "then", Sentence.small(then));
  }
}
