package facetwright.script;

import facetwright.aim.Knob;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A design's dials as knobs for an aim. */
final class Knobs {
  private Knobs() {}

  /** A dial as a knob; empty for one that chooses a word, which no slope leads to. */
  static Optional<Knob> of(Dial dial) {
    return dial.kind()
        .counts()
        .map(
            counts ->
                new Knob(dial.name(), counts, dial.value(), dial.from(), dial.to(), dial.step()));
  }

  static List<Knob> all(Design design) {
    return design.dials().stream().flatMap(d -> of(d).stream()).toList();
  }

  /**
   * The dials by name, in the names' order.
   *
   * @throws IllegalArgumentException when the design has no such dial, or it chooses a word
   */
  static List<Knob> named(Design design, List<String> names) {
    List<String> known = design.dials().stream().map(Dial::name).toList();
    List<Knob> knobs = new ArrayList<>();
    for (String name : names.stream().distinct().toList()) {
      int at = known.indexOf(name);
      if (at < 0) {
        throw new IllegalArgumentException(unknown(name, known));
      }
      Dial dial = design.dials().get(at);
      knobs.add(of(dial).orElseThrow(() -> new IllegalArgumentException(word(dial))));
    }
    return knobs;
  }

  private static String word(Dial dial) {
    return "the dial "
        + dial.name()
        + " is one of "
        + String.join(", ", dial.words())
        + ", so it is not turned to come nearer to a measure. Set it, and aim with other dials";
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
