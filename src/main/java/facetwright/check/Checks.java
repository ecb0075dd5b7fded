package facetwright.check;

import facetwright.fold.FoldedForm;
import facetwright.net.Laid;
import facetwright.net.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All rules, in the order in which a maker should mend. */
public final class Checks {
  /** So many findings of one rule are told one by one. */
  public static final int MOST_OF_A_KIND = 25;

  private static final List<Rule> RULES =
      List.of(
          new OverlapRule(),
          new OffSheetRule(),
          new SeamLengthsRule(),
          new ShortWallRule(),
          new InsideOutRule(),
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
          new FitRule(),
          new ClosingStackRule(),
          new WindowNearScoreRule(),
          new HoleNearEdgeRule(),
          new ScoresTooCloseRule(),
          new SharpSliverRule(),
          new LayerLostRule(),
          new TickOffCardRule(),
          new GrainRule());

  private Checks() {}

  /** The rules, in order. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** Everything the rules find: errors first, then warnings, then notes, each in rule order. */
  public static List<Finding> all(Laid laid, FoldedForm folded) {
    Subject subject = new Subject(laid, folded);
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
