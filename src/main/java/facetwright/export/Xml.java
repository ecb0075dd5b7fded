package facetwright.export;

import facetwright.measure.Unbroken;

/** Text that a marked-up file may hold. */
final class Xml {
  private Xml() {}

  /** Leaves out what XML 1.0 can't hold (production 2, Char): controls and lone surrogates. */
  static String clean(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .filter(
            c ->
                c == '\t'
                    || c == '\n'
                    || (c >= 0x20 && c <= 0xD7FF)
                    || (c >= 0xE000 && c <= 0xFFFD)
                    || c >= 0x10000)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /** The same, its measures in one piece where lines end. */
  static String words(String text) {
    return Unbroken.measures(clean(text));
  }
}
