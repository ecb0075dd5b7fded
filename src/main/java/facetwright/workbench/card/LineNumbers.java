package facetwright.workbench.card;

import java.util.IdentityHashMap;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import org.fxmisc.richtext.CodeArea;

/**
 * The numbers of lines that have nothing else in the margin. A line keeps its label when its number
 * changes: a new line at the head would else have all that are in view made, styled and laid out
 * anew.
 */
final class LineNumbers {
  /** So many are kept before those out of view are let go. */
  private static final int MOST = 400;

  private final CodeArea area;
  private final IdentityHashMap<Object, Kept> kept = new IdentityHashMap<>();

  /**
   * @param script the text that the label was last asked for in
   * @param line the line it was for then
   */
  private record Kept(Label label, Object script, int line) {}

  LineNumbers(CodeArea area) {
    this.area = area;
  }

  /** The label of a line, counted from 0, that says this. */
  @SuppressWarnings("ReferenceEquality") // To compare texts would read them.
  Label of(int line, String words) {
    Object paragraph = area.getParagraph(line);
    Object script = area.getContent().snapshot();
    Kept old = kept.get(paragraph);
    // A line may stand in a text twice: each has a label of its own.
    boolean taken = old != null && script == old.script && line != old.line;
    Label label = old == null || taken ? made() : old.label;
    label.setText(words);
    if (kept.size() > MOST) {
      kept.values().removeIf(k -> k.label.getScene() == null);
    }
    kept.put(paragraph, new Kept(label, script, line));
    return label;
  }

  private static Label made() {
    Label label = new Label();
    label.getStyleClass().addAll("line-number", "line-number-alone");
    label.setMaxHeight(Double.MAX_VALUE);
    label.setAlignment(Pos.TOP_RIGHT);
    return label;
  }
}
