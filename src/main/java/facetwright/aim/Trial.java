package facetwright.aim;

import java.util.List;

/** Makes a design with its knobs at given values. */
@FunctionalInterface
public interface Trial {
  /**
   * @param values one for each knob, in the knobs' order, inside their ends and on their steps
   */
  Tried at(List<Double> values);
}
