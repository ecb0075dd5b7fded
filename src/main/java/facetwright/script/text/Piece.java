package facetwright.script.text;

/**
 * A file that a script uses, as it follows the script in one text.
 *
 * @param name of the file
 * @param state how it comes to stand there
 * @param text what the file holds; where it is lacking, why
 * @param line of the whole text that the file's first line is
 */
public record Piece(String name, State state, String text, int line) {

  /** How a file comes to follow a script. */
  public enum State {
    /** It was put there to be handed on, and is a part of the script's own text. */
    GATHERED("gathered in"),
    /** It was read from its file just now. */
    READ("from file"),
    /** The script asks for it, and it can't be had. */
    LACKING("not there");

    private final String said;

    State(String said) {
      this.said = said;
    }

    String said() {
      return said;
    }
  }

  /** One that stands nowhere yet. */
  public Piece(String name, State state, String text) {
    this(name, state, text, 0);
  }
}
