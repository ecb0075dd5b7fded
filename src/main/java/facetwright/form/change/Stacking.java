package facetwright.form.change;

import facetwright.form.Change;
import facetwright.form.Facet;
import facetwright.form.FacetNames;
import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.geom.FacetFrame;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Newell;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts one form on a facet of another; the two facets that meet merge away. */
public final class Stacking {
  /** Corners of two forms that are set on each other meet if they are no farther apart. */
  private static final LengthTolerance SAME = new LengthTolerance(1e-4);

  private Stacking() {}

  /**
   * Puts another form with its base on the top, the first of the ways round that fit. The two
   * facets that meet must be alike; they merge away.
   */
  public static Change with(Form upper) {
    return form -> of(form, form.facet("top"), upper, upper.facet("base"));
  }

  private static Form of(Form lower, int onto, Form upper, int with) {
    List<Vec3> seat = lower.outline(onto);
    List<Vec3> foot = upper.outline(with).reversed();
    for (int shift = 0; shift < seat.size() && foot.size() == seat.size(); shift++) {
      Motion3 motion =
          Motion3.carrying(
              foot.get(shift),
              foot.get((shift + 1) % foot.size()).minus(foot.get(shift)),
              Newell.normal(foot),
              seat.getFirst(),
              seat.get(1).minus(seat.getFirst()),
              Newell.normal(seat));
      Motion3 centred = centred(foot, seat, motion);
      if (matches(seat, foot, shift, centred)) {
        return joined(lower, onto, upper, with, centred, shift);
      }
    }
    throw new FormException(
        "facet \""
            + upper.facets().get(with).name()
            + "\" of the upper form doesn't match facet \""
            + lower.facets().get(onto).name()
            + "\" of the lower: make their sides and angles alike");
  }

  /** Middle on middle, so that rounding in one side does not add up over the rest. */
  private static Motion3 centred(List<Vec3> foot, List<Vec3> seat, Motion3 motion) {
    Vec3 miss = Newell.middle(seat).minus(motion.apply(Newell.middle(foot)));
    return new Motion3(motion.ex(), motion.ey(), motion.ez(), motion.origin().plus(miss));
  }

  private static boolean matches(List<Vec3> seat, List<Vec3> foot, int shift, Motion3 motion) {
    for (int i = 0; i < seat.size(); i++) {
      if (motion.apply(foot.get((i + shift) % foot.size())).distance(seat.get(i)) > SAME.mm()) {
        return false;
      }
    }
    return true;
  }

  private static Form joined(
      Form lower, int onto, Form upper, int with, Motion3 motion, int shift) {
    List<Vec3> corners = new ArrayList<>(lower.corners());
    int[] number = new int[upper.corners().size()];
    Arrays.fill(number, -1);
    List<Integer> foot = upper.facets().get(with).corners().reversed();
    for (int i = 0; i < foot.size(); i++) {
      number[foot.get((i + shift) % foot.size())] = lower.facets().get(onto).corner(i);
    }
    for (int c = 0; c < number.length; c++) {
      if (number[c] < 0) {
        number[c] = corners.size();
        corners.add(motion.apply(upper.corners().get(c)));
      }
    }
    List<Facet> facets = new ArrayList<>(lower.facets());
    facets.remove(onto);
    for (int f = 0; f < upper.facets().size(); f++) {
      if (f != with) {
        Facet facet = upper.facets().get(f);
        List<Integer> loop = facet.corners().stream().map(c -> number[c]).toList();
        FacetFrame was = upper.frame(f);
        FacetFrame moved =
            new FacetFrame(
                motion.apply(was.origin()),
                motion.direction(was.x()),
                motion.direction(was.y()),
                motion.direction(was.normal()));
        facets.add(
            facet.openings().isEmpty()
                ? facet.on(loop)
                : Carry.onto(facet, moved, loop, loop.stream().map(corners::get).toList()));
      }
    }
    return Form.of(corners, FacetNames.apart(lower, facets));
  }
}
