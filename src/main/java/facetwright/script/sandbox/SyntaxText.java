package facetwright.script.sandbox;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the engine says of a text that it can't read, in plain words, and what to do. */
record SyntaxText(String fault, String remedy) {
  private static final Pattern EXPECTED = Pattern.compile("Expected (.+) but found (.+)");
  private static final Pattern UNSET = Pattern.compile("Missing assignment to constant \"(.+)\"");
  private static final Pattern TWICE =
      Pattern.compile("(?:Variable|Identifier) \"?(.+?)\"? has already been declared");

  private static final String CURLY = "“”„‟‘’‚‛«»";

  private static final String LOOK_BEFORE =
      "Look just before this place for a missing comma, quote or bracket, or a misspelt word.";
  private static final String CLOSE_ALL =
      "See that every bracket and every brace that is opened is closed again.";

  /** Names that the engine has for what it reads or wants to read. */
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("ident", "a name"),
          Map.entry("BindingIdentifier or BindingPattern", "a name"),
          Map.entry("an operand", "a value"),
          Map.entry("comma", "a comma"),
          Map.entry(",", "a comma"),
          Map.entry(";", "the end of a line"),
          Map.entry(":", "a colon"),
          Map.entry("eof", "the end of the script"),
          Map.entry("error", "a sign that means nothing in a script"));

  /**
   * In plain words, as far as they are known; else the engine's own.
   *
   * @param sign what stands at the place that is told
   */
  static SyntaxText of(String said, String sign) {
    Matcher expected = EXPECTED.matcher(said);
    if (expected.matches()) {
      return expected(expected.group(1), expected.group(2), sign);
    }
    Matcher unset = UNSET.matcher(said);
    if (unset.matches()) {
      return new SyntaxText(
          unset.group(1) + " is given no value",
          "Write what it is, such as const " + unset.group(1) + " = 30;");
    }
    Matcher twice = TWICE.matcher(said);
    if (twice.find()) {
      return new SyntaxText(
          twice.group(1) + " is made a second time here", "Give one of the two another name.");
    }
    if (said.startsWith("await is only valid")) {
      return new SyntaxText(
          "there is nothing to await in a script", "Leave the word out: it runs top to bottom.");
    }
    return switch (said) {
      case "Missing close quote" ->
          new SyntaxText(
              "a text is begun and not ended", "End it with the same quote that it begins with.");
      case "Invalid left hand side for assignment" ->
          new SyntaxText(
              "what stands left of the = can't be given a value",
              "Put a name there, or compare with ===.");
      case "Invalid shorthand property name initializer in object literal" ->
          new SyntaxText("an option is given its value with =", "Write a colon: { sides: 6 }.");
      case "Missing space after numeric literal" ->
          new SyntaxText(
              "a number runs into a word",
              "Begin names with a letter; write lengths with a unit as text: \"3 mm\".");
      default -> new SyntaxText("this can't be read: " + said, LOOK_BEFORE);
    };
  }

  private static SyntaxText expected(String wanted, String found, String sign) {
    if (found.equals("eof")) {
      return new SyntaxText("the script ends where " + name(wanted) + " should follow", CLOSE_ALL);
    }
    if (found.equals("comma") && wanted.equals(":")) {
      return new SyntaxText(
          "a comma stands where a colon should",
          "Write an option with its value, such as { side: 20 }, and decimals with a point: 20.5.");
    }
    if (found.equals(";") && (wanted.equals("comma") || wanted.equals(",") || wanted.equals(")"))) {
      return new SyntaxText(
          "the line ends while a bracket, brace or list is still open", CLOSE_ALL);
    }
    if (found.equals("error")) {
      if (!sign.isEmpty() && CURLY.contains(sign)) {
        return new SyntaxText(
            sign + " is a curly quote, which means nothing in a script",
            "Write straight ones round a text: \"text\".");
      }
      return new SyntaxText(
          sign.isEmpty() || Character.isISOControl(sign.charAt(0))
              ? "a sign that means nothing in a script stands here"
              : "the sign " + sign + " means nothing in a script",
          "Take it away; a text stands between straight quotes, a note after // or between /* and"
              + " */.");
    }
    return new SyntaxText(name(found) + " stands where " + name(wanted) + " should", LOOK_BEFORE);
  }

  private static String name(String sign) {
    String known = NAMES.get(sign);
    return known != null ? known : "\"" + sign + "\"";
  }
}
