package facetwright.check;

import facetwright.check.closing.CauseRule;
import facetwright.check.closing.FoldFlatRule;
import facetwright.check.closing.GapRule;
import facetwright.check.closing.NotSolvedRule;
import facetwright.check.closing.PanelThroughPanelRule;
import facetwright.check.closing.PinchedInTurnRule;
import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.closing.SenseRule;
import facetwright.check.cut.GrainRule;
import facetwright.check.cut.HoleNearEdgeRule;
import facetwright.check.cut.LayerLostRule;
import facetwright.check.cut.NarrowWindowRule;
import facetwright.check.cut.NearEdgeRule;
import facetwright.check.cut.OffSheetRule;
import facetwright.check.cut.OverlapRule;
import facetwright.check.cut.ScoresTooCloseRule;
import facetwright.check.cut.SharpSliverRule;
import facetwright.check.cut.TearRule;
import facetwright.check.cut.TickOffCardRule;
import facetwright.check.cut.WindowNearScoreRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.fit.Alike;
import facetwright.check.fit.ClosingStackRule;
import facetwright.check.fit.DustFlapRule;
import facetwright.check.fit.FitRule;
import facetwright.check.fit.FittingRule;
import facetwright.check.fit.HeldHingeRule;
import facetwright.check.fit.PlacingRule;
import facetwright.check.fit.RibbonRule;
import facetwright.check.fit.ShallowFlapRule;
import facetwright.check.fit.SwingRule;
import facetwright.check.fit.TabSticksOutRule;
import facetwright.check.fit.TabTooBigRule;
import facetwright.check.fit.TabsClashRule;
import facetwright.check.fit.TightFlapRule;
import facetwright.fold.making.GlueOrder;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** All rules, in the order in which a maker should mend. */
public final class Checks {
  private static final List<Rule> RULES =
      List.of(
          new OverlapRule(),
          new OffSheetRule(),
          new NearEdgeRule(),
          new SeamLengthsRule(),
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
          new TightFlapRule(),
          new ShallowFlapRule(),
          new DustFlapRule(),
          new PlacingRule(),
          new SwingRule(),
          new HeldHingeRule(),
          new FitRule(),
          new FittingRule(),
          new RibbonRule(),
          new ClosingStackRule(),
          new WindowNearScoreRule(),
          new HoleNearEdgeRule(),
          new NarrowWindowRule(),
          new ScoresTooCloseRule(),
          new SharpSliverRule(),
          new LayerLostRule(),
          new TickOffCardRule(),
          new GrainRule());

  /** Rules on what may come of a form that does not close. */
  private static final Set<String> OF_CLOSING =
      Set.of("gap", "tear", "panel-through-panel", "sense", "closing-stack", "not-solved");

  /** By a rule what may come of what it finds, and is not told beside it. */
  private static final Map<String, Set<String>> COMES_OF =
      Map.of(
          // Walls that can't lean together have no turn round that could be mended.
          "uneven-rim", Set.of("turn-round"),
          // Walls that taper so much overlap in the sheet, too: so many angles are over 360°.
          "steep-taper", Set.of("overlap", "tabs-clash"),
          // Where a corner can't lie flat, what tears or gets in the way comes of that.
          "fold-flat", Set.of("tear", "panel-through-panel"));

  private Checks() {}

  /**
   * Everything the rules find: errors first, then warnings, then notes, each in rule order. What
   * comes of a cause that is told is not told beside it.
   */
  public static List<Finding> all(Laid laid, GlueOrder gluing) {
    Subject subject = new Subject(laid, gluing);
    List<Finding> all = new ArrayList<>();
    CauseRule.ALL.forEach(rule -> all.addAll(Alike.told(rule.find(subject))));
    boolean isExplained = !all.isEmpty();
    RULES.forEach(rule -> all.addAll(Alike.told(rule.find(subject))));
    if (isExplained) {
      all.removeIf(f -> OF_CLOSING.contains(f.rule()));
    }
    Set<String> told =
        all.stream()
            .flatMap(f -> COMES_OF.getOrDefault(f.rule(), Set.of()).stream())
            .collect(Collectors.toSet());
    all.removeIf(f -> told.contains(f.rule()));
    // A flap too shallow to hold is told so; how narrow it is, is no other fault.
    List<Place> shallow =
        all.stream().filter(f -> f.rule().equals("shallow-flap")).map(Finding::place).toList();
    all.removeIf(f -> f.rule().equals("sharp-sliver") && shallow.contains(f.place()));
    all.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(all);
  }
}
