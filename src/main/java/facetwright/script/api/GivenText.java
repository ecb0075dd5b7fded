package facetwright.script.api;

import facetwright.words.Decimals;

/** Numbers and values as messages show them. */
public final class GivenText {
  private GivenText() {}

  /** A script's value as a message quotes it, short. */
  public static String quote(Given value) {
    return switch (value) {
      case Given.Other.NOTHING -> "nothing (undefined)";
      case Given.Other.FUNCTION -> "a function";
      case Given.Other.SYMBOL -> "a symbol";
      case Given.Text(String text) ->
          '"' + (text.length() > 40 ? text.substring(0, 37) + "..." : text) + '"';
      case Given.Flag(boolean flag) -> Boolean.toString(flag);
      case Given.Amount(double n) -> Decimals.plain(n);
      case Given.Held(Handle<?> handle) -> handle.thing().one();
      case Given.Items _ -> "a list";
      case Given.Braces _ -> "options in braces";
    };
  }
}
