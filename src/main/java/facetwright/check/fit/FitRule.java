package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.making.Bodies;
import facetwright.fold.pose.Closure;
import facetwright.message.Message;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Parts that are to go together and don't, or hang loose: a lid over its box, a tray into its
 * sleeve, a drawer into its case, an insert into a box. The net has no thickness, so that on each
 * side where both have a wall the outer one has to be a caliper wider: half for either wall.
 *
 * <p>What the script puts over or into each other is told by {@link PlacedFit}; where it puts any
 * part anywhere, nothing is guessed of the others: {@link Unplaced}. Else, which parts are meant
 * for each other is told by their names ("lid", "sleeve", "drawer" and the like), at whatever size;
 * parts of other names are taken for lid and box, or sleeve and tray, where they have one shape and
 * nearly one size, or are two by themselves of which one side is right. Of several that a part may
 * be meant for, that counts which it fits best.
 *
 * <p>What it does not detect: openings whose walls lean, whose corners are held by laps alone, or
 * that have notches at their rim (but of square corners); how far a part goes in, so that what is
 * glued to a wall counts wherever it lies on it, once; unnamed parts of the same depth, which it
 * takes for copies.
 */
public final class FitRule implements Rule {
  public static final String NAME = "fit";

  @Override
  public List<Finding> find(Subject subject) {
    double caliper = subject.laid().stock().caliper();
    List<Finding> found = new ArrayList<>();
    PlacedFit.all(subject).forEach(f -> f.finding().ifPresent(found::add));
    if (subject.net().parts().arePlaced()) {
      found.addAll(Unplaced.of(subject));
      return found;
    }
    for (Slip slip : slips(subject)) {
      if (!slip.isRight()) {
        found.add(new FitText(subject, slip, caliper).finding());
      }
    }
    strangers(subject).forEach(s -> found.add(s.finding()));
    return found;
  }

  /** How parts fit that the script puts over or into each other. */
  public static List<Message> fits(Subject subject) {
    return PlacedFit.all(subject).stream().map(PlacedFit::words).toList();
  }

  /** For each part that is meant for another how it goes with the one it fits best. */
  @SuppressWarnings("ReferenceEquality") // A part is no other, however alike.
  private static List<Slip> slips(Subject subject) {
    List<Part> parts = parts(subject);
    double caliper = subject.laid().stock().caliper();
    List<Slip> slips = new ArrayList<>();
    Set<Part> told = new HashSet<>();
    // What lies beside others of its kind does not fill what it lies in.
    boolean isOneOfSeveral =
        parts.stream().filter(p -> p.use() == Part.Use.INNER).limit(2).count() == 2;
    boolean areSeveral = parts.stream().filter(FitRule::isForSleeve).limit(2).count() == 2;
    for (Part part : parts) {
      List<Slip> all = new ArrayList<>();
      for (Part other : parts) {
        if (part == other) {
          continue;
        }
        boolean isLid = part.use() == Part.Use.LID;
        if (isLid && other.use() != Part.Use.LID) {
          all.addAll(over(part, other, caliper));
        } else if (part.use() == Part.Use.SLEEVE && isForSleeve(other)) {
          List<Slip> ways = into(part, other, caliper, false);
          all.addAll(areSeveral ? ways.stream().map(Slip::beside).toList() : ways);
        } else if (part.use() == Part.Use.INNER
            && other.use() != Part.Use.LID
            && other.use() != Part.Use.INNER) {
          // A drawer goes in by its end, as anything does into a sleeve; what is laid in, floor
          // first.
          boolean isEndOn =
              part.word().equals("drawer") || other.use() == Part.Use.SLEEVE || other.isTube();
          List<Slip> ways =
              into(other, part, caliper, false).stream()
                  .filter(s -> isEndOn || s.section().isFaceOn())
                  .toList();
          all.addAll(isOneOfSeveral ? ways.stream().map(Slip::beside).toList() : ways);
        }
      }
      best(all)
          .filter(s -> !told.contains(s.outer()) || !told.contains(s.into()))
          .ifPresent(
              s -> {
                told.add(s.outer());
                told.add(s.into());
                slips.add(s);
              });
    }
    slips.addAll(untold(parts, caliper));
    return slips;
  }

  private static boolean isForSleeve(Part part) {
    return part.use() != Part.Use.LID && part.use() != Part.Use.SLEEVE;
  }

  private static List<Part> parts(Subject subject) {
    if (subject.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    List<List<Integer>> bodies = Bodies.of(subject.net());
    return bodies.size() < 2 ? List.of() : bodies.stream().map(b -> Part.of(subject, b)).toList();
  }

  static Optional<Slip> best(List<Slip> slips) {
    Slip best = null;
    for (Slip slip : slips) {
      if (best == null || slip.isBetter(best)) {
        best = slip;
      }
    }
    return Optional.ofNullable(best);
  }

  /** All ways in which a lid goes over a box, rim to rim. */
  private static List<Slip> over(Part lid, Part box, double caliper) {
    return into(lid, box, caliper, true).stream().filter(s -> s.section().isFaceOn()).toList();
  }

  /**
   * All ways in which a part goes into another.
   *
   * @param isFacing whether it goes in rim first
   */
  private static List<Slip> into(Part outer, Part inner, double caliper, boolean isFacing) {
    List<Slip> slips = new ArrayList<>();
    for (Part.Mouth mouth : outer.mouths()) {
      for (Part.Section section : inner.sections()) {
        Slip.of(outer, mouth, inner, section, caliper, isFacing).ifPresent(slips::add);
      }
    }
    return slips;
  }

  /** Parts whose names say nothing: lids are shallower than their boxes, sleeves are tubes. */
  @SuppressWarnings("ReferenceEquality") // A part is no other, however alike.
  private static List<Slip> untold(List<Part> all, double caliper) {
    List<Part> parts = all.stream().filter(p -> p.use() == Part.Use.UNTOLD).toList();
    List<Slip> slips = new ArrayList<>();
    Set<Part> right = new HashSet<>();
    for (Part outer : parts) {
      List<Slip> near = new ArrayList<>();
      for (Part inner : parts) {
        if (outer == inner || (right.contains(outer) && right.contains(inner))) {
          continue;
        }
        boolean isSleeve = outer.isTube() && !inner.isTube();
        for (Slip slip : into(outer, inner, caliper, true)) {
          boolean isLid =
              slip.section().isFaceOn()
                  && slip.mouth().depth() < slip.section().depth() - 2 * caliper;
          boolean isNear = slip.isNear() || (all.size() == 2 && slip.isHalfRight());
          if (isNear && (isLid || (isSleeve && slip.isEndOn()))) {
            near.add(slip);
          }
          if (slip.isRight() && (isLid || outer.isTube() || inner.isTube())) {
            right.add(outer);
            right.add(inner);
          }
        }
      }
      best(near).ifPresent(slips::add);
    }
    slips.removeIf(s -> !s.isRight() && (right.contains(s.outer()) || right.contains(s.into())));
    return slips;
  }

  /** Lids that have other corners than all they could go over, with what they come nearest to. */
  private static List<OtherShape> strangers(Subject subject) {
    double caliper = subject.laid().stock().caliper();
    List<Part> parts = parts(subject);
    List<OtherShape> strangers = new ArrayList<>();
    for (Part lid : parts) {
      if (lid.use() == Part.Use.LID && !lid.mouths().isEmpty()) {
        List<Part> others =
            parts.stream().filter(p -> p.use() != Part.Use.LID && !p.sections().isEmpty()).toList();
        if (others.stream().allMatch(o -> over(lid, o, caliper).isEmpty())) {
          OtherShape.of(subject, lid, others)
              .filter(s -> s.severity() != Finding.Severity.NOTE)
              .ifPresent(strangers::add);
        }
      }
    }
    return strangers;
  }
}
