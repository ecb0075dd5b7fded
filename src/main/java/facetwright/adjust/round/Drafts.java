package facetwright.adjust.round;

import facetwright.aim.Knob;
import facetwright.measure.Ruler;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes drafts, none twice, and counts them. */
final class Drafts {
  private final WhatIf what;
  private final List<Knob> knobs;
  private final Ruler ruler;
  private final Map<List<Double>, Optional<Draft>> known = new HashMap<>();

  Drafts(WhatIf what, List<Knob> knobs, Ruler ruler) {
    this.what = what;
    this.knobs = List.copyOf(knobs);
    this.ruler = ruler;
  }

  List<Knob> knobs() {
    return knobs;
  }

  Ruler ruler() {
    return ruler;
  }

  /** In mm, one of what the dials count. */
  double unitMm() {
    return what.design().unit().mm();
  }

  int count() {
    return known.size();
  }

  /** As it stands. */
  Draft now() throws ScriptException {
    List<Double> here = knobs.stream().map(Knob::now).toList();
    Optional<Draft> made = known.get(here);
    if (made == null) {
      made = Optional.of(Draft.of(named(here), what.design(), ruler));
      known.put(here, made);
    }
    return made.orElseThrow();
  }

  /**
   * With the dials at these values, in their order.
   *
   * @return empty where there is no such design
   */
  Optional<Draft> at(List<Double> values) throws ScriptException {
    Optional<Draft> made = known.get(values);
    if (made == null) {
      Map<String, Double> dials = named(values);
      Optional<Design> design = what.turned(dials);
      made = design.map(d -> Draft.of(dials, d, ruler));
      known.put(List.copyOf(values), made);
    }
    return made;
  }

  private Map<String, Double> named(List<Double> values) {
    Map<String, Double> dials = new LinkedHashMap<>();
    for (int i = 0; i < values.size(); i++) {
      dials.put(knobs.get(i).name(), values.get(i));
    }
    return dials;
  }
}
