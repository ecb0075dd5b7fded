package facetwright.script;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.message.Message;
import facetwright.script.api.Made;
import facetwright.script.sandbox.Spot;
import facetwright.script.text.Reading;
import facetwright.words.Mend;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds forms that are made and never unfolded, changed forms that are lost because the form itself
 * stays as it was, and cells that are chosen for nothing. A form counts as used once a function is
 * called on it or it is given to one: what was only measured is not found. Nor is what the script
 * speaks of elsewhere, for it may mean to choose, nor what it puts into lists.
 */
final class Unused {
  private static final String RULE = "unused";
  private static final String NEVER = " is never unfolded, so it is no part of the net.";

  private final String source;
  private final Map<String, Reading> readings = new HashMap<>();

  private Unused(String source) {
    this.source = source;
  }

  /**
   * What the script makes for nothing.
   *
   * @param made all that it makes
   */
  static List<Finding> in(String source, List<Made> made) {
    List<Made> left = made.stream().filter(m -> !m.isUsed()).toList();
    if (left.isEmpty()) {
      return List.of();
    }
    Unused unused = new Unused(source);
    List<Finding> found = new ArrayList<>();
    left.forEach(m -> unused.look(m).ifPresent(found::add));
    return found;
  }

  private Optional<Finding> look(Made made) {
    Spot spot = Spot.of(source, made.site());
    Reading script = readings.computeIfAbsent(spot.text(), Reading::of);
    Chain chain = Chain.of(script, spot.site());
    boolean dropped = chain.fate() == Chain.Fate.DROPPED;
    boolean elsewhere = !chain.name().isEmpty() && chain.isNamedElsewhere(script);
    boolean forgotten = chain.fate() == Chain.Fate.NAMED && !elsewhere;
    if (!made.isForm()) {
      return dropped || forgotten
          ? Optional.of(
              !made.isOutline()
                  ? cells(made)
                  : dropped && elsewhere ? lost(made, chain.name()) : outline(made))
          : Optional.empty();
    }
    return switch (chain.fate()) {
      case DROPPED -> Optional.of(elsewhere ? lost(made, chain.name()) : dropped(made));
      case NAMED -> forgotten ? Optional.of(forgotten(made, chain.name())) : Optional.empty();
      case GIVEN_BACK -> Optional.of(givenBack(made));
      case TAKEN -> Optional.empty();
    };
  }

  private static Finding cells(Made made) {
    return finding(
        made,
        Finding.Severity.WARNING,
        made.function() + " chooses cells here, and nothing is done with them.",
        "Say what becomes of them, such as .remove() or .tabs(), or take the line out.",
        List.of());
  }

  private static Finding outline(Made made) {
    return finding(
        made,
        Finding.Severity.WARNING,
        made.function() + " makes an outline here, and nothing is made of it.",
        "Give it to prism, panel or window as { outline: ... }, or take the line out.",
        List.of());
  }

  private static Finding dropped(Made made) {
    return finding(
        made,
        Finding.Severity.WARNING,
        "The form that " + made.function() + " makes here" + NEVER,
        "Put .unfold() behind it.",
        List.of(new Mend.Unfold("")));
  }

  private static Finding forgotten(Made made, String name) {
    return finding(
        made,
        Finding.Severity.WARNING,
        "The form " + name + NEVER,
        "Write " + name + ".unfold(); below it, or take it out.",
        List.of(new Mend.Unfold(name)));
  }

  private static Finding givenBack(Made made) {
    return finding(
        made,
        Finding.Severity.NOTE,
        "The form given back here" + NEVER,
        "Put .unfold() behind the call that it is given to.",
        List.of());
  }

  private static Finding lost(Made made, String name) {
    return finding(
        made,
        Finding.Severity.WARNING,
        made.function()
            + (made.isOutline() ? " makes a new outline" : " makes a new form")
            + " and leaves "
            + name
            + " as it was; nothing is done with the new one.",
        "Put %s = before it, with let in place of const where %s is made.".formatted(name, name),
        List.of(new Mend.Keep(name)));
  }

  private static Finding finding(
      Made made, Finding.Severity severity, String message, String fix, List<Mend> mends) {
    return new Finding(
        RULE,
        severity,
        Message.text(message),
        Message.text(fix),
        new Place.WholeNet(),
        made.site(),
        mends);
  }
}
