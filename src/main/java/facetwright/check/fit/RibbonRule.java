package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Opening;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ribbons that are too wide for their holes, or too short to go from one to the other.
 *
 * <p>What it does not detect: how much more length a bow or a knot takes, and a way round that is
 * longer than straight from hole to hole.
 */
public final class RibbonRule implements Rule {
  /** A ribbon gathers to a part of its width; common practice, no source. */
  static final double GATHERS = 4;

  /**
   * A hole.
   *
   * @param place its middle on the made form
   */
  private record Hole(int panel, double across, Vec3 place) {}

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Fitting fitting : subject.net().fittings().all()) {
      if (fitting.thing() instanceof Extra.Ribbon ribbon) {
        List<Hole> holes = holes(subject, ribbon);
        wide(subject, fitting, ribbon, holes).ifPresent(found::add);
        if (subject.folded().closure() != Closure.NOT_SOLVED) {
          brief(subject, fitting, ribbon, holes).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static List<Hole> holes(Subject subject, Extra.Ribbon ribbon) {
    List<Hole> holes = new ArrayList<>();
    for (int p : ribbon.through()) {
      for (Opening opening : subject.panel(p).openings()) {
        if (opening instanceof Opening.Hole hole) {
          Vec3 place = subject.folded().whole().get(p).apply(hole.centre());
          holes.add(new Hole(p, hole.diameter(), place));
        }
      }
    }
    return holes;
  }

  private static Optional<Finding> wide(
      Subject subject, Fitting fitting, Extra.Ribbon ribbon, List<Hole> holes) {
    return holes.stream()
        .filter(h -> ribbon.width() > GATHERS * h.across + Mm.LEAST)
        .findFirst()
        .map(
            h ->
                new Finding(
                    "ribbon",
                    Finding.Severity.WARNING,
                    Message.of(
                        "The ribbon is %s wide and the hole in %s %s across: even gathered it does"
                            + " not go through.",
                        Value.length(ribbon.width()),
                        subject.name(h.panel),
                        Value.length(h.across)),
                    Message.of(
                        "Take one %s wide or narrower, or punch holes of %s.",
                        Value.atMost(GATHERS * h.across), Value.atLeast(ribbon.width() / GATHERS)),
                    new Place.AtPanel(h.panel),
                    fitting.site()));
  }

  private static Optional<Finding> brief(
      Subject subject, Fitting fitting, Extra.Ribbon ribbon, List<Hole> holes) {
    double most = 0;
    Hole one = null;
    Hole other = null;
    for (Hole a : holes) {
      for (Hole b : holes) {
        double apart = a.place.distance(b.place);
        if (apart > most) {
          most = apart;
          one = a;
          other = b;
        }
      }
    }
    if (one == null || ribbon.length() >= most - Mm.HAIR) {
      return Optional.empty();
    }
    Message in =
        one.panel == other.panel
            ? Message.of("%s", subject.name(one.panel))
            : Message.of("%s and %s", subject.name(one.panel), subject.name(other.panel));
    Message why =
        Message.of(
            "the ribbon is %s long, and its holes in %s are %s apart",
            Value.length(ribbon.length()), in, Value.length(most));
    return Optional.of(
        new Finding(
                "ribbon",
                Finding.Severity.ERROR,
                why.capital().plus("."),
                Message.of(
                    "Take one of %s and as much more as the knot takes.", Value.atLeast(most)),
                new Place.AtPanel(one.panel),
                fitting.site())
            .telling(why));
  }
}
