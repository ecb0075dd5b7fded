package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.List;
import java.util.Optional;

/**
 * A tongue and the slot that it goes through.
 *
 * @param bearer the panel that bears the tongue
 * @param foot the line on that panel along which the tongue is folded, in the net
 * @param host the panel with the slot
 * @param slot the middle of the slot as long as the foot, its start where the foot ends
 */
record Tongue(int bearer, Segment2 foot, int host, Segment2 slot) {

  static Optional<Tongue> of(Net net, Join join) {
    if (!(join instanceof Join.Lap lap) || lap.hold() != Hold.TONGUE) {
      return Optional.empty();
    }
    Segment2 line = Join.slot(net, lap).map(s -> s.line()).orElse(null);
    for (Score score : line == null ? List.<Score>of() : net.scores()) {
      boolean isA = score.a().panel() == lap.under();
      if (isA || score.b().panel() == lap.under()) {
        EdgeRef on = isA ? score.b() : score.a();
        Segment2 foot = net.segment(on);
        double part = (1 - foot.length() / line.length()) / 2;
        Segment2 met =
            new Segment2(line.from().toward(line.to(), part), line.to().toward(line.from(), part));
        return Optional.of(new Tongue(on.panel(), foot, lap.over(), met));
      }
    }
    return Optional.empty();
  }

  /** How far the foot is from where it goes through, in mm; a caliper is no miss. */
  double miss(List<Motion3> poses, double caliper) {
    Motion3 mine = poses.get(bearer);
    Motion3 its = poses.get(host);
    double from = mine.apply(foot.from()).distance(its.apply(slot.to()));
    double to = mine.apply(foot.to()).distance(its.apply(slot.from()));
    return Math.max(0, Math.max(from, to) - caliper);
  }
}
