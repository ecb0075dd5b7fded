package facetwright.script.sandbox;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Mend;
import facetwright.words.PlainText;
import facetwright.words.Site;
import java.util.List;

/** Why a script came to nothing: what is wrong, in a maker's words, where, and what to do. */
public final class ScriptException extends Exception {
  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final Message told;
  private final Message toDo;
  private final Site site;
  private final String remedy;
  private final List<Mend> mends;
  private final boolean stillRunning;
  private final List<String> said;

  /** What sort of thing went wrong. */
  public enum Kind {
    /** The text is not JavaScript. */
    SYNTAX,
    /** It uses a name that nothing has. */
    UNKNOWN_NAME,
    /** It asks a function for something it can't do. */
    BAD_VALUE,
    /** It threw an error, or used a value in a way the language does not allow. */
    THROWN,
    /** It took too long. */
    TIME,
    /** It asked for too much memory. */
    MEMORY,
    /** Its functions called each other without end. */
    RECURSION,
    /** It was told to stop. */
    STOPPED,
    /** The program failed, not the script. */
    INTERNAL
  }

  /**
   * @param message what is wrong
   * @param site where in the script; {@link Site#NONE} when that is not known
   * @param remedy what to do, or empty
   */
  ScriptException(Kind kind, String message, Site site, String remedy) {
    this(kind, message, site, remedy, List.of());
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  ScriptException(Kind kind, String message, Site site, String remedy, List<Mend> mends) {
    this(kind, message, site, remedy, mends, false);
  }

  ScriptException(
      Kind kind, String message, Site site, String remedy, List<Mend> mends, boolean stillRunning) {
    this(
        kind,
        Message.text(message),
        Message.text(remedy),
        site,
        mends,
        stillRunning,
        Unit.MM,
        List.of());
  }

  /** A call that was refused, in words with values. */
  ScriptException(Message told, Site site, Message toDo, List<Mend> mends) {
    this(Kind.BAD_VALUE, told, toDo, site, mends, false, Unit.MM, List.of());
  }

  private ScriptException(
      Kind kind,
      Message told,
      Message toDo,
      Site site,
      List<Mend> mends,
      boolean stillRunning,
      Unit unit,
      List<String> said) {
    super(PlainText.message(told.text(unit)));
    this.kind = kind;
    this.told = told;
    this.toDo = toDo;
    this.site = site;
    this.remedy = PlainText.message(toDo.text(unit));
    // A mend changes the script's own text.
    this.mends = site.isInFile() ? List.of() : List.copyOf(mends);
    this.stillRunning = stillRunning;
    this.said = List.copyOf(said);
  }

  /**
   * The same for who reads this unit.
   *
   * @param before what the script said before it failed
   */
  public ScriptException in(Unit unit, List<String> before) {
    ScriptException other =
        new ScriptException(kind, told, toDo, site, mends, stillRunning, unit, before);
    other.setStackTrace(getStackTrace());
    if (getCause() != null) {
      other.initCause(getCause());
    }
    return other;
  }

  public Kind kind() {
    return kind;
  }

  public Site site() {
    return site;
  }

  /** From 1; 0 when unknown. */
  public int line() {
    return site.line();
  }

  /** From 1; 0 when unknown. */
  public int column() {
    return site.column();
  }

  /** What to do about it, or empty. */
  public String remedy() {
    return remedy;
  }

  /** What the script said before it failed, in order. */
  public List<String> said() {
    return said;
  }

  /** Changes of the script's text that would put it right; often none. */
  public List<Mend> mends() {
    return mends;
  }

  /**
   * Whether the script could not be ended and still uses up this process. Whoever gets such an
   * exception should pass the message on and then end the process with {@link Runtime#halt}.
   */
  public boolean isStillRunning() {
    return stillRunning;
  }
}
