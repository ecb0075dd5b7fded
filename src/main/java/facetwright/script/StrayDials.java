package facetwright.script;

import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.CallException;
import facetwright.words.NearName;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What becomes of settings that no dial of the script takes. */
public enum StrayDials {
  /** They are an error: whoever named them meant another dial, or another value. */
  REFUSED,
  /** Those of dials that are not there are left out; a value that a dial can't take is an error. */
  PASSED_OVER,
  /**
   * They give way: those of dials that are not there are left out, and a dial that can't take its
   * value takes the one nearest to it. They were turned while the script read otherwise, and hold
   * again as soon as it does again.
   */
  YIELDING;

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

  /**
   * Settings that lead to a design again and are refused by none of its dials; those of dials that
   * it does not have stay.
   *
   * @param settings what the design was made by, by name, as a person types them
   */
  Map<String, String> taken(Map<String, String> settings, Design design) {
    Map<String, String> taken = new LinkedHashMap<>(settings);
    for (Dial dial : this == YIELDING ? design.dials() : List.<Dial>of()) {
      if (DialText.yielded(dial, settings, design.unit()).isPresent()) {
        taken.put(dial.name(), Double.toString(dial.value()));
      }
    }
    return taken;
  }
}
