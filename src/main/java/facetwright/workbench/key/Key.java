package facetwright.workbench.key;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.event.EventHandler;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Every key of the window. Menus, tooltips, the page of keys and what keys do come from here. */
@SuppressWarnings("ImmutableEnumChecker") // Strokes are unmodifiable lists of values.
public enum Key {
  NEW(Where.MENU, "", "Shortcut+N"),
  OPEN(Where.MENU, "", "Shortcut+O"),
  SAVE(Where.MENU, "", "Shortcut+S"),
  SAVE_AS(Where.MENU, "", "Shortcut+Shift+S"),
  MAKE(Where.MENU, "", "Shortcut+P"),
  QUIT(Where.MENU, "", "Shortcut+Q"),
  UNDO(Where.MENU, "", "Shortcut+Z"),
  REDO(Where.MENU, "", "Shortcut+Shift+Z Shortcut+Y"),
  FIND(Where.MENU, "", "Shortcut+F"),
  REPLACE(Where.MENU, "", "Shortcut+H"),
  LINE(Where.MENU, "", "Shortcut+L Shortcut+G"),
  COMMENT(Where.MENU, "", "Shortcut+SLASH", "Shortcut+DIVIDE"),
  FACET_WORD(Where.MENU, "", "Shortcut+Shift+W"),
  AIM(Where.MENU, "", "Shortcut+T"),
  ROUND(Where.MENU, "", "Shortcut+R"),
  FIT_SHEET(Where.MENU, "", "Shortcut+Shift+R"),
  TO_SHELF(Where.MENU, "", "Shortcut+DIGIT1"),
  TO_TABLE(Where.MENU, "", "Shortcut+DIGIT2"),
  TO_PAPERS(Where.MENU, "", "Shortcut+DIGIT3"),
  NEXT_PART(Where.MENU, "", "F6"),
  FORMER_PART(Where.MENU, "", "Shift+F6"),
  INSIDE(Where.MENU, "", "Shortcut+I"),
  LAYERS(Where.MENU, "", "Shortcut+Shift+L"),
  NAMES(Where.MENU, "", "Shortcut+Shift+N"),
  GLUE(Where.MENU, "", "Shortcut+Shift+G"),
  MEASURE(Where.MENU, "", "Shortcut+M"),
  WHOLE(Where.MENU, "", "Shortcut+DIGIT0"),
  NEARER(Where.MENU, "", "Shortcut+EQUALS"),
  FARTHER(Where.MENU, "", "Shortcut+MINUS"),
  SWAP(Where.MENU, "", "Shortcut+Shift+F"),
  PLAY(Where.MENU, "", "Shortcut+Shift+P"),
  FOLD_SCRIPT(Where.MENU, "", "Shortcut+E"),
  DARK(Where.MENU, "", "Shortcut+D"),
  LARGER(Where.MENU, "", "Shortcut+Shift+EQUALS"),
  SMALLER(Where.MENU, "", "Shortcut+Shift+MINUS"),
  USUAL_TEXT(Where.MENU, "", "Shortcut+Shift+DIGIT0"),
  TOUR(Where.MENU, "", "Shift+F1"),
  KEYS(Where.MENU, "", "F1"),

  TABLE_MOVE(
      Where.TABLE,
      "Move the sheet; while measuring, go to a corner",
      "Any+LEFT Any+RIGHT Any+UP Any+DOWN"),
  TABLE_PANEL(Where.TABLE, "Select the next panel or the former", "PAGE_DOWN PAGE_UP"),
  TABLE_SCORE(Where.TABLE, "Select the next score or the former", "Shift+PAGE_DOWN Shift+PAGE_UP"),
  TABLE_GO(
      Where.TABLE,
      "Go to the line that made what is selected; while measuring, take the corner",
      "ENTER"),
  TABLE_NEARER(Where.TABLE, "Nearer", "Any+PLUS", "Any+ADD Any+EQUALS"),
  TABLE_FARTHER(Where.TABLE, "Farther", "MINUS", "Any+SUBTRACT Shift+MINUS"),
  TABLE_WHOLE(Where.TABLE, "Show the sheet whole", "F HOME", "DIGIT0"),
  TABLE_LET_GO(Where.TABLE, "Let go of what is selected; end measuring", "ESCAPE"),

  LENS_TURN(Where.LENS, "Turn the form", "Any+LEFT Any+RIGHT Any+UP Any+DOWN"),
  LENS_NEARER(Where.LENS, "Nearer", "Any+PLUS", "Any+ADD Any+EQUALS"),
  LENS_FARTHER(Where.LENS, "Farther", "MINUS", "Any+SUBTRACT Shift+MINUS"),
  LENS_STEP(Where.LENS, "Fold and unfold a step", "Any+PAGE_UP Any+PAGE_DOWN"),
  LENS_PLAY(Where.LENS, "Fold it from flat to made", "Any+SPACE"),
  LENS_USUAL(Where.LENS, "Look at it as at first", "Any+HOME"),

  DIAL_TURN(Where.FIELD, "Turn the dial a step", "Any+UP Any+DOWN"),
  DIAL_TAKE(Where.FIELD, "Take the value typed", "ENTER"),
  DIAL_LEAVE(Where.FIELD, "Leave the value as it was", "ESCAPE"),

  SLIDE(Where.SLIDER, "Turn the dial a step", "Any+LEFT Any+RIGHT Any+UP Any+DOWN"),
  ASK(Where.ASKING, "Find dials", "ENTER"),

  PAGE_READ(Where.READING, "Read on by a page less a line, or back", "PAGE_DOWN PAGE_UP"),
  TRAY_READ(Where.TRAY, "Read on in dials and findings", "PAGE_DOWN PAGE_UP"),

  OFFER(Where.SCRIPT, "Offer what fits here", "Shortcut+SPACE"),
  HINT(Where.SCRIPT, "Say what this call takes", "Shortcut+Shift+SPACE"),
  MEND(Where.SCRIPT, "Mend what is wrong, where a mend is known", "Alt+ENTER"),
  NEW_LINE(Where.SCRIPT, "Begin a line, as far in as this one", "Any+ENTER"),
  MOVE_LINES(
      Where.SCRIPT, "Move the lines selected", "Alt+DOWN Alt+UP", "Alt+Shift+DOWN Alt+Shift+UP"),
  TURN_NUMBER(
      Where.SCRIPT,
      "Turn the number at the caret, finer with Shift; so does Alt and drag",
      "Shortcut+Alt+Any+UP Shortcut+Alt+Any+DOWN"),
  TWICE(Where.SCRIPT, "Write the lines selected twice", "Shortcut+Shift+D"),
  INDENT(Where.SCRIPT, "Move the lines selected in or out", "TAB Shift+TAB"),
  LEAVE(
      Where.SCRIPT,
      "Leave the script for the next control or the former; F6 leaves it, too",
      "Shortcut+TAB Shortcut+Shift+TAB"),
  LINE_ENDS(
      Where.SCRIPT,
      "Go to the line's first word, and again to its beginning; to its end",
      "Any+HOME Any+END"),
  FIND_ON(Where.SCRIPT, "Find the next or the one before", "F3 Shift+F3"),
  SCRIPT_LARGER(Where.SCRIPT, "Write it larger", "Shortcut+EQUALS", "Shortcut+PLUS Shortcut+ADD"),
  SCRIPT_SMALLER(Where.SCRIPT, "Write it smaller", "Shortcut+MINUS", "Shortcut+SUBTRACT"),
  SCRIPT_USUAL(Where.SCRIPT, "Write it as usual", "Shortcut+DIGIT0", "Shortcut+NUMPAD0"),

  OFFERS_GO(Where.OFFERS, "Go to the next or the former", "DOWN UP"),
  OFFERS_LEAP(Where.OFFERS, "Go on by seven, or back", "PAGE_DOWN PAGE_UP"),
  OFFERS_TAKE(Where.OFFERS, "Write it", "ENTER TAB"),
  OFFERS_CLOSE(Where.OFFERS, "Close what is offered or told", "ESCAPE"),

  SEARCH(Where.SHELF, "Go to the search", "Shortcut+F"),
  CARDS(Where.SHELF, "Go from card to card", "Any+LEFT Any+RIGHT Any+UP Any+DOWN"),
  CARD_TAKE(Where.SHELF, "Open the design, or start from it", "ENTER SPACE"),

  TURN_PAGES(Where.PAPERS, "Turn the pages", "Any+PAGE_DOWN Any+PAGE_UP"),
  MORE_COPIES(Where.COPIES, "One more or one less", "Any+UP Any+DOWN"),
  PAGE_MOVE(Where.PAGE, "Move the page", "Any+LEFT Any+RIGHT Any+UP Any+DOWN"),
  PAGE_NEARER(Where.PAGE, "Nearer", "Any+PLUS", "Any+ADD Any+EQUALS"),
  PAGE_FARTHER(Where.PAGE, "Farther", "MINUS", "Any+SUBTRACT Shift+MINUS"),
  PAGE_WHOLE(Where.PAGE, "Show the page whole", "Any+HOME"),

  MENUS(
      Where.ANYWHERE,
      "Open a menu by its first letter; so do Alt and then the letter",
      "Alt+F Alt+E Alt+V Alt+H"),
  NEXT(Where.ANYWHERE, "Go to the next or former control", "TAB Shift+TAB"),
  PRESS(Where.ANYWHERE, "Press the button, card or note one is at", "ENTER SPACE"),
  AWAY(Where.ANYWHERE, "Put away what came up, or come back to the table", "Any+ESCAPE");

  private static final List<KeyCode> ARROWS =
      List.of(KeyCode.LEFT, KeyCode.RIGHT, KeyCode.UP, KeyCode.DOWN);

  private final Where where;
  private final String does;
  private final List<KeyCodeCombination> strokes;
  private final List<KeyCodeCombination> alike;

  Key(Where where, String does, String strokes) {
    this(where, does, strokes, "");
  }

  /**
   * @param does what it does; empty where a command says so
   * @param strokes those that are told, in an order that {@link #sense} gives meaning to
   * @param alike further ones that do the same, for keyboards that differ
   */
  Key(Where where, String does, String strokes, String alike) {
    this.where = where;
    this.does = does;
    this.strokes = Stroke.all(strokes);
    this.alike = Stroke.all(alike);
  }

  /** The key of a place that is pressed. */
  public static Optional<Key> of(Where where, KeyEvent e) {
    return Stream.of(values()).filter(k -> k.where == where && k.is(e)).findFirst();
  }

  /** Where it means something. */
  public Where where() {
    return where;
  }

  /** What it does, in a sentence without an end; empty where a command says so. */
  public String does() {
    return does;
  }

  /** Whether it is pressed. */
  public boolean is(KeyEvent e) {
    return strokes().anyMatch(s -> s.match(e));
  }

  /** Does this where it is pressed, and nobody else hears of it. */
  public EventHandler<KeyEvent> then(Runnable what) {
    return e -> {
      if (is(e)) {
        what.run();
        e.consume();
      }
    };
  }

  /** Every way to press it. */
  Stream<KeyCodeCombination> strokes() {
    return Stream.concat(strokes.stream(), alike.stream());
  }

  /** The stroke that a menu shows and takes. */
  public KeyCombination first() {
    return strokes.getFirst();
  }

  /** Whether it is pressed otherwise than a menu takes it. */
  public boolean isOther(KeyEvent e) {
    return is(e) && !first().match(e);
  }

  /** For a key with two ways: 1 for the first, -1 for the second. */
  public int sense(KeyEvent e) {
    return Stream.of(strokes, alike).anyMatch(s -> !s.isEmpty() && s.getFirst().match(e)) ? 1 : -1;
  }

  /** Where an arrow points: 1 to the right, -1 to the left, 0 for others. */
  public static int across(KeyEvent e) {
    return e.getCode() == KeyCode.RIGHT ? 1 : e.getCode() == KeyCode.LEFT ? -1 : 0;
  }

  /** Where an arrow points: 1 down, -1 up, 0 for others. */
  public static int down(KeyEvent e) {
    return e.getCode() == KeyCode.DOWN ? 1 : e.getCode() == KeyCode.UP ? -1 : 0;
  }

  /** As printed on the keys, such as "Ctrl+Shift+Z, Ctrl+Y". */
  public String text() {
    return strokes.stream().map(KeyCodeCombination::getCode).toList().equals(ARROWS)
        ? "Arrows"
        : strokes.stream().map(Stroke::printed).collect(Collectors.joining(", "));
  }

  /** The first of its ways alone, such as "Enter". */
  public String one() {
    return Stroke.printed(strokes.getFirst());
  }

  /** The second of its ways alone, such as "Page up". */
  public String other() {
    return Stroke.printed(strokes.get(1));
  }

  /** What a control does, and the first way of this key for it. */
  public String tipOne(String words) {
    return words + " (" + one() + ")";
  }

  /** What a control does, and this key for it. */
  public String tip(String words) {
    return words + " (" + text() + ")";
  }
}
