package facetwright.papers.handout;

import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Numbers;
import facetwright.fold.making.Pinched;
import facetwright.fold.making.Step;
import facetwright.fold.making.Steps;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of gluing in words; places are told by their {@link Numbers}, as pictures show them.
 */
final class AssemblyText {
  private final Net net;
  private final FoldedForm form;
  private final FittingText fittings;
  private final List<Gluing.Stage> stages;
  private final Numbers numbers;
  private final Map<Integer, Faces.Face> faces;
  private final Set<Integer> pushed = new HashSet<>();

  /**
   * @param all steps in which the whole net is made up
   */
  AssemblyText(Net net, FoldedForm form, FittingText fittings, List<Step> all) {
    this.net = net;
    this.form = form;
    this.fittings = fittings;
    this.stages = Steps.stages(all);
    this.numbers = Numbers.of(net, stages);
    this.faces = Faces.of(net, form, stages);
  }

  /** One line a step, and one on the gussets of an opening before it is closed. */
  List<String> lines(List<Step> steps) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      switch (steps.get(i)) {
        case Step.Fit(int fitting) -> {
          boolean isLater = steps.stream().skip(i).anyMatch(Step.Glue.class::isInstance);
          lines.add(fittings.of(net.fittings().all().get(fitting), isLater));
        }
        case Step.Glue(Gluing.Stage stage) -> {
          pinch(Pinched.before(net, form, stages, stages.indexOf(stage), pushed), lines);
          List<String> parts = stage.bonds().stream().map(this::text).toList();
          lines.add(Sentence.capital(String.join("; then, opposite, ", parts)) + ".");
        }
      }
    }
    pinch(left(steps), lines);
    return lines;
  }

  /** Gussets that nothing closes over. */
  private Set<Integer> left(List<Step> steps) {
    Set<Integer> here = new HashSet<>();
    for (Gluing.Stage stage : Steps.stages(steps)) {
      here.addAll(Pinched.body(net, Gluing.panel(net, stage.bonds().getFirst())));
    }
    here.removeIf(p -> net.panels().get(p).role() != PanelRole.GUSSET || pushed.contains(p));
    return here;
  }

  private void pinch(Set<Integer> gussets, List<String> lines) {
    boolean isPinched =
        net.joins().stream()
            .anyMatch(
                j ->
                    Gluing.isPinch(net, j)
                        && j instanceof Join.Seam s
                        && (gussets.contains(s.a().panel()) || gussets.contains(s.b().panel())));
    if (isPinched) {
      pushed.addAll(gussets);
      boolean isAll =
          net.joins().stream()
              .filter(j -> Gluing.isPinch(net, j))
              .allMatch(j -> gussets.contains(((Join.Seam) j).a().panel()));
      lines.add(
          "Push the gussets in along their scores"
              + (isAll ? "" : ", those of the next opening only")
              + ". Their edges meet of themselves and take no glue.");
    }
  }

  private String text(Bond bond) {
    int number = numbers.of(bond);
    return switch (bond) {
      case Bond.Joined(int join) -> text(net.joins().get(join), number);
      case Bond.Closing(int tab) when faces.get(tab) == Faces.Face.NONE ->
          "fold tab " + number + " in over the opening, without glue yet";
      case Bond.Closing _ ->
          "fold tab " + number + " over the opening and glue its inner face to what lies there";
    };
  }

  private String text(Join join, int n) {
    return switch (join) {
      case Join.Seam s when s.hold() == Hold.HOOK ->
          "push hook " + n + " in behind edge " + n + ", cut into cut; no glue";
      case Join.Seam s when s.hold() == Hold.LATCH ->
          "lay the flap with tongue "
              + n
              + " in behind edge "
              + n
              + " and push the tongue out through its slot; no glue";
      case Join.Lap l when l.hold() == Hold.TONGUE ->
          "push tongue "
              + n
              + " through its slot in the panel marked "
              + n
              + " and fold it over; no glue";
      case Join.Lap l when l.hold() == Hold.FLAP ->
          "fold flap " + n + " in under the panel marked " + n + "; no glue";
      case Join.Seam s when !s.hold().isGlued() ->
          "tuck flap " + n + " in behind edge " + n + "; no glue";
      case Join.Lap l when !l.hold().isGlued() ->
          "tuck flap " + n + " in behind the panel marked " + n + "; no glue";
      case Join.Lap l when faces.get(l.under()) == Faces.Face.INSIDE ->
          "glue the inner faces of flap " + n + " and of the panel marked " + n + " together";
      case Join.Lap l -> "glue flap " + n + " under the panel marked " + n;
      case Join.Seam s when s.tab() == Join.Seam.NO_TAB ->
          "bring the two edges " + n + " together, edge to edge, and tape them inside";
      case Join.Seam s -> "glue tab " + n + " under edge " + n;
    };
  }
}
