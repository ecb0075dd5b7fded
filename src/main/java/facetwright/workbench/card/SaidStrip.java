package facetwright.workbench.card;

import facetwright.words.Count;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Fault;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;

/**
 * What the script says, at the card's foot, to be read and copied: where it failed, what it said
 * until then; nothing where it says nothing.
 */
final class SaidStrip extends VBox {
  /** So many lines are seen at once; more are scrolled to. */
  private static final int SEEN = 4;

  /** So many are shown at all. */
  static final int MOST = 200;

  private final TextArea text = new TextArea();
  private List<String> shown = List.of();

  SaidStrip(Desk desk) {
    getStyleClass().add("said");
    Label title = new Label("The script says");
    title.getStyleClass().add("said-title");
    title.setLabelFor(text);
    text.setEditable(false);
    text.setWrapText(true);
    text.setAccessibleText("What the script says");
    getChildren().addAll(title, text);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    desk.heard().addListener((_, _, _) -> show(said(desk)));
  }

  /** What the script said, be it before it failed. */
  private static List<String> said(Desk desk) {
    Fault wrong = desk.fault().get();
    if (wrong != null) {
      return wrong.said();
    }
    return desk.design().get() == null ? List.of() : desk.design().get().said();
  }

  private void show(List<String> said) {
    if (said.equals(shown)) {
      return;
    }
    shown = said;
    setVisible(!said.isEmpty());
    String words = words(said);
    text.setText(words);
    text.setPrefRowCount((int) Math.min(SEEN, words.lines().count()));
  }

  /** The lines one below the other, with a word on how many are left out. */
  static String words(List<String> said) {
    String words = String.join("\n", said.subList(0, Math.min(MOST, said.size())));
    int left = said.size() - MOST;
    return left <= 0
        ? words
        : words + "\n… and " + Count.of(left, "more line") + ", which check prints";
  }
}
