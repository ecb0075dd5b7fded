package facetwright.check;

import facetwright.fold.FoldedForm;
import facetwright.net.Laid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** All rules, in the order in which a maker should mend. */
public final class Checks {
  private static final List<Rule> RULES =
      List.of(
          new OverlapRule(),
          new OffSheetRule(),
          new SeamLengthsRule(),
          new InsideOutRule(),
          new WideColumnRule(),
          new GapRule(),
          new FoldFlatRule(),
          new TearRule(),
          new PanelThroughPanelRule(),
          new PinchedInTurnRule(),
          new NotSolvedRule(),
          new SenseRule(),
          new TabTooBigRule(),
          new TabSticksOutRule(),
          new TabsClashRule(),
          new FitRule(),
          new ClosingStackRule(),
          new WindowNearScoreRule(),
          new HoleNearEdgeRule(),
          new ScoresTooCloseRule(),
          new SharpSliverRule(),
          new LayerLostRule(),
          new TickOffCardRule(),
          new GrainRule());

  /** Rules on what may come of a form that does not close. */
  private static final Set<String> OF_CLOSING =
      Set.of(
          "inside-out",
          "gap",
          "tear",
          "panel-through-panel",
          "sense",
          "closing-stack",
          "not-solved");

  private Checks() {}

  /** The rules, in order. */
  public static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>(CauseRule.ALL);
    rules.addAll(RULES);
    return List.copyOf(rules);
  }

  /**
   * Everything the rules find: errors first, then warnings, then notes, each in rule order. What
   * comes of a cause that is told is not told beside it.
   */
  public static List<Finding> all(Laid laid, FoldedForm folded) {
    Subject subject = new Subject(laid, folded);
    List<Finding> all = new ArrayList<>();
    CauseRule.ALL.forEach(rule -> all.addAll(Alike.told(rule.find(subject))));
    boolean isExplained = !all.isEmpty();
    RULES.forEach(rule -> all.addAll(Alike.told(rule.find(subject))));
    if (isExplained) {
      all.removeIf(f -> OF_CLOSING.contains(f.rule()));
    }
    all.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(all);
  }
}
