package facetwright.script;

import facetwright.aim.Knob;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A design's dials as knobs for an aim. */
final class Knobs {
  private Knobs() {}

  static Knob of(Dial dial) {
    return new Knob(
        dial.name(),
        dial.kind() == Dial.Kind.LENGTH,
        dial.value(),
        dial.from(),
        dial.to(),
        dial.step());
  }

  static List<Knob> all(Design design) {
    return design.dials().stream().map(Knobs::of).toList();
  }

  /**
   * The dials by name, in the names' order.
   *
   * @throws IllegalArgumentException when the design has no such dial
   */
  static List<Knob> named(Design design, List<String> names) {
    List<String> known = design.dials().stream().map(Dial::name).toList();
    List<Knob> knobs = new ArrayList<>();
    for (String name : names.stream().distinct().toList()) {
      int at = known.indexOf(name);
      if (at < 0) {
        throw new IllegalArgumentException(unknown(name, known));
      }
      knobs.add(of(design.dials().get(at)));
    }
    return knobs;
  }

  static String unknown(String name, List<String> known) {
    return "there is no dial called \""
        + name
        + "\". "
        + NearName.nearest(name, known).map(n -> "Did you mean \"" + n + "\"? ").orElse("")
        + (known.isEmpty() ? "It has no dials" : "Its dials are " + String.join(", ", known));
  }

  /**
   * The dials to turn where nobody names them: those without steps; where there are none, all.
   *
   * @param but dials to leave alone
   */
  static List<Knob> usual(Design design, Set<String> but) {
    List<Knob> all = all(design).stream().filter(k -> !but.contains(k.name())).toList();
    List<Knob> smooth = all.stream().filter(k -> !k.isStepped()).toList();
    return smooth.isEmpty() ? all : smooth;
  }
}
