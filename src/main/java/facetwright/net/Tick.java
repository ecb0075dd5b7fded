package facetwright.net;

import facetwright.geom.Segment2;
import facetwright.words.Site;
import java.io.Serializable;

/** A short mark that starts or ends a line, drawn lightly on the sheet. */
public record Tick(Segment2 mark, Site site) implements Serializable {}
