package facetwright.net;

import facetwright.geom.Motion2;
import facetwright.geom.Segment2;
import facetwright.words.Site;
import java.io.Serializable;

/** A short mark that starts or ends a line, drawn lightly on the sheet. */
public record Tick(Segment2 mark, Site site) implements Serializable {
  /** The same elsewhere. */
  Tick moved(Motion2 m) {
    return new Tick(new Segment2(m.apply(mark.from()), m.apply(mark.to())), site);
  }
}
