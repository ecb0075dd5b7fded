package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Body;
import facetwright.fold.pose.Together;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Parts that can't go where the script says they go, and stay where they stand; and parts that pass
 * through each other when all are together, but those of which one goes over or into the other: how
 * these fit is told by {@link PlacedFit}.
 */
public final class PlacingRule implements Rule {
  static final String NAME = "placing";

  private static final List<ToDoubleFunction<Vec3>> AXES = List.of(Vec3::x, Vec3::y, Vec3::z);

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    Parts parts = subject.net().parts();
    for (Together.Refused refused : subject.folded().together().refused()) {
      Placing placing = parts.placings().get(refused.placing());
      found.add(finding(subject, placing, refused.why(), refused.remedy()));
    }
    parts.placings().stream()
        .filter(p -> !(p instanceof Placing.With) && !goesWithAll(subject, p))
        .forEach(p -> oneOfSeveral(parts, p).ifPresent(found::add));
    if (subject.folded().together().isSome()) {
      if (mayMeet(subject)) {
        through(subject)
            .or(() -> Sharing.of(subject).map(s -> sharing(subject, s)))
            .ifPresent(found::add);
      }
      found.addAll(Tipping.all(subject));
    }
    return found;
  }

  /** Whether it goes over all that are made of a part at once. */
  private static boolean goesWithAll(Subject subject, Placing placing) {
    Parts parts = subject.net().parts();
    int first = parts.all().get(placing.onto()).first();
    return subject.folded().together().nests().stream()
        .filter(n -> parts.placings().get(n.placing()).equals(placing))
        .anyMatch(
            n ->
                n.with().stream().filter(p -> parts.all().get(p).first() == first).count()
                    == parts.count(placing.onto()));
  }

  /** What goes to one of several alike, as a table top on one leg. */
  private static Optional<Finding> oneOfSeveral(Parts parts, Placing placing) {
    int made = parts.count(placing.onto());
    if (made == 1 || parts.count(placing.part()) > 1 || goElsewhere(parts, placing.onto())) {
      return Optional.empty();
    }
    Value.Name part = Value.name(parts.all().get(placing.part()).name());
    Value.Name onto = Value.name(parts.all().get(placing.onto()).name());
    Message others =
        placing instanceof Placing.On
            ? Message.of(
                "Put it together the other way round, top down: stand what is made %s times on %s,"
                    + " with at as a list of %s places",
                made, part, made)
            : Message.of(
                placing.shut() instanceof Placing.Over
                    ? "Make %s %s times, too; or put it over all of them, which brackets say:"
                        + " .over([part])"
                    : "Make %s %s times, too",
                part,
                made);
    return Optional.of(
        new Finding(
            NAME,
            Finding.Severity.WARNING,
            Message.of(
                "%s goes %s %s alone, one of %s that are made: the others stand beside.",
                part, placing.word(), onto, made),
            Message.of("%s; or make the others a part of their own.", others),
            new Place.AtPanel(parts.all().get(placing.part()).panels().getFirst()),
            placing.site()));
  }

  /** Whether the others that are made like a part go somewhere, or others to them. */
  private static boolean goElsewhere(Parts parts, int part) {
    int first = parts.all().get(part).first();
    return parts.placings().stream()
        .flatMap(p -> Stream.of(p.part(), p.onto()))
        .anyMatch(p -> p != part && parts.all().get(p).first() == first);
  }

  private static Finding finding(Subject subject, Placing placing, Message why, Message remedy) {
    int panel = subject.net().parts().all().get(placing.part()).panels().getFirst();
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            Message.of("%s.", why.capital()),
            remedy,
            new Place.AtPanel(panel),
            placing.site())
        .telling(why);
  }

  /** Whether the boxes of any two parts reach into each other that may not. */
  private static boolean mayMeet(Subject subject) {
    List<List<Vec3>> corners =
        subject.net().parts().all().stream()
            .map(p -> Body.corners(subject.net(), subject.folded().together().shut(), p.panels()))
            .toList();
    for (int a = 0; a < corners.size(); a++) {
      for (int b = 0; b < a; b++) {
        if (!isNest(subject, a, b) && meet(corners.get(a), corners.get(b))) {
          return true;
        }
      }
    }
    return false;
  }

  static boolean isNest(Subject subject, int a, int b) {
    return subject.folded().together().nests().stream()
        .anyMatch(
            n ->
                (n.outer() == a && n.with().contains(b))
                    || (n.outer() == b && n.with().contains(a)));
  }

  private static boolean meet(List<Vec3> a, List<Vec3> b) {
    return AXES.stream()
        .allMatch(
            axis ->
                least(a, axis) < most(b, axis) - Collision.HELD
                    && least(b, axis) < most(a, axis) - Collision.HELD);
  }

  private static double least(List<Vec3> corners, ToDoubleFunction<Vec3> axis) {
    return corners.stream().mapToDouble(axis).min().orElseThrow();
  }

  private static double most(List<Vec3> corners, ToDoubleFunction<Vec3> axis) {
    return corners.stream().mapToDouble(axis).max().orElseThrow();
  }

  /** Of all panels of two parts that pass through each other those that do so deepest. */
  private static Optional<Finding> through(Subject subject) {
    return Collisions.of(subject.net(), subject.folded().together().shut()).stream()
        .filter(c -> c.isInTheWay() && !c.isOfTab(subject.net()))
        .filter(
            c -> {
              int a = part(subject, c.a());
              int b = part(subject, c.b());
              return a != b && a >= 0 && b >= 0 && !isNest(subject, a, b);
            })
        .max(Comparator.comparingDouble(c -> Math.rint(1e3 * c.depth())))
        .map(c -> through(subject, c));
  }

  private static Finding sharing(Subject subject, Sharing s) {
    Parts parts = subject.net().parts();
    Placing placing = parts.placing(s.b()).or(() -> parts.placing(s.a())).orElseThrow();
    return finding(
        subject,
        placing,
        Message.of(
            "%s and %s stand in one place",
            Value.name(parts.all().get(s.a()).name()), Value.name(parts.all().get(s.b()).name())),
        Message.of(
            "Put %s elsewhere, with at or beside, or into the other if it is meant to be in there.",
            Value.name(parts.all().get(placing.part()).name())));
  }

  private static Finding through(Subject subject, Collision c) {
    Parts parts = subject.net().parts();
    int a = part(subject, c.a());
    int b = part(subject, c.b());
    Placing placing = parts.placing(b).or(() -> parts.placing(a)).orElseThrow();
    return finding(
        subject,
        placing,
        Message.of(
            "%s and %s pass through each other, at %s and %s",
            Value.name(parts.all().get(a).name()),
            Value.name(parts.all().get(b).name()),
            subject.name(c.a()),
            subject.name(c.b())),
        Message.of(
            "Put %s elsewhere, or make one of the two smaller.",
            Value.name(parts.all().get(placing.part()).name())));
  }

  private static int part(Subject subject, int panel) {
    List<Parts.Part> all = subject.net().parts().all();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).panels().contains(panel)) {
        return i;
      }
    }
    return -1;
  }
}
