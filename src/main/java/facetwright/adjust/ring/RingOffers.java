package facetwright.adjust.ring;

import facetwright.fold.pose.Closure;
import facetwright.geom.RoundOff;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks at the other values of dials that go by steps, such as a count of sides. */
public final class RingOffers {
  /** So many designs are made at most: each takes a moment, and somebody waits. */
  private static final int MOST = 24;

  private RingOffers() {}

  /**
   * The rings of so many with nothing between neighbours; where there are none, those that need
   * less than the design's own does, as {@link RingPlan#burden} has it. Of equals first the dial
   * that is turned least.
   *
   * @param standing whether pieces must not be tipped
   * @throws ScriptException when the script has to be given up
   */
  public static List<RingOffer> of(WhatIf what, int count, boolean standing)
      throws ScriptException {
    double now =
        best(what.design(), count, standing).map(RingPlan::burden).orElse(Double.MAX_VALUE);
    List<Turn> turns = new ArrayList<>();
    what.design().dials().forEach(d -> turns.addAll(turns(d)));
    turns.sort(Comparator.comparingDouble(Turn::steps));
    List<RingOffer> offers = new ArrayList<>();
    for (Turn turn : turns.subList(0, Math.min(MOST, turns.size()))) {
      Optional<Design> made = what.turned(Map.of(turn.dial(), turn.value()));
      made.flatMap(d -> best(d, count, standing))
          .filter(p -> p.burden() < now)
          .ifPresent(p -> offers.add(new RingOffer(turn.dial(), turn.value(), made.get(), p)));
    }
    // The sort keeps equals in their order, the least turn first.
    offers.sort(Comparator.comparingDouble(o -> o.plan().burden()));
    boolean isMet = offers.stream().anyMatch(o -> o.plan().seating().isFlush());
    return offers.stream().filter(o -> !isMet || o.plan().seating().isFlush()).toList();
  }

  /**
   * A value that a dial may be turned to.
   *
   * @param steps how many steps that is
   */
  private record Turn(String dial, double value, double steps) {}

  private static List<Turn> turns(Dial dial) {
    List<Turn> turns = new ArrayList<>();
    if (dial.isWord() || !(dial.step() > 0)) {
      return turns;
    }
    long last = (long) RoundOff.floor((dial.to() - dial.from()) / dial.step());
    for (long i = 0; i <= last && turns.size() < MOST; i++) {
      double value = dial.from() + i * dial.step();
      double steps = Math.abs(value - dial.value()) / dial.step();
      if (steps > RoundOff.PART) {
        turns.add(new Turn(dial.name(), value, steps));
      }
    }
    return turns;
  }

  private static Optional<RingPlan> best(Design design, int count, boolean standing) {
    if (design.folded().closure() == Closure.NOT_SOLVED) {
      return Optional.empty();
    }
    Rings rings = Rings.of(design.net(), design.folded());
    return (standing ? rings.standing() : rings).plans(count).stream().findFirst();
  }
}
