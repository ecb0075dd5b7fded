package facetwright.script;

import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.message.Message;
import facetwright.script.design.AskedAim;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Turns the dials of a script for what it aims at, and says what became of that. */
final class ScriptAim {
  private static final String RULE = "aim";

  /** Fewer designs are made than where a person asks: somebody waits for each turn of a dial. */
  private static final int MOST = 80;

  private ScriptAim() {}

  /**
   * @param made the design as it stands without the aim
   */
  static Facetwright.Settled follow(
      String fileName,
      String source,
      Map<String, String> settings,
      Budget budget,
      Facetwright.Made made)
      throws ScriptException {
    AskedAim asked = made.aim().orElseThrow();
    WhatIf what = new WhatIf(fileName, source, settings, budget, made);
    WhatIf.Choice choice = what.choose(asked.goals(), asked.turn(), settings.keySet());
    if (choice.knobs().isEmpty()) {
      Facetwright.Made whole = Facetwright.checked(fileName, budget, made);
      return new Facetwright.Settled(
          with(whole, unturned(asked, made.design(), settings.isEmpty())), settings);
    }
    Outcome outcome = what.aim(asked.goals(), choice, asked.grid(), MOST);
    Map<String, String> turned = new LinkedHashMap<>(settings);
    turned.putAll(outcome.settings());
    Facetwright.Made aimed = Facetwright.checked(fileName, budget, what.made(outcome));
    return new Facetwright.Settled(
        outcome.isMet() ? saying(aimed, outcome) : with(aimed, missed(asked, outcome)), turned);
  }

  /**
   * @param isNone whether nothing is set by hand, so that there are no dials to turn
   */
  private static Finding unturned(AskedAim asked, Design design, boolean isNone) {
    String goals =
        asked.goals().stream().map(g -> g.text(design.unit())).collect(Collectors.joining(" and "));
    return new Finding(
        RULE,
        isNone ? Finding.Severity.WARNING : Finding.Severity.NOTE,
        Message.of(
            "The aim at %s is not followed: %s.",
            goals,
            isNone ? "there is no dial that it may turn" : "every dial it may turn is set by hand"),
        Message.text(
            isNone
                ? "Make a dial of a measure that may change: const side = dial(\"side\", 30, {"
                    + " from: 20, to: 40 });"
                : "Leave one of them unset to have it turned."),
        new Place.WholeNet(),
        asked.site());
  }

  /** What is as it was meant is no finding, but said. */
  private static Facetwright.Made saying(Facetwright.Made made, Outcome outcome) {
    return made.with(
        made.design().saying("Aimed with " + OutcomeText.settings(outcome) + ": " + came(outcome)));
  }

  private static String came(Outcome outcome) {
    List<String> words = new ArrayList<>(OutcomeText.goals(outcome));
    words.addAll(OutcomeText.hurdles(outcome));
    return String.join(" ", words);
  }

  private static Finding missed(AskedAim asked, Outcome outcome) {
    return new Finding(
        RULE,
        Finding.Severity.WARNING,
        Message.of("The aim is missed: %s", came(outcome)),
        Message.text(fix(outcome)),
        new Place.WholeNet(),
        asked.site());
  }

  private static String fix(Outcome outcome) {
    boolean open = outcome.goals().stream().anyMatch(g -> g.status() == Outcome.Status.NOT_KNOWN);
    if (open) {
      return "Give the fold angles you know, or join what has to meet.";
    }
    if (outcome.goals().stream().anyMatch(g -> g.status() == Outcome.Status.OFF_MARKS)) {
      return "Set the dials by a finer ruler, or let another dial turn.";
    }
    boolean fit =
        outcome.goals().stream()
            .anyMatch(g -> g.goal() instanceof Goal.Fit && g.status() != Outcome.Status.MET);
    String other =
        fit ? "take a larger sheet, or let another dial turn." : "let another dial turn.";
    return outcome.stops().isEmpty()
        ? "Ask for what can be reached, or " + other
        : "Widen the range of that dial, or " + other;
  }

  /** The same with one finding more, where its severity belongs. */
  private static Facetwright.Made with(Facetwright.Made made, Finding finding) {
    List<Finding> findings = new ArrayList<>();
    boolean placed = false;
    for (Finding other : made.design().findings()) {
      if (!placed && other.severity().compareTo(finding.severity()) > 0) {
        findings.add(finding);
        placed = true;
      }
      findings.add(other);
    }
    if (!placed) {
      findings.add(finding);
    }
    return made.with(made.design().found(findings));
  }
}
