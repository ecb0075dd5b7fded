package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.fold.Folding;
import facetwright.fold.close.LeastGap;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.JoinGap;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Other sides for joins whose own can't meet: of the same panels, as long as each other, free, and
 * such that the form so joined was folded and is no longer known not to close. Where none of them
 * closes it, but each join has sides that share a corner, these are taken, with what still keeps
 * the form open: two faults, told at once.
 */
final class Rejoined {
  /** So many pairs of sides are tried for one join. */
  private static final int MOST_TRIED = 6;

  /**
   * What to join instead.
   *
   * @param seams for each join what it should be; empty where nothing was found for all of them
   * @param left what keeps the form open that is so joined: what it is, and what mends it
   */
  record Advice(List<Join.Seam> seams, Optional<Message> left) {
    private static final Advice NONE = new Advice(List.of(), Optional.empty());
  }

  private final Subject subject;
  private final Net net;
  private final List<Join.Seam> wrong;

  private Rejoined(Subject subject, List<Join.Seam> wrong) {
    this.subject = subject;
    this.net = subject.net();
    this.wrong = wrong;
  }

  static Advice of(Subject subject, List<Join.Seam> wrong) {
    Rejoined rejoined = new Rejoined(subject, wrong);
    List<Join.Seam> closing = rejoined.closing();
    return closing.isEmpty() ? rejoined.atCorners() : new Advice(closing, Optional.empty());
  }

  private List<Join.Seam> closing() {
    Set<EdgeRef> taken = taken();
    List<Join.Seam> right = new ArrayList<>();
    for (Join.Seam seam : wrong) {
      List<Join.Seam> able = able(seam, taken);
      if (able.isEmpty()) {
        return List.of();
      }
      // The last one is told apart by folding; for the others the nearest at hand has to do.
      boolean isLast = right.size() == wrong.size() - 1;
      Join.Seam chosen = null;
      for (Join.Seam to : isLast ? able : able.subList(0, 1)) {
        List<Join.Seam> all = new ArrayList<>(right);
        all.add(to);
        if (!isLast || isFit(all)) {
          chosen = to;
          break;
        }
      }
      if (chosen == null) {
        return List.of();
      }
      right.add(chosen);
      taken.add(chosen.a());
      taken.add(chosen.b());
    }
    return right;
  }

  /** The sides that share a corner, where that leaves a fault of another kind. */
  private Advice atCorners() {
    Set<EdgeRef> taken = taken();
    List<Join.Seam> right = new ArrayList<>();
    for (Join.Seam seam : wrong) {
      Optional<Join.Seam> near =
          pairs(seam, taken).stream()
              .filter(s -> WrongSidesRule.shareCorner(net, s.a(), s.b()))
              .findFirst();
      if (near.isEmpty()) {
        return Advice.NONE;
      }
      right.add(near.get());
      taken.add(near.get().a());
      taken.add(near.get().b());
    }
    Laid laid = subject.laid().with(net.joined(rejoin(right)));
    return new Advice(right, Optional.of(left(new Subject(laid, Folding.fold(laid)))));
  }

  private static Message left(Subject mended) {
    return CauseRule.ALL.stream()
        .flatMap(rule -> rule.find(mended).stream())
        .findFirst()
        .map(f -> Message.of("%s. %s", f.told(), f.remedy()))
        .orElseGet(
            () ->
                Message.of(
                    "it still misses by %s. Make what is joined reach farther, or what lies between"
                        + " smaller.",
                    Value.length(
                        mended.folded().gaps().stream().mapToDouble(JoinGap::mm).max().orElse(0))));
  }

  /** Sides that are scored to more than a tab, or joined by what stays. */
  private Set<EdgeRef> taken() {
    Set<EdgeRef> taken = new HashSet<>();
    for (Score s : net.scores()) {
      if (!isTab(s.a().panel()) && !isTab(s.b().panel())) {
        taken.add(s.a());
        taken.add(s.b());
      }
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam seam && !wrong.contains(seam)) {
        taken.add(seam.a());
        taken.add(seam.b());
      }
    }
    return taken;
  }

  private boolean isTab(int panel) {
    return net.panels().get(panel).role() == PanelRole.TAB;
  }

  /** Pairs of free sides as long as each other that can meet, those with a common corner first. */
  private List<Join.Seam> able(Join.Seam seam, Set<EdgeRef> taken) {
    return pairs(seam, taken).stream()
        .filter(s -> LeastGap.of(net, s.a(), s.b(), LengthTolerance.UNSEEN.mm()) == 0)
        .limit(MOST_TRIED)
        .toList();
  }

  private List<Join.Seam> pairs(Join.Seam seam, Set<EdgeRef> taken) {
    List<Join.Seam> pairs = new ArrayList<>();
    for (EdgeRef a : free(seam.a().panel(), taken)) {
      for (EdgeRef b : free(seam.b().panel(), taken)) {
        if (LengthTolerance.FINE.same(net.segment(a).length(), net.segment(b).length())) {
          pairs.add(new Join.Seam(a, b, Join.Seam.NO_TAB, seam.site()));
        }
      }
    }
    pairs.sort(Comparator.comparing(s -> !WrongSidesRule.shareCorner(net, s.a(), s.b())));
    return pairs;
  }

  private List<EdgeRef> free(int panel, Set<EdgeRef> taken) {
    Panel at = net.panels().get(panel);
    List<EdgeRef> free = new ArrayList<>();
    for (int e = 0; e < at.outline().size(); e++) {
      EdgeRef side = new EdgeRef(panel, e);
      if (!taken.contains(side)) {
        free.add(side);
      }
    }
    return free;
  }

  /** Whether the form so joined is not known to stay open. */
  private boolean isFit(List<Join.Seam> right) {
    Closure closure = Folding.fold(subject.laid().with(net.joined(rejoin(right)))).closure();
    return closure != Closure.OPEN && closure != Closure.IN_ITSELF;
  }

  private List<Join> rejoin(List<Join.Seam> right) {
    List<Join> joins = new ArrayList<>();
    for (Join join : net.joins()) {
      int place = wrong.indexOf(join);
      joins.add(place < 0 ? join : right.get(place));
    }
    return joins;
  }
}
