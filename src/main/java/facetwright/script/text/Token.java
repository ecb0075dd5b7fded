package facetwright.script.text;

/**
 * A piece of a script that belongs together.
 *
 * @param start offset of its first character
 * @param end offset after its last
 */
public record Token(Kind kind, int start, int end) {

  /** What sort of piece. */
  public enum Kind {
    COMMENT,
    /** Text in quotes; a text with blanks to fill in is several, one between each two blanks. */
    TEXT,
    /** A regular expression with its flags. */
    PATTERN,
    NUMBER,
    /** A word of the language itself, such as {@code const}. */
    KEYWORD,
    NAME,
    /** A bracket or another sign, such as {@code =>}. */
    MARK
  }

  /** Whether the character at an offset is part of it. */
  boolean holds(int offset) {
    return start <= offset && offset < end;
  }

  public int length() {
    return end - start;
  }

  public Stretch stretch() {
    return new Stretch(start, end);
  }
}
