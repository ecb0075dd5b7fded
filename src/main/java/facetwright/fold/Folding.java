package facetwright.fold;

import facetwright.fold.close.Bending;
import facetwright.fold.close.ClosingSolver;
import facetwright.fold.close.FreeScores;
import facetwright.fold.close.Solved;
import facetwright.fold.place.Putting;
import facetwright.fold.pose.Assembly;
import facetwright.fold.pose.Body;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Gaps;
import facetwright.fold.pose.GluedTabs;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Measures;
import facetwright.fold.pose.OnTable;
import facetwright.fold.pose.PanelStrain;
import facetwright.fold.pose.RootPanels;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.pose.ScoreGap;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Folds nets: the exact product of turns about the scores, along a spanning tree from a root panel
 * (the panel the form stands on, or else the largest facet).
 *
 * <p>Angles that the net leaves open are found by the {@link ClosingSolver} where joins and loops
 * determine them. Where nothing does, a score of unknown angle that the tree needs leaves the form
 * {@link Closure#NOT_SOLVED}: only the known angles are folded, and no gap is told.
 *
 * <p>Scores that the tree does not need close loops; how far their sides miss is a tear. Two
 * unknowns do no harm: one that closes a loop of known angles, and that of a tab, which takes the
 * angle that lays it flat under the panel it is glued to (a tab glued to nothing stays flat).
 *
 * <p>Several pieces are put together by their joins; where seams do not agree, by least squares. A
 * piece hanging on one seam only lies flat as its tab tells, or without a tab goes on flat; a lap
 * alone puts middle on middle, first side along first side. Pieces that no join reaches, such as a
 * lid, stand beside on their largest facet; the measures are those of the body that holds the
 * stance, or of the parts together.
 *
 * <p>Where joins miss by little, panels may bend: up to what card forgives the form {@link
 * Closure#CLOSES_WITH_STRAIN}, beyond it is open and tells what it would take. The card has its
 * thickness only where panels lie on each other by a lap: the one under lies a caliper inside.
 *
 * <p>A form whose joins meet does not close where panels other than tabs are in each other's way,
 * as {@link Collisions} finds them.
 */
public final class Folding {
  private final Net net;
  private final LengthTolerance tolerance;
  private final double caliper;
  private final int[] piece;
  private final List<Integer> roots;

  private Folding(Net net, LengthTolerance tolerance, double caliper) {
    this.net = net;
    this.tolerance = tolerance;
    this.caliper = caliper;
    this.piece = net.pieceOfPanel();
    this.roots = RootPanels.of(net, piece);
  }

  /** The finished form of card without thickness; tolerance {@link Closure#CLOSE_ENOUGH}. */
  public static FoldedForm fold(Net net) {
    return path(net).form();
  }

  /** The finished form of this card; tolerance {@link Closure#CLOSE_ENOUGH}. */
  public static FoldedForm fold(Laid laid) {
    return path(laid).form();
  }

  /**
   * The finished form of a net that hardly differs from another, such as the same net cut a little
   * off: the form nearest to the other's, where a search from nothing might find one not meant.
   *
   * @param net with the same scores as the other
   * @param meant the other net, on its card
   */
  public static FoldedForm near(Net net, Laid meant) {
    SolverSettings settings = SolverSettings.USUAL.withCaliper(meant.stock().caliper());
    Solved former = ClosingSolver.solve(meant.net(), ScoreAngles.nominal(meant.net()), settings);
    if (!former.suits(net)) {
      return path(net, settings).form();
    }
    ScoreAngles nominal = ScoreAngles.nominal(net);
    Solved solved = ClosingSolver.solve(net, nominal, settings.withStarts(1), former);
    return path(net, nominal, settings, solved).form();
  }

  /**
   * The finished form of a net that differs little from another, on the same branch: where angles
   * are found, the search begins at those of the other's form. Only where it does not close from
   * there, or has other panels or scores, is it folded as if nothing were known.
   *
   * @param meant the other net
   * @param form the same folded
   */
  public static FoldedForm beside(Laid laid, Net meant, FoldedForm form) {
    Net net = laid.net();
    boolean alike =
        net.scores().size() == meant.scores().size()
            && net.panels().size() == meant.panels().size();
    if (!alike || form.closure() == Closure.NOT_SOLVED) {
      return fold(laid);
    }
    SolverSettings settings = SolverSettings.USUAL.withCaliper(laid.stock().caliper());
    ScoreAngles nominal = ScoreAngles.nominal(net);
    Solved solved =
        ClosingSolver.solve(net, nominal, settings.withStarts(1), ScoreAngles.of(meant, form));
    return solved.verdict() == Closure.OPEN
        ? fold(laid)
        : path(net, nominal, settings, solved).form();
  }

  /** The whole way of card without thickness, by the angles given or determined by joins. */
  public static FoldPath path(Net net) {
    return path(net, SolverSettings.USUAL);
  }

  /** The whole way of this card, by the angles given or determined by joins. */
  public static FoldPath path(Laid laid) {
    return path(laid.net(), SolverSettings.USUAL.withCaliper(laid.stock().caliper()));
  }

  private static FoldPath path(Net net, SolverSettings settings) {
    ScoreAngles nominal = ScoreAngles.nominal(net);
    return path(net, nominal, settings, ClosingSolver.solve(net, nominal, settings));
  }

  private static FoldPath path(
      Net net, ScoreAngles nominal, SolverSettings settings, Solved solved) {
    FoldPath path = by(net, nominal, settings, solved);
    return path.form().closure() == Closure.IN_ITSELF && solved.verdict() != Closure.NOT_SOLVED
        ? by(net, nominal, settings, ClosingSolver.solveClear(net, nominal, settings))
        : path;
  }

  private static FoldPath by(Net net, ScoreAngles nominal, SolverSettings settings, Solved solved) {
    Folding folding = new Folding(net, Closure.within(net), settings.card().caliper());
    return switch (solved.verdict()) {
      case NOT_SOLVED -> folding.bent(nominal, settings);
      case CLOSES, FORGIVEN, IN_ITSELF -> folding.bent(solved.angles(), settings);
      case OPEN, CLOSES_WITH_STRAIN -> folding.along(solved.angles(), Optional.of(solved));
    };
  }

  /** The way by these angles, its panels bent where that closes it. */
  private FoldPath bent(ScoreAngles given, SolverSettings settings) {
    FoldPath path = along(given);
    boolean misses =
        path.form().closure() == Closure.OPEN || path.form().closure() == Closure.FORGIVEN;
    if (!misses || !Bending.mayClose(net, path.form())) {
      return path;
    }
    return along(given, Optional.of(Bending.of(net, path.angles(), path.form().poses(), settings)));
  }

  /** How far corners that meet once bent may be apart on the flat panels nearest to the bent. */
  private LengthTolerance bend(Solved bent) {
    double off = strains(bent).stream().mapToDouble(s -> s.mm(net)).max().orElse(0);
    return new LengthTolerance(tolerance.mm() + 2 * off);
  }

  private boolean meets(Solved bent) {
    return bent.gaps().stream().allMatch(g -> g.mm() <= tolerance.mm());
  }

  private static List<PanelStrain> strains(Solved solved) {
    return IntStream.range(0, solved.strain().size())
        .mapToObj(p -> new PanelStrain(p, solved.strain().get(p)))
        .filter(s -> s.part() > Closure.CLOSE_ENOUGH)
        .toList();
  }

  private FoldPath along(ScoreAngles given) {
    return along(given, Optional.empty());
  }

  /**
   * @param bent how panels have to bend. Where card forgives that, they stand as it says, not where
   *     turns about the scores take them; where not, it is only told
   */
  private FoldPath along(ScoreAngles given, Optional<Solved> bent) {
    Optional<Solved> strained = bent.filter(s -> s.verdict() == Closure.CLOSES_WITH_STRAIN);
    FoldTree tree = FoldTree.of(net, roots, given);
    List<Motion3> held = strained.map(Solved::poses).orElse(tree.flat());
    int main = piece[net.stance().ring().getFirst().panel()];
    Assembly.Bodies made = Assembly.of(net, caliper, tree.fold(given, held), piece, main);
    GluedTabs tabs = GluedTabs.of(net, tree, given, made.poses());
    if (tabs.found()) {
      made = Assembly.of(net, caliper, tree.fold(tabs.angles(), held), piece, main);
    }
    List<Motion3> poses = new OnTable(net, made.poses(), roots.get(main)).stand(made.bodies());
    LengthTolerance meets = strained.map(this::bend).orElse(tolerance);
    Measures measures = new Body(net, poses, made.bodies().getFirst(), meets).measure();
    FoldedForm apart = form(tree, tabs, poses, measures, strained);
    FoldedForm form = Putting.together(net, apart, made.bodies(), meets);
    boolean misses = form.closure() == Closure.OPEN || form.closure() == Closure.FORGIVEN;
    if (misses && bent.filter(this::meets).isPresent()) {
      form = form.needing(strains(bent.get()));
    }
    return new FoldPath(net, tolerance.mm(), tree, tabs.angles(), form);
  }

  private FoldedForm form(
      FoldTree tree,
      GluedTabs tabs,
      List<Motion3> poses,
      Measures measures,
      Optional<Solved> strained) {
    if (tabs.open() > 0) {
      List<Integer> free =
          FreeScores.of(net, tabs.angles(), SolverSettings.USUAL.withCaliper(caliper));
      return new FoldedForm(
          poses,
          List.of(),
          List.of(),
          Closure.NOT_SOLVED,
          List.of(),
          free,
          List.of(),
          List.of(),
          measures);
    }
    List<JoinGap> gaps = new ArrayList<>(Gaps.of(net, poses, caliper));
    List<Integer> loops = new ArrayList<>(tree.loops());
    List<PanelStrain> strains = List.of();
    if (strained.isPresent()) {
      // Between panels that bend, the corners meet as the solver left them, not as flat panels do.
      Solved bent = strained.get();
      bent.gaps().forEach(g -> gaps.set(g.join(), g));
      loops.removeIf(s -> isHeld(bent, s));
      strains = strains(bent);
    }
    List<ScoreGap> tears = Gaps.tears(net, poses, loops, tabs.angles());
    double torn = strained.map(this::bend).orElse(tolerance).mm();
    List<Collision> collisions = Collisions.of(net, poses);
    boolean held = meets(gaps, tears, Collision.HELD, Math.max(torn, Collision.HELD));
    double gives = held ? SolverSettings.USUAL.card().forgivenStrain() : 0;
    List<FlatFolding> locked = FlatFolding.locked(net, poses, gives);
    boolean inItself =
        !locked.isEmpty()
            || collisions.stream()
                .filter(c -> c.isInTheWay() && !c.isOfTab(net))
                .anyMatch(c -> c.isInOnePlace() || c.depth() > torn);
    Closure closure =
        meets(gaps, tears, tolerance.mm(), torn)
            ? inItself
                ? Closure.IN_ITSELF
                : strains.isEmpty() ? Closure.CLOSES : Closure.CLOSES_WITH_STRAIN
            : !inItself && meets(gaps, tears, Collision.HELD, Collision.HELD)
                ? Closure.FORGIVEN
                : Closure.OPEN;
    return new FoldedForm(
        poses, gaps, tears, closure, strains, List.of(), collisions, locked, measures);
  }

  private static boolean meets(
      List<JoinGap> gaps, List<ScoreGap> tears, double close, double torn) {
    return gaps.stream().allMatch(g -> g.mm() <= close)
        && tears.stream().allMatch(g -> g.mm() <= torn);
  }

  private boolean isHeld(Solved solved, int score) {
    Score s = net.scores().get(score);
    return !solved.poses().get(s.a().panel()).equals(Motion3.NONE)
        && !solved.poses().get(s.b().panel()).equals(Motion3.NONE);
  }
}
