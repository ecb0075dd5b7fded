package facetwright.check.finding;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Segment2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.sheet.Laid;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * What the rules look at.
 *
 * @param laid the net on its sheets
 * @param folded the same net folded
 */
public record Subject(Laid laid, FoldedForm folded) {

  public Net net() {
    return laid.net();
  }

  public Panel panel(int index) {
    return net().panels().get(index);
  }

  /** A panel's name in quotes. */
  public String name(int index) {
    return "\"" + panel(index).name() + "\"";
  }

  /** A panel's name with the script line that made it, where that is known. */
  public String named(int index) {
    Site site = panel(index).site();
    return name(index) + (site.isKnown() ? " (line " + site.line() + ")" : "");
  }

  /** How a join is called in a message. */
  public String name(Join join) {
    return switch (join) {
      case Join.Seam s -> "the seam between " + name(s.a().panel()) + " and " + name(s.b().panel());
      case Join.Lap l -> "the lap of " + name(l.under()) + " under " + name(l.over());
    };
  }

  /** The script place of a join, or else of a panel it names. */
  public Site site(Join join) {
    int panel =
        switch (join) {
          case Join.Seam s -> s.a().panel();
          case Join.Lap l -> l.under();
        };
    return join.site().isKnown() ? join.site() : panel(panel).site();
  }

  /** How a score is called in a message. */
  public String name(Score score) {
    return "the score between " + name(score.a().panel()) + " and " + name(score.b().panel());
  }

  /** For each panel its scored sides, in order. */
  public List<List<Segment2>> scoredSides() {
    boolean[][] scored = scored();
    List<List<Segment2>> sides = new ArrayList<>();
    for (int p = 0; p < scored.length; p++) {
      sides.add(sides(p, scored[p], true));
    }
    return sides;
  }

  /** For each panel its sides that are cut, in order. */
  public List<List<Segment2>> cutSides() {
    boolean[][] scored = scored();
    List<List<Segment2>> sides = new ArrayList<>();
    for (int p = 0; p < scored.length; p++) {
      sides.add(sides(p, scored[p], false));
    }
    return sides;
  }

  private List<Segment2> sides(int panel, boolean[] scored, boolean wanted) {
    List<Segment2> sides = new ArrayList<>();
    for (int e = 0; e < scored.length; e++) {
      if (scored[e] == wanted) {
        sides.add(panel(panel).outline().side(e));
      }
    }
    return sides;
  }

  private boolean[][] scored() {
    boolean[][] scored = new boolean[net().panels().size()][];
    for (int p = 0; p < scored.length; p++) {
      scored[p] = new boolean[panel(p).outline().size()];
    }
    for (Score s : net().scores()) {
      scored[s.a().panel()][s.a().edge()] = true;
      scored[s.b().panel()][s.b().edge()] = true;
    }
    return scored;
  }
}
