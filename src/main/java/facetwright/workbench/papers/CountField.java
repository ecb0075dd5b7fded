package facetwright.workbench.papers;

import facetwright.workbench.look.Tip;
import java.util.OptionalInt;
import javafx.scene.control.TextField;

/** A whole number that is typed, kept in its range. */
final class CountField extends TextField {
  private final int least;
  private final int most;
  private final Runnable changed;
  private int count;

  /**
   * @param what is counted, for who does not see it
   * @param tip what it is for
   * @param changed told when it is another
   */
  CountField(String what, String tip, int count, int least, int most, Runnable changed) {
    super(Integer.toString(count));
    this.least = least;
    this.most = most;
    this.changed = changed;
    this.count = count;
    setPrefColumnCount(4);
    setAccessibleText(what);
    setTooltip(new Tip(tip));
    setOnAction(_ -> typed());
    focusedProperty()
        .addListener(
            (_, _, on) -> {
              if (!on) {
                typed();
              }
            });
  }

  int count() {
    return count;
  }

  /** As near to so many as the range allows. */
  void count(int wanted) {
    int before = count;
    count = Math.clamp(wanted, least, most);
    setText(Integer.toString(count));
    if (count != before) {
      changed.run();
    }
  }

  private void typed() {
    count(number(getText().strip()).orElse(count));
  }

  private static OptionalInt number(String text) {
    return text.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }
}
