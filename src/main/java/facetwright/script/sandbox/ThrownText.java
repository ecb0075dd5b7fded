package facetwright.script.sandbox;

import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the engine says of a statement that it can't carry out, in plain words, and what to do. */
record ThrownText(String fault, String remedy) {
  private static final Pattern KIND_OF_ERROR =
      Pattern.compile("^(Range|Type|Reference|Eval)?Error: ");
  private static final Pattern OF_NOTHING =
      Pattern.compile("^Cannot (?:read|set) propert(?:y|ies) '?([\\w$]+)'? of (?:null|undefined)");
  private static final Pattern NOT_ALLOWED = Pattern.compile("^Operation is not allowed for: (.*)");
  private static final Pattern CONSTANT =
      Pattern.compile("^Assignment to constant (?:variable )?[\"']?([\\w$]+)");
  private static final Pattern NATIVE =
      Pattern.compile("function \\w*\\(\\) \\{ \\[native code] }");
  private static final String LOOK = "Look at the values that this line works with.";

  /**
   * @param text the expression that failed, as far as it is known
   */
  static ThrownText of(String said, CharSequence text) {
    String message = KIND_OF_ERROR.matcher(said).replaceFirst("");
    Matcher nothing = OF_NOTHING.matcher(message);
    if (nothing.find()) {
      return ofNothing(nothing.group(1), text);
    }
    Matcher load = NOT_ALLOWED.matcher(message);
    if (load.find()) {
      return new ThrownText("a script can't load \"" + load.group(1) + "\"", Faults.ONE_FILE);
    }
    if (message.startsWith("dynamic evaluation of code is disabled")) {
      return new ThrownText("a text can't be run as code", "Write the code out instead");
    }
    Matcher constant = CONSTANT.matcher(message);
    if (constant.find()) {
      return new ThrownText(
          constant.group(1) + " is made with const, and keeps the value it has",
          "Make it with let where it is to change; to compare two values, write ===.");
    }
    if (message.startsWith("Invalid string length")) {
      return new ThrownText(
          "a text would come out longer than a text can be",
          "Put less together, or repeat it less.");
    }
    if (message.startsWith("Invalid array length")) {
      return new ThrownText(
          "a list can't have so many places", "Give it a whole number of places, 0 or more.");
    }
    if (message.startsWith("illegal repeat count")) {
      return new ThrownText(
          "a text can't be repeated so often", "Repeat it a whole number of times, 0 or more.");
    }
    if (message.endsWith(" is not a constructor")) {
      return new ThrownText(
          "what stands behind new is not made with new",
          "Leave the word out: functions such as prism(…) are called without it.");
    }
    return new ThrownText(NATIVE.matcher(message).replaceAll("a function"), LOOK);
  }

  private static ThrownText ofNothing(String member, CharSequence text) {
    String called = calledBefore(Reading.of(text.toString()), member);
    if (called.isEmpty()) {
      return new ThrownText(
          "there is nothing here that could have " + member,
          "See what stands before ." + member + ": a misspelt name, or a call that gives nothing.");
    }
    return new ThrownText(
        called + " gives nothing back, so ." + member + " has nothing to work on",
        "Make a statement of its own of each.");
  }

  /** The member that is called just before another; empty where none is. */
  private static String calledBefore(Reading reading, String member) {
    for (int i = 0; i < reading.tokens().size(); i++) {
      int close = reading.back(reading.back(i));
      int name = reading.is(close, ')') ? reading.back(reading.partner(close)) : -1;
      if (reading.is(i, member)
          && reading.isDot(reading.back(i))
          && reading.is(name, Kind.NAME)
          && reading.isDot(reading.back(name))) {
        return reading.word(name);
      }
    }
    return "";
  }
}
