package facetwright.net.blank;

import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.words.Site;
import java.util.List;

/**
 * A line drawn on a blank.
 *
 * @param folds how its stretches from crossing to crossing are folded, in turn and over again; none
 *     for a cut
 */
record Line(Segment2 at, LineKind kind, List<LineFold> folds, Site site) {
  Line {
    folds = List.copyOf(folds);
  }

  static Line cut(Segment2 at, Site site) {
    return new Line(at, LineKind.CUT, List.of(), site);
  }

  boolean isCut() {
    return kind == LineKind.CUT;
  }

  /** The same where it is of one manner all along. */
  Line as(LineKind other, LineFold fold, Site said) {
    return new Line(at, other, other == LineKind.CUT ? List.of() : List.of(fold), said);
  }

  Message told() {
    return Message.of(
        "the %s from %s to %s",
        isCut() ? "cut" : "score", Ask.place(at.from()), Ask.place(at.to()));
  }
}
