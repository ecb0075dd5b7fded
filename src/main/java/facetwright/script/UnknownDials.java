package facetwright.script;

import facetwright.script.design.Dial;
import facetwright.script.sandbox.CallException;
import facetwright.words.NearName;
import java.util.Collection;
import java.util.List;

/** What becomes of settings of dials that the script does not have. */
public enum UnknownDials {
  /** They are an error: whoever named them meant another. */
  REFUSED,
  /**
   * They are left out: they were turned while the script had such dials, and hold again as soon as
   * it has them again.
   */
  LEFT_OUT;

  /**
   * @param set the dials that are set, by name
   * @throws CallException when one that is not there is refused
   */
  void check(Collection<String> set, List<Dial> dials) {
    List<String> known = dials.stream().map(Dial::name).toList();
    for (String name : set) {
      if (this == REFUSED && !known.contains(name)) {
        String meant =
            NearName.nearest(name, known).map(n -> "Did you mean \"" + n + "\"? ").orElse("");
        String all =
            known.isEmpty()
                ? "It has no dials."
                : "Its dials are " + String.join(", ", known) + ".";
        throw new CallException("this design has no dial called \"" + name + "\"", meant + all);
      }
    }
  }
}
