package facetwright.workbench.goal;

import facetwright.aim.GoalReader;
import facetwright.check.Finding;
import facetwright.geom.Unit;
import facetwright.script.Design;
import facetwright.script.Dial;
import facetwright.script.DialText;
import facetwright.worker.Request;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/**
 * What somebody at the table wishes a design came to.
 *
 * @param word one of {@link GoalReader#WORDS}
 * @param value as typed
 * @param turn the dial that may be turned; empty to leave the choice
 */
public record Wish(String word, String value, String turn) {
  /** What the rule of an aim's finding is called. */
  private static final String RULE = "aim";

  /** What a design came to for a wish. */
  public record Came(SequencedMap<String, String> settings, String words, boolean met) {}

  /** The wish that would put a finding right by turning dials; empty where none would. */
  public static Optional<Wish> mending(Design design, Finding finding) {
    if (design.dials().isEmpty()) {
      return Optional.empty();
    }
    return switch (finding.rule()) {
      case "gap", "strain", "tear" -> Optional.of(new Wish("gap", "0", ""));
      case "off-sheet" -> Optional.of(new Wish("fits", design.laid().stock().name(), ""));
      default -> Optional.empty();
    };
  }

  /** What it is good for, on a button. */
  public String verb() {
    return word.equals("fits") ? "Find dials so that it fits" : "Find dials so that it closes";
  }

  /** What is wrong with it as typed; empty where nothing is. */
  public Optional<String> trouble(Unit unit) {
    try {
      GoalReader.read(word, value, unit);
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      String said = e.getMessage();
      return Optional.of(
          Character.toUpperCase(said.charAt(0))
              + said.substring(1)
              + (said.endsWith("?") ? "" : "."));
    }
  }

  /**
   * The script with the wish at its end. Dials that may be turned start where the script has them,
   * all others stay as they are set.
   */
  Request request(Request now, Design design) {
    Map<String, String> set = new LinkedHashMap<>(now.settings());
    if (turn.isEmpty()) {
      design.dials().stream().filter(d -> d.step() == 0).map(Dial::name).forEach(set::remove);
    } else {
      set.remove(turn);
    }
    String dials = turn.isEmpty() ? "" : ", turn: " + quoted(turn);
    return new Request(
        now.fileName(),
        now.source() + "\naim({ " + word + ": " + quoted(value) + dials + " });\n",
        set);
  }

  /** What an aimed design says, and the settings that lead to it. */
  Came came(Design aimed, Design before) {
    Finding told =
        aimed.findings().stream().filter(f -> f.rule().equals(RULE)).findFirst().orElseThrow();
    SequencedMap<String, String> settings = new LinkedHashMap<>();
    for (Dial dial : aimed.dials()) {
      settings.put(dial.name(), DialText.of(dial, dial.value(), aimed.unit()));
    }
    List<Dial> old = before.dials();
    boolean moved =
        aimed.dials().stream()
            .anyMatch(
                d ->
                    old.stream()
                        .noneMatch(o -> o.name().equals(d.name()) && o.value() == d.value()));
    boolean met = told.severity() == Finding.Severity.NOTE && told.fix().isEmpty();
    String fix = told.fix().isEmpty() ? "" : " " + told.fix();
    return new Came(moved ? settings : new LinkedHashMap<>(), told.message() + fix, met);
  }

  private static String quoted(String text) {
    return '"' + text.strip().replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
