package facetwright.script.sandbox;

import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import facetwright.words.Site;

/** Where in a call the name of what is called stands: {@code rows} in {@code a.b(1).rows(2)}. */
final class Callee {
  private Callee() {}

  /**
   * The place of the called name.
   *
   * @param text the whole expression
   * @param start where it begins
   * @return {@code start} where the expression calls no member
   */
  static Site in(CharSequence text, Site start) {
    Reading reading = Reading.of(text.toString());
    int close = reading.tokens().size() - 1;
    boolean isCall = reading.is(close, ')') && reading.partner(close) >= 0;
    int name = isCall ? reading.back(reading.partner(close)) : -1;
    if (!reading.is(name, Kind.NAME) || !reading.isDot(reading.back(name))) {
      return start;
    }
    int at = reading.token(name).start();
    int line = reading.line(at);
    return new Site(
        start.line() + line - 1, reading.column(at) + (line == 1 ? start.column() - 1 : 0));
  }
}
