package facetwright.fold.making;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Net;
import facetwright.net.fitting.Fitting;
import java.util.ArrayList;
import java.util.List;

/** All steps of making a net up, in order: what is glued, and what goes in or on at its moment. */
public final class Steps {
  private Steps() {}

  /** Where it is not known how the net folds, nothing is glued, and things go in as they come. */
  public static List<Step> of(Net net, FoldedForm form) {
    return of(net, form, form.closure() == Closure.NOT_SOLVED ? List.of() : Gluing.of(net, form));
  }

  /** The same, the stages reckoned before. */
  public static List<Step> of(Net net, FoldedForm form, List<Gluing.Stage> stages) {
    List<Fitting> all = net.fittings().all();
    List<List<Step>> before = new ArrayList<>();
    for (int i = 0; i <= stages.size(); i++) {
      before.add(new ArrayList<>());
    }
    for (int f = 0; f < all.size(); f++) {
      before.get(Moments.of(net, form, stages, all.get(f)).at()).add(new Step.Fit(f));
    }
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      steps.addAll(before.get(i));
      steps.add(new Step.Glue(stages.get(i)));
    }
    steps.addAll(before.getLast());
    return List.copyOf(steps);
  }

  /** The stages alone. */
  public static List<Gluing.Stage> stages(List<Step> steps) {
    return steps.stream()
        .filter(Step.Glue.class::isInstance)
        .map(s -> ((Step.Glue) s).stage())
        .toList();
  }
}
