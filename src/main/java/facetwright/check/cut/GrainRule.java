package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.sheet.Stock;
import facetwright.words.Site;
import java.util.List;

/** Long scores that run across the grain, where card cracks more easily. */
public final class GrainRule implements Rule {
  /** Scores at least this part of the longest count as long. */
  private static final double LONG = 0.5;

  /** A score within 30° of square to the grain runs across it. */
  private static final double ACROSS = Math.cos(Math.toRadians(60));

  @Override
  public List<Finding> find(Subject subject) {
    Stock stock = subject.laid().stock();
    if (stock.grain() == Stock.Grain.UNKNOWN || subject.net().scores().isEmpty()) {
      return List.of();
    }
    boolean alongX = (stock.grain() == Stock.Grain.LONG) == (stock.width() >= stock.height());
    Vec2 grain = alongX ? new Vec2(1, 0) : new Vec2(0, 1);
    List<Segment2> scores =
        subject.net().scores().stream().map(s -> subject.net().segment(s.a())).toList();
    double longest = scores.stream().mapToDouble(Segment2::length).max().orElse(0);
    List<Segment2> longs = scores.stream().filter(s -> s.length() >= LONG * longest).toList();
    long across = longs.stream().filter(s -> Math.abs(s.direction().dot(grain)) <= ACROSS).count();
    if (2 * across <= longs.size()) {
      return List.of();
    }
    return List.of(
        new Finding(
            "grain",
            Finding.Severity.NOTE,
            Message.of(
                "%s of the %s long scores run across the grain of the sheet, where card cracks more"
                    + " easily.",
                across, longs.size()),
            Message.text(
                "Turn the net a quarter on the sheet, or take a sheet with its grain the other"
                    + " way."),
            new Place.WholeNet(),
            Site.NONE));
  }
}
