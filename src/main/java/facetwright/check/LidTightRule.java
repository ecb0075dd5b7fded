package facetwright.check;

import facetwright.fold.Closure;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A lid too tight for its box, of any outline, or a sleeve for its tray. Lid and box are known by
 * their open rims: two bodies, one shallower than the other, with rims of one shape and nearly one
 * size. The net has no thickness, so on each side the lid has to be wider than the box by a caliper
 * at least: half for its own wall, half for the box's.
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
    for (Body sleeve : bodies) {
      if (sleeve.rim().isTube() && sleeve.rim().isRectangle()) {
        sleeve(subject, sleeve, bodies, caliper).ifPresent(found::add);
      }
    }
    return found;
  }

  /**
   * A tray is pushed into its sleeve end on: one side of its floor and the depth of its walls are
   * what the sleeve goes round. A wall needs a caliper on either side; over the open top only the
   * sleeve's own half counts.
   */
  private static Optional<Finding> sleeve(
      Subject subject, Body sleeve, List<Body> bodies, double caliper) {
    Optional<Finding> tight = Optional.empty();
    for (Body tray : bodies) {
      if (tray.rim().isTube() || !tray.rim().isRectangle()) {
        continue;
      }
      for (int turn = 0; turn < 4; turn++) {
        double wide = sleeve.rim().lengths().get(turn % 2) - tray.rim().lengths().get(turn / 2);
        double high = sleeve.rim().lengths().get(1 - turn % 2) - tray.rim().depth();
        if (Math.min(wide, high) < 2 * NARROWEST * caliper
            || Math.max(wide, high) > 2 * WIDEST * caliper) {
          continue;
        }
        double wider = 2 * caliper - wide;
        double higher = 1.5 * caliper - high;
        if (Math.max(wider, higher) <= 1e-6) {
          return Optional.empty();
        }
        tight = Optional.of(sleeve(subject, sleeve, tray, caliper, wider, higher));
      }
    }
    return tight;
  }

  private static Finding sleeve(
      Subject subject, Body sleeve, Body tray, double caliper, double wider, double higher) {
    int panel = largest(subject, sleeve);
    List<String> more = new ArrayList<>();
    if (wider > 1e-6) {
      more.add(Mm.atLeast(wider) + " wider");
    }
    if (higher > 1e-6) {
      more.add(Mm.atLeast(higher) + " higher");
    }
    return new Finding(
        "lid-tight",
        Finding.Severity.WARNING,
        String.format(
            "The sleeve with %s is too tight for the tray with %s. The card is %s thick, so the"
                + " tray does not go into it.",
            subject.name(panel), subject.name(largest(subject, tray)), Mm.text(caliper)),
        "Make the sleeve " + String.join(" and ", more) + ", or the tray as much smaller.",
        new Place.AtPanel(panel),
        subject.panel(panel).site());
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
