package facetwright.adjust.propose;

import facetwright.adjust.DialChange;
import facetwright.adjust.Remark;
import java.io.Serializable;
import java.util.List;

/**
 * What a question to a design came to.
 *
 * @param isMet whether it comes to what was asked, or nearer to it
 * @param dials the dials that might be turned, and where they go
 * @param remarks what would change and what would not, in the order to be read
 * @param ways how it can be taken, the usual first; none where nothing would change
 */
public record Proposal(
    boolean isMet, List<DialChange> dials, List<Remark> remarks, List<Suggestion> ways)
    implements Serializable {
  public Proposal {
    dials = List.copyOf(dials);
    remarks = List.copyOf(remarks);
    ways = List.copyOf(ways);
  }

  /** None, for a reason. */
  static Proposal none(String why) {
    return new Proposal(false, List.of(), List.of(Remark.of(why)), List.of());
  }
}
