package facetwright.fold.making;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Net;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * In which order a net is made up, and what is told of it: the stages of gluing, their numbers, the
 * faces that take the glue, and the moments at which things go in. Each is reckoned when it is
 * first asked for, and once; the papers of one job share it. Where it is not known how the net
 * folds, nothing is glued, and things go in as they come.
 */
public final class GlueOrder {
  private final Net net;
  private final FoldedForm form;

  private List<Gluing.Stage> stages;
  private Map<Integer, Faces.Face> faces;
  private Numbers numbers;
  private List<Moments.Found> moments;
  private List<Step> steps;

  private GlueOrder(Net net, FoldedForm form) {
    this.net = Objects.requireNonNull(net);
    this.form = Objects.requireNonNull(form);
  }

  /**
   * Of a net.
   *
   * @param form the same net folded
   */
  public static GlueOrder of(Net net, FoldedForm form) {
    return new GlueOrder(net, form);
  }

  /**
   * The same, the moments of its fittings reckoned before.
   *
   * @param moments of all the net's fittings, see {@link #moments}; none where they were not
   */
  public static GlueOrder of(Net net, FoldedForm form, List<Moments.Found> moments) {
    GlueOrder order = new GlueOrder(net, form);
    if (moments.size() == net.fittings().all().size()) {
      order.moments = List.copyOf(moments);
    }
    return order;
  }

  /** The form whose gluing it is. */
  public FoldedForm form() {
    return form;
  }

  /** All that is glued or closed, in order. */
  public synchronized List<Gluing.Stage> stages() {
    if (stages == null) {
      stages = form.closure() == Closure.NOT_SOLVED ? List.of() : Gluing.of(net, form);
    }
    return stages;
  }

  /** Of what is glued the face that takes the glue, by its panel. */
  public synchronized Map<Integer, Faces.Face> faces() {
    if (faces == null) {
      faces = Faces.of(net, form, stages());
    }
    return faces;
  }

  /** By which words, pictures and templates tell what is glued. */
  public synchronized Numbers numbers() {
    if (numbers == null) {
      numbers = Numbers.of(net, stages());
    }
    return numbers;
  }

  /** For each of the net's fittings its moment, with what there is room for. */
  public synchronized List<Moments.Found> moments() {
    if (moments == null) {
      moments = net.fittings().all().stream().map(f -> Moments.of(net, form, stages(), f)).toList();
    }
    return moments;
  }

  /** All steps: what is glued, and what goes in or on at its moment. */
  public synchronized List<Step> steps() {
    if (steps == null) {
      steps = Step.all(stages(), moments());
    }
    return steps;
  }

  /** Some of the steps as actions of hands. */
  public List<Action> actions(List<Step> some) {
    return Actions.of(net, this, some);
  }
}
