package facetwright.check;

import facetwright.fold.Closure;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A lid too tight for its box. Both are known by their open rims: two bodies, one shallower than
 * the other, with rims of one shape and nearly one size. The net has no thickness, so on each side
 * the lid has to be wider than the box by a caliper at least: half for its own wall, half for the
 * box's.
 *
 * <p>What it does not detect: lids or boxes whose walls lean, whose corners are held by laps alone,
 * or that have free sides besides their rim; lids that go inside the box rather than over it;
 * bodies of the same depth, which it takes for copies.
 */
final class LidTightRule implements Rule {
  /** Rims that differ by more calipers than this on a side are not made for each other. */
  private static final double WIDEST = 10;

  /** A lid smaller than the box by more calipers than this on a side is no lid for it. */
  private static final double NARROWEST = -2;

  private record Body(List<Integer> panels, Rim rim) {}

  private record Fit(Body box, Rim.Room room) {}

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    List<List<Integer>> all = Bodies.of(subject.net());
    if (all.size() < 2) {
      return List.of();
    }
    List<Body> bodies = new ArrayList<>();
    for (List<Integer> panels : all) {
      Rim.of(subject, panels).ifPresent(rim -> bodies.add(new Body(panels, rim)));
    }
    double caliper = subject.laid().stock().caliper();
    List<Finding> found = new ArrayList<>();
    for (Body lid : bodies) {
      List<Fit> fits = fits(lid, bodies, caliper);
      boolean slides = fits.stream().anyMatch(f -> f.room().least() >= caliper * (1 - 1e-6));
      if (!slides && !fits.isEmpty()) {
        Fit nearest = fits.stream().min(Comparator.comparingDouble(f -> f.room().farthest())).get();
        found.add(finding(subject, lid, nearest, caliper));
      }
    }
    return found;
  }

  private static List<Fit> fits(Body lid, List<Body> bodies, double caliper) {
    List<Fit> fits = new ArrayList<>();
    for (Body box : bodies) {
      if (box.rim().depth() <= lid.rim().depth() + 2 * caliper) {
        continue;
      }
      Optional<Rim.Room> room = lid.rim().over(box.rim());
      room.filter(r -> r.least() >= NARROWEST * caliper && r.most() <= WIDEST * caliper)
          .ifPresent(r -> fits.add(new Fit(box, r)));
    }
    return fits;
  }

  private static Finding finding(Subject subject, Body lid, Fit fit, double caliper) {
    int panel = largest(subject, lid);
    double room = fit.room().least();
    String how;
    if (Math.abs(room) < 0.005) {
      how = "is made exactly as wide as the box";
    } else if (room > 0) {
      how = "is made only " + Mm.text(room) + " wider on a side than the box";
    } else {
      how = "is made " + Mm.text(-room) + " narrower on a side than the box";
    }
    return new Finding(
        "lid-tight",
        Finding.Severity.WARNING,
        String.format(
            "The lid with %s %s with %s. The card is %s thick, so the lid does not go over it.",
            subject.name(panel), how, subject.name(largest(subject, fit.box())), Mm.text(caliper)),
        String.format(
            "Make the lid %s wider across, or the box as much narrower: a caliper of room on every"
                + " side.",
            Mm.atLeast(2 * (caliper - room))),
        new Place.AtPanel(panel),
        subject.panel(panel).site());
  }

  private static int largest(Subject subject, Body body) {
    return body.panels().stream()
        .filter(p -> subject.panel(p).role() == PanelRole.FACET)
        .max(
            Comparator.<Integer>comparingDouble(
                    p -> Math.rint(subject.panel(p).outline().area() * 1e6))
                .thenComparing(Comparator.reverseOrder()))
        .orElse(body.panels().getFirst());
  }
}
