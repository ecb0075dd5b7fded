package facetwright.papers.handout;

import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.fold.making.WhenTogether;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.fold.walk.FoldPath;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ByRuler;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.words.Decimals;
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
  private final Unit unit;
  private final Laid laid;
  private final FoldedForm form;
  private final ByRuler byRuler;
  private final Works works;
  private final List<Step> steps;
  private final Net net;
  private final Parts parts;
  private final int[] piece;

  /**
   * @param steps in which all is made up
   */
  PartByPart(
      Order order, Laid laid, FoldedForm form, ByRuler byRuler, Works works, List<Step> steps) {
    this.order = order;
    this.unit = order.unit();
    this.laid = laid;
    this.form = form;
    this.byRuler = byRuler;
    this.works = works;
    this.steps = steps;
    this.net = laid.net();
    this.parts = net.parts();
    this.piece = net.pieceOfPanel();
  }

  List<Section> sections() {
    List<List<Step>> glued = glued();
    AssemblyText text = new AssemblyText(net, form, new FittingText(net, form, unit, steps), steps);
    double made = form.together().isSome() ? FoldPath.APART : 1;
    List<Section> sections = new ArrayList<>();
    for (int i : inOrder()) {
      Parts.Part part = parts.all().get(i);
      int count = parts.count(i);
      String of = " “" + parts.called(i) + "”" + (count == 1 ? "" : " (" + count + " of it)");
      sections.addAll(of(of, part.panels()));
      if (Handout.isSolved(form)) {
        List<Picture> pictures = Handout.pictures(made, i, net, glued.get(i));
        sections.add(new Section.Pictures("Shape of" + of, pictures));
      }
      if (!glued.get(i).isEmpty()) {
        sections.add(
            Handout.glue(
                net, of, sheets(part.panels()), i, glued.get(i), text.lines(glued.get(i))));
      }
    }
    List<Integer> left = left();
    if (!left.isEmpty()) {
      sections.addAll(of(" what else there is", left));
      if (!glued.getLast().isEmpty()) {
        sections.add(
            Handout.glue(
                net,
                " what else there is",
                sheets(left),
                Picture.Folded.ALL,
                glued.getLast(),
                text.lines(glued.getLast())));
      }
    }
    if (form.together().isSome()) {
      sections.add(together());
      List<String> last = together(form.together().stages().size());
      if (!last.isEmpty()) {
        sections.add(new Section.Ordered("When all is together", List.of(), last));
      }
    }
    return sections;
  }

  /** Of parts made alike the first, in the order of their pieces in the chart. */
  private List<Integer> inOrder() {
    return IntStream.range(0, parts.all().size())
        .filter(i -> parts.all().get(i).first() == i)
        .boxed()
        .sorted(
            Comparator.comparingInt(
                i -> parts.all().get(i).panels().stream().mapToInt(p -> piece[p]).min().orElse(0)))
        .toList();
  }

  private List<Section> of(String of, List<Integer> panels) {
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
    for (Step step : steps) {
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
    for (int i = 0; i < stages.size(); i++) {
      Placing placing = parts.placings().get(stages.get(i).placing());
      pictures.add(
          together(
              (i + BEFORE) / all,
              told(together(i), words(placing)),
              "The parts as they come together."));
    }
    for (int i = 0; i < swings.size(); i++) {
      double shut = (stages.size() + i) / all;
      String words = HingeText.words(parts, swings.get(i), unit);
      pictures.add(together(shut, words, "The parts with the hinge shut."));
    }
    pictures.add(new Picture.Folded(1, "All together.", "The finished piece from the side."));
    return new Section.Steps(
        "Put the parts together",
        List.of("Try each dry first: what slides needs no glue, what stands on another does."),
        pictures);
  }

  private static Picture together(double part, String words, String shown) {
    return new Picture.Folded(FoldPath.APART + (1 - FoldPath.APART) * part, words, shown);
  }

  /** What goes in or round before a stage of putting together, or after all of them. */
  private List<String> together(int stage) {
    FittingText text = new FittingText(net, form, unit, steps);
    return steps.stream()
        .flatMap(
            s ->
                s instanceof Step.Fit(int f)
                    ? Stream.of(net.fittings().all().get(f))
                    : Stream.empty())
        .filter(f -> WhenTogether.stage(net, form, f).equals(OptionalInt.of(stage)))
        .map(f -> text.of(f, false))
        .toList();
  }

  private static String told(List<String> first, String then) {
    return first.isEmpty() ? then : String.join(" ", first) + " Then " + Sentence.small(then);
  }

  private String words(Placing placing) {
    String one = "“" + parts.all().get(placing.part()).name() + "”";
    String other = "“" + parts.all().get(placing.onto()).name() + "”";
    return switch (placing) {
      case Placing.Over _ -> "Put " + one + " over " + other + deep(placing) + turned(placing);
      case Placing.Into _ -> "Push " + one + " into " + other + deep(placing) + turned(placing);
      case Placing.Hinged(Placing.On on, Side _, double _) ->
          "Lay " + one + " on " + other + ", " + middle(on) + turned(placing);
      case Placing.Hinged hinged -> words(hinged.shut());
      case Placing.On on -> "Glue " + one + " on " + other + ", " + middle(on) + turned(placing);
      case Placing.Beside beside ->
          "Stand "
              + one
              + switch (beside.side()) {
                case RIGHT -> " to the right of ";
                case LEFT -> " to the left of ";
                case FRONT -> " in front of ";
                case BACK -> " behind ";
              }
              + other
              + ", "
              + length(beside.gap())
              + " away"
              + turned(placing);
    };
  }

  private String deep(Placing placing) {
    return form.together().nests().stream()
        .filter(n -> parts.placings().get(n.placing()).shut().equals(placing))
        .findFirst()
        .map(n -> ", " + length(n.depth()) + " deep")
        .orElse("");
  }

  private String middle(Placing.On on) {
    double right = on.at().x();
    double back = on.at().y();
    List<String> off = new ArrayList<>();
    if (right != 0) {
      off.add(length(Math.abs(right)) + (right > 0 ? " to the right" : " to the left"));
    }
    if (back != 0) {
      off.add(length(Math.abs(back)) + (back > 0 ? " to the back" : " to the front"));
    }
    return off.isEmpty()
        ? "middle on middle"
        : "its middle " + String.join(" and ", off) + " of the middle";
  }

  private static String turned(Placing placing) {
    return placing.turn() == 0
        ? "."
        : ", turned by "
            + Decimals.plain(Math.abs(placing.turn()))
            + (placing.turn() > 0 ? "° to the left." : "° to the right.");
  }

  private String length(double mm) {
    return new Length(mm).read(unit);
  }
}
