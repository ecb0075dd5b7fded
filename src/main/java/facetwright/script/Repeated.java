package facetwright.script;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.SaidTwice;
import facetwright.words.SaidTwice.Twice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** What a script says twice, as findings: of the two one is lost, or both lie in one place. */
final class Repeated {
  private static final String RULE = "said-twice";

  private static final String ONE_OUT = "Take one of the two out.";

  private Repeated() {}

  /**
   * Everything that is said twice.
   *
   * @param source the script, with the files that it uses
   * @param said what came up while it ran
   */
  static List<Finding> in(String source, SaidTwice said) {
    List<Finding> found = new ArrayList<>();
    said.all().forEach(t -> found.add(finding(t)));
    WrittenTwice.in(source).forEach(t -> found.add(written(t)));
    return found;
  }

  private static Finding finding(Twice twice) {
    Message of =
        twice.of().isEmpty() ? Message.EMPTY : Message.of(" of %s", Value.name(twice.of()));
    String first = place(twice.first(), twice.again());
    return switch (twice.effect()) {
      case REPLACES ->
          twice.isInOnePlace()
              ? of(
                  Finding.Severity.WARNING,
                  Message.of(
                      "%s is said here more than once%s, and only the last counts.",
                      twice.word(), twice.of().isEmpty() ? " of the same" : of),
                  "Say it once of each.",
                  twice.again())
              : of(
                  Finding.Severity.WARNING,
                  Message.of(
                      "%s is said here anew%s, so that nothing is left of what %s says.",
                      twice.word(), of, first),
                  ONE_OUT,
                  twice.again());
      case IDLE ->
          of(
              Finding.Severity.NOTE,
              Message.of("%s does nothing here: %s says it already.", twice.word(), first),
              ONE_OUT,
              twice.again());
      case ALIKE -> named(twice.of(), new Place.WholeNet(), twice.first(), twice.again());
      case BESIDE ->
          of(
              Finding.Severity.WARNING,
              Message.of(
                  "Two labels go on %s, this one and that of %s, and lie on each other.",
                  Value.name(twice.of()), first),
              "Put the words into one label, or one of the two on another panel.",
              twice.again());
    };
  }

  private static Finding written(WrittenTwice.Found twice) {
    String first = place(twice.first(), twice.again());
    return of(
        Finding.Severity.WARNING,
        twice.isFunction()
            ? Message.of(
                "The function %s is made here anew, so that the one of %s is lost.",
                Value.name(twice.word()), first)
            : Message.of(
                "%s stands twice in these braces, in %s and here, and only the last counts.",
                Value.name(twice.word()), first),
        twice.isFunction() ? "Give one of the two another name." : ONE_OUT,
        twice.again());
  }

  /**
   * Panels that the maker gave one name.
   *
   * @param place of one of them, not the first
   */
  static Finding named(String name, Place place, Site first, Site again) {
    return new Finding(
        RULE,
        Finding.Severity.WARNING,
        first.equals(again)
            ? Message.of(
                "All that is made here is called %s: papers and messages can't tell one from"
                    + " another.",
                Value.name(name))
            : Message.of(
                "Two panels are called %s, this one and that of %s: papers and messages can't tell"
                    + " one from the other.",
                Value.name(name), place(first, again)),
        first.equals(again)
            ? Message.of("Number them, such as \"%s \" + k.", name)
            : Message.text("Give one of the two another name."),
        place,
        again);
  }

  /** Where it was said first; in the same line by the column. */
  private static String place(Site first, Site again) {
    boolean isSameLine =
        first.line() == again.line()
            && first.in().line() == again.in().line()
            && first.in().name().equals(again.in().name());
    return isSameLine && !first.equals(again)
        ? "column " + (first.isInFile() ? first.in().column() : first.column()) + " of this line"
        : first.text();
  }

  private static Finding of(Finding.Severity severity, Message what, String remedy, Site site) {
    return new Finding(
        RULE, severity, what.capital(), Message.text(remedy), new Place.WholeNet(), site);
  }
}
