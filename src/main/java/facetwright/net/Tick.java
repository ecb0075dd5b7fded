package facetwright.net;

import facetwright.geom.Motion2;
import facetwright.geom.Segment2;
import facetwright.words.Site;
import java.io.Serializable;

/**
 * A short mark that starts or ends a line, drawn lightly on the sheet.
 *
 * @param panel the panel it is drawn from; it may end beside it
 */
public record Tick(int panel, Segment2 mark, Site site) implements Serializable {
  /** The same elsewhere. */
  Tick moved(Motion2 m) {
    return new Tick(panel, new Segment2(m.apply(mark.from()), m.apply(mark.to())), site);
  }

  /** As seen in a mirror. */
  Tick mirrored() {
    return new Tick(panel, new Segment2(mark.from().mirrored(), mark.to().mirrored()), site);
  }
}
