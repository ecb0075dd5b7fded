package facetwright.fold.making;

import java.util.ArrayList;
import java.util.List;

/** One step of making a piece up; the pictures and the words of it are made of this. */
public sealed interface Step {
  /** Something is glued or closed. */
  record Glue(Gluing.Stage stage) implements Step {}

  /**
   * A thing goes in or on, or is told.
   *
   * @param fitting its index among the net's fittings
   */
  record Fit(int fitting) implements Step {}

  /**
   * All steps, in order.
   *
   * @param moments of each fitting, the stages counted as these are
   */
  static List<Step> all(List<Gluing.Stage> stages, List<Moments.Found> moments) {
    List<List<Step>> before = new ArrayList<>();
    for (int i = 0; i <= stages.size(); i++) {
      before.add(new ArrayList<>());
    }
    for (int f = 0; f < moments.size(); f++) {
      before.get(moments.get(f).at()).add(new Fit(f));
    }
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      steps.addAll(before.get(i));
      steps.add(new Glue(stages.get(i)));
    }
    steps.addAll(before.getLast());
    return List.copyOf(steps);
  }

  /** The stages of gluing alone. */
  static List<Gluing.Stage> stages(List<Step> steps) {
    return steps.stream().filter(Glue.class::isInstance).map(s -> ((Glue) s).stage()).toList();
  }
}
