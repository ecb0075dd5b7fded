package facetwright.check;

import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.net.Laid;
import facetwright.net.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All rules, in the order in which a maker should mend. */
public final class Checks {
  /** So many findings of one rule are told one by one. */
  public static final int MOST_OF_A_KIND = 25;

  /** The rule that tells of panels lying over each other in the flat net. */
  public static final String OVERLAP = "overlap";

  private static final List<Rule> RULES =
      List.of(
          new OverlapRule(),
          new OffSheetRule(),
          new SeamLengthsRule(),
          new GapRule(),
          new StrainRule(),
          new FoldFlatRule(),
          new TearRule(),
          new PanelThroughPanelRule(),
          new PinchedInTurnRule(),
          new NotSolvedRule(),
          new SenseRule(),
          new TabTooBigRule(),
          new TabSticksOutRule(),
          new TabsClashRule(),
          new LidTightRule(),
          new ClosingStackRule(),
          new WindowNearScoreRule(),
          new HoleNearEdgeRule(),
          new ScoresTooCloseRule(),
          new SharpSliverRule(),
          new GrainRule());

  private Checks() {}

  /** The rules, in order. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** Everything the rules find: errors first, then warnings, then notes, each in rule order. */
  public static List<Finding> all(Laid laid, FoldedForm folded) {
    return all(laid, folded, collisions(laid, folded));
  }

  /** Panels that pass through each other in the folded form; none where it is not solved. */
  public static List<Collision> collisions(Laid laid, FoldedForm folded) {
    return folded.closure() == Closure.NOT_SOLVED ? List.of() : Collisions.of(laid.net(), folded);
  }

  /** Everything the rules find, the {@link #collisions} given. */
  public static List<Finding> all(Laid laid, FoldedForm folded, List<Collision> collisions) {
    Subject subject = new Subject(laid, folded, collisions);
    List<Finding> all = new ArrayList<>();
    RULES.forEach(rule -> all.addAll(few(rule.find(subject))));
    all.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(all);
  }

  private static List<Finding> few(List<Finding> found) {
    if (found.size() <= MOST_OF_A_KIND) {
      return found;
    }
    List<Finding> few = new ArrayList<>(found.subList(0, MOST_OF_A_KIND));
    Finding like = found.get(MOST_OF_A_KIND);
    few.add(
        new Finding(
            like.rule(),
            like.severity(),
            (found.size() - MOST_OF_A_KIND) + " more like this.",
            like.fix(),
            new Place.WholeNet(),
            Site.NONE));
    return few;
  }
}
