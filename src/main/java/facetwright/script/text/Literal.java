package facetwright.script.text;

/** How far numbers, names, texts and regular expressions reach: ECMA-262, 12.7 and 12.9. */
final class Literal {
  /** Of an escape in braces; none of the language has more than six that count. */
  private static final int MOST_DIGITS = 12;

  private Literal() {}

  /** Where a number ends that begins at an offset: section 12.9.3. */
  static int number(String text, int start) {
    if (text.charAt(start) == '0') {
      int radix =
          switch (Letters.at(text, start + 1)) {
            case 'x', 'X' -> 16;
            case 'o', 'O' -> 8;
            case 'b', 'B' -> 2;
            default -> 10;
          };
      if (radix != 10 && isDigit(Letters.at(text, start + 2), radix)) {
        return big(text, digits(text, start + 2, radix));
      }
    }
    int whole = digits(text, start, 10);
    boolean isWhole = Letters.at(text, whole) != '.';
    int end = isWhole ? whole : digits(text, whole + 1, 10);
    char e = Letters.at(text, end);
    if (e == 'e' || e == 'E') {
      char sign = Letters.at(text, end + 1);
      int power = sign == '+' || sign == '-' ? end + 2 : end + 1;
      if (Letters.isDigit(Letters.at(text, power))) {
        return digits(text, power, 10);
      }
    }
    return isWhole ? big(text, end) : end;
  }

  private static int digits(String text, int from, int radix) {
    int i = from;
    while (isDigit(Letters.at(text, i), radix) || (Letters.at(text, i) == '_' && i > from)) {
      i++;
    }
    return i;
  }

  private static boolean isDigit(char c, int radix) {
    return c < 128 && Character.digit(c, radix) >= 0;
  }

  /** A whole number with an n behind it is a big one. */
  private static int big(String text, int end) {
    return Letters.at(text, end) == 'n' && !Letters.isNamePart(Letters.at(text, end + 1))
        ? end + 1
        : end;
  }

  /** Where a name ends that begins at an offset, escapes included; the offset where none does. */
  static int name(String text, int start) {
    int i = text.charAt(start) == '#' ? start + 1 : start;
    int first = i;
    while (i < text.length()) {
      int c = text.codePointAt(i);
      int escape = c == '\\' ? escape(text, i) : i;
      if (escape > i) {
        i = escape;
      } else if (i == first ? Letters.isNameStart(c) : Letters.isNamePart(c)) {
        i += Character.charCount(c);
      } else {
        break;
      }
    }
    return i == first ? start : i;
  }

  /** Where an escape for one letter ends, such as {@code \}{@code u0061}; the offset for none. */
  private static int escape(String text, int at) {
    if (Letters.at(text, at + 1) != 'u') {
      return at;
    }
    boolean braced = Letters.at(text, at + 2) == '{';
    int from = braced ? at + 3 : at + 2;
    int i = from;
    while (i < from + (braced ? MOST_DIGITS : 4) && isDigit(Letters.at(text, i), 16)) {
      i++;
    }
    boolean whole = braced ? i > from && Letters.at(text, i) == '}' : i == from + 4;
    return whole ? (braced ? i + 1 : i) : at;
  }

  /** Where a text in quotes ends, or the line that it is left open on: section 12.9.4. */
  static int quoted(String text, int start) {
    char quote = text.charAt(start);
    for (int i = start + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i += text.startsWith("\r\n", i + 1) ? 2 : 1;
      } else if (c == quote) {
        return i + 1;
      } else if (c == '\n' || c == '\r') {
        return i;
      }
    }
    return text.length();
  }

  /** Where a piece of a template ends, with its last quote or the opening of a blank: 12.9.6. */
  static int template(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == '`') {
        return i + 1;
      } else if (c == '$' && Letters.at(text, i + 1) == '{') {
        return i + 2;
      }
    }
    return text.length();
  }

  /**
   * Where a regular expression ends, flags included, or the line that it is left open on: section
   * 12.9.5.
   */
  static int pattern(String text, int start) {
    boolean inClass = false;
    int line = Letters.lineEnd(text, start);
    for (int i = start + 1; i < line; i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == '[') {
        inClass = true;
      } else if (c == ']') {
        inClass = false;
      } else if (c == '/' && !inClass) {
        int end = i + 1;
        while (end < text.length() && Letters.isNamePart(text.codePointAt(end))) {
          end += Character.charCount(text.codePointAt(end));
        }
        return end;
      }
    }
    return line;
  }

  /** What a text says whose characters these are, without its quotes: section 12.9.4.2. */
  static String said(String inside) {
    if (inside.indexOf('\\') < 0) {
      return inside;
    }
    StringBuilder said = new StringBuilder();
    for (int i = 0; i < inside.length(); i++) {
      char c = inside.charAt(i);
      if (c != '\\' || i + 1 == inside.length()) {
        said.append(c);
        continue;
      }
      int code = escape(inside, i);
      int hex = inside.charAt(i + 1) == 'x' ? hex(inside, i + 2, i + 4) : -1;
      if (code > i) {
        String digits = inside.substring(i + 2, code).replace("{", "").replace("}", "");
        said.appendCodePoint((int) Math.min(Long.parseLong(digits, 16), Character.MAX_CODE_POINT));
        i = code - 1;
      } else if (hex >= 0) {
        said.append((char) hex);
        i += 3;
      } else {
        i++;
        said.append(single(inside.charAt(i)));
        i += inside.startsWith("\r\n", i) ? 1 : 0;
      }
    }
    return said.toString();
  }

  private static int hex(String text, int from, int to) {
    boolean isHex =
        to <= text.length() && isDigit(text.charAt(from), 16) && isDigit(text.charAt(to - 1), 16);
    return isHex ? Integer.parseInt(text.substring(from, to), 16) : -1;
  }

  private static String single(char c) {
    return switch (c) {
      case 'n' -> "\n";
      case 't' -> "\t";
      case 'r' -> "\r";
      case 'b' -> "\b";
      case 'f' -> "\f";
      case 'v' -> "\u000B";
      case '0' -> "\0";
      default -> Letters.isLineEnd(c) ? "" : String.valueOf(c);
    };
  }
}
