package facetwright.script.text;

/** Sorts of characters, as ECMA-262 has them. */
final class Letters {
  private Letters() {}

  /** White space, section 12.2, and line ends. */
  static boolean isSpace(char c) {
    return switch (c) {
      case '\t', '\u000B', '\f', ' ', '\u00A0', '\uFEFF' -> true;
      default -> isLineEnd(c) || (c > 127 && Character.getType(c) == Character.SPACE_SEPARATOR);
    };
  }

  /** Section 12.3. */
  static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u2028' || c == '\u2029';
  }

  /** IdentifierStart of section 12.7, but the escapes. */
  static boolean isNameStart(int c) {
    return c < 128
        ? (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '$'
        : Character.isUnicodeIdentifierStart(c);
  }

  /** IdentifierPart of section 12.7, but the escapes; the last two join and part letters. */
  static boolean isNamePart(int c) {
    return c < 128
        ? isNameStart(c) || isDigit(c)
        : (Character.isUnicodeIdentifierPart(c) && !Character.isIdentifierIgnorable(c))
            || c == '\u200C'
            || c == '\u200D';
  }

  static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  /** Where the line of an offset ends. */
  static int lineEnd(String text, int from) {
    int i = from;
    while (i < text.length() && !isLineEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /** The character at an offset; NUL behind the last. */
  static char at(String text, int offset) {
    return offset < text.length() ? text.charAt(offset) : '\0';
  }
}
