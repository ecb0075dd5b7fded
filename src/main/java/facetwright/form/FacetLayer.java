package facetwright.form;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Site;
import java.io.Serializable;

/**
 * A decorative paper for a facet.
 *
 * @param reveal the border of card left showing, in mm, 0 or more
 * @param paper the name of the paper
 * @param site where the script asked for it
 */
public record FacetLayer(double reveal, String paper, Site site) implements Serializable {
  public FacetLayer {
    if (!(reveal >= 0 && reveal <= 1000)) {
      throw new FormException(
          Message.of("a reveal lies in 0 to %s, not %s", Value.given(1000), Value.given(reveal)));
    }
  }
}
