package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Polygon2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Steps of making a piece up as actions: what follows on each other and is done alike, by panels of
 * about one size at one height or along one seam, is one action, and gussets are pushed in by one
 * of their own just before what closes over them.
 */
final class Actions {
  /** Places whose heights differ by less part of the whole lie at one height. */
  private static final double LEVEL = 0.08;

  /** Panels whose area differs by less part are about one size. */
  private static final double SIZE = 0.5;

  private final Net net;
  private final FoldedForm form;
  private final List<Gluing.Stage> stages;
  private final Map<Integer, Faces.Face> faces;
  private final double tall;
  private final Set<Integer> pushed = new HashSet<>();
  private final List<Action> actions = new ArrayList<>();

  private Actions(Net net, GlueOrder order) {
    this.net = net;
    this.form = order.form();
    this.stages = order.stages();
    this.faces = order.faces();
    this.tall = form.measures().height();
  }

  /**
   * Actions of some steps.
   *
   * @param order in which the whole net is made up
   * @param own those of its steps that are told here, such as the steps of one part
   */
  static List<Action> of(Net net, GlueOrder order, List<Step> own) {
    Actions made = new Actions(net, order);
    for (int i = 0; i < own.size(); i++) {
      switch (own.get(i)) {
        case Step.Fit(int fitting) -> {
          boolean isLater = own.stream().skip(i).anyMatch(Step.Glue.class::isInstance);
          made.actions.add(new Action.Fitted(fitting, isLater));
        }
        case Step.Glue(Gluing.Stage stage) -> made.glue(stage);
      }
    }
    made.pinch(made.left(own));
    return List.copyOf(made.actions);
  }

  private void glue(Gluing.Stage stage) {
    pinch(Pinched.before(net, form, stages, stages.indexOf(stage), pushed));
    for (int i = 0; i < stage.bonds().size(); i++) {
      Bond bond = stage.bonds().get(i);
      boolean isSecond = i > 0;
      if (!actions.isEmpty()
          && actions.getLast() instanceof Action.Bonded(List<Bond> bonds, boolean isOpposite)
          && isAlike(bonds.getLast(), bond)) {
        List<Bond> more = new ArrayList<>(bonds);
        more.add(bond);
        actions.set(
            actions.size() - 1, new Action.Bonded(more, bonds.size() == 1 ? isSecond : isOpposite));
      } else {
        actions.add(new Action.Bonded(List.of(bond), false));
      }
    }
  }

  private boolean isAlike(Bond one, Bond other) {
    if (one instanceof Bond.Closing(int a) && other instanceof Bond.Closing(int b)) {
      return faces.get(a) == faces.get(b) && isAboutOneSize(a, b) && isLevel(a, b);
    }
    if (!(one instanceof Bond.Joined(int i) && other instanceof Bond.Joined(int j))) {
      return false;
    }
    Join a = net.joins().get(i);
    Join b = net.joins().get(j);
    if (a.hold() != b.hold()) {
      return false;
    }
    if (a instanceof Join.Seam s && b instanceof Join.Seam t) {
      if (s.tab() == Join.Seam.NO_TAB || t.tab() == Join.Seam.NO_TAB) {
        return s.tab() == t.tab() && isLevel(s.a().panel(), t.a().panel());
      }
      return isAboutOneSize(s.tab(), t.tab())
          && (isLevel(s.tab(), t.tab()) || Runs.of(net, List.of(i, j)).size() == 1);
    }
    return a instanceof Join.Lap l
        && b instanceof Join.Lap m
        && faces.get(l.under()) == faces.get(m.under())
        && isAboutOneSize(l.under(), m.under())
        && isLevel(l.under(), m.under());
  }

  private boolean isAboutOneSize(int one, int other) {
    Polygon2 a = net.panels().get(one).outline();
    Polygon2 b = net.panels().get(other).outline();
    return Math.abs(a.area() - b.area()) <= SIZE * a.area();
  }

  private boolean isLevel(int one, int other) {
    double off = Pinched.middle(net, form, one).z() - Pinched.middle(net, form, other).z();
    return Math.abs(off) <= LEVEL * tall;
  }

  /** Gussets that nothing closes over. */
  private Set<Integer> left(List<Step> steps) {
    Set<Integer> here = new HashSet<>();
    for (Gluing.Stage stage : Step.stages(steps)) {
      here.addAll(Pinched.body(net, Gluing.panel(net, stage.bonds().getFirst())));
    }
    here.removeIf(p -> net.panels().get(p).role() != PanelRole.GUSSET || pushed.contains(p));
    return here;
  }

  private void pinch(Set<Integer> gussets) {
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
      actions.add(new Action.Pinched(gussets.stream().sorted().toList(), isAll));
    }
  }
}
