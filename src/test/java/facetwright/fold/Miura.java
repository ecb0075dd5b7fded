package facetwright.fold;

import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A sheet of parallelograms with sides a and b and acute angle γ, scored along lines of a and along
 * zigzags of b, its panels slanted by θ against the plane it lies on: M. Schenk and S. D. Guest,
 * Geometry of Miura-folded metamaterials, PNAS 110 (2013) 3276-3281 (parameters read, equations 1-4
 * from memory).
 *
 * @param gamma in radians
 * @param theta in radians, 0 flat
 */
public record Miura(double a, double b, double gamma, double theta, int columns, int rows) {

  double high() {
    return a * Math.sin(theta) * Math.sin(gamma);
  }

  private double root() {
    return Math.sqrt(1 + Math.pow(Math.cos(theta) * Math.tan(gamma), 2));
  }

  public double across() {
    return b * Math.cos(theta) * Math.tan(gamma) / root();
  }

  public double along() {
    return a * Math.sqrt(1 - Math.pow(Math.sin(theta) * Math.sin(gamma), 2));
  }

  public double shift() {
    return b / root();
  }

  /** Where a corner is in the flat sheet. */
  public Vec2 flat(int i, int j) {
    return new Vec2(i * b * Math.sin(gamma), j * a + (i % 2 == 0 ? 0 : b * Math.cos(gamma)));
  }

  /** Where it is when folded. */
  Vec3 folded(int i, int j) {
    return new Vec3(
        i * across(), j * along() + (i % 2 == 0 ? 0 : shift()), j % 2 == 0 ? 0 : high());
  }

  public int panel(int i, int j) {
    return j * columns + i;
  }

  private Vec3 normal(int i, int j) {
    Vec3 o = folded(i, j);
    return folded(i + 1, j).minus(o).cross(folded(i, j + 1).minus(o)).unit();
  }

  /** Over a score between two panels, its one side to the left; mountain positive, in radians. */
  private double angle(Vec3 left, Vec3 right, Vec3 along) {
    return Math.atan2(left.cross(right).dot(along.unit()), left.dot(right));
  }

  /** Over the score right of a panel. */
  double rightAngle(int i, int j) {
    return angle(normal(i, j), normal(i + 1, j), folded(i + 1, j + 1).minus(folded(i + 1, j)));
  }

  /** Over the score above a panel. */
  double topAngle(int i, int j) {
    return angle(normal(i, j), normal(i, j + 1), folded(i, j + 1).minus(folded(i + 1, j + 1)));
  }

  /**
   * The net, standing on nothing in particular.
   *
   * @param known of which scores, by their number, the angle is given; others are to be solved
   */
  public Net net(IntPredicate known) {
    NetDraft draft = new NetDraft();
    List<PanelDraft> panels = new ArrayList<>();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        panels.add(
            draft.panel(
                "cell " + i + " " + j,
                PanelRole.FACET,
                List.of(flat(i, j), flat(i + 1, j), flat(i + 1, j + 1), flat(i, j + 1)),
                Site.NONE));
      }
    }
    int number = 0;
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        PanelDraft here = panels.get(panel(i, j));
        if (i + 1 < columns) {
          score(draft, here, 1, panels.get(panel(i + 1, j)), 3, rightAngle(i, j), known, number++);
        }
        if (j + 1 < rows) {
          score(draft, here, 2, panels.get(panel(i, j + 1)), 0, topAngle(i, j), known, number++);
        }
      }
    }
    return draft.build();
  }

  private static void score(
      NetDraft draft,
      PanelDraft one,
      int side,
      PanelDraft other,
      int otherSide,
      double angle,
      IntPredicate known,
      int number) {
    draft.score(
        one.edge(side),
        other.edge(otherSide),
        angle > 0 ? Sense.MOUNTAIN : Sense.VALLEY,
        known.test(number)
            ? FoldAngle.degrees(Math.toDegrees(Math.abs(angle)))
            : FoldAngle.TO_SOLVE,
        Site.NONE);
  }
}
