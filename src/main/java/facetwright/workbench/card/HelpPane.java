package facetwright.workbench.card;

import facetwright.workbench.card.text.Help;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What there is to say about a word, to be read. */
final class HelpPane extends VBox {
  HelpPane() {
    getStyleClass().add("help");
  }

  void show(Help help) {
    getChildren().clear();
    add(help.title(), "help-title");
    add(help.belongs(), "quiet");
    add(help.does(), "help-words");
    for (Help.Row row : help.takes()) {
      boolean alone = row.name().equals(help.title());
      String left =
          switch (row.left()) {
            case "must be given" -> "; must be given";
            case "none" -> "; may be left out";
            default -> "; left out: " + row.left();
          };
      String does = row.does().isEmpty() ? "" : row.does() + ": ";
      add((alone ? "Takes " : row.name() + " – ") + does + row.wanted() + left + ".", "help-row");
    }
    if (!help.returns().isEmpty()) {
      add("Gives back " + help.returns() + ".", "help-words");
    }
    if (!help.example().isEmpty()) {
      add(help.example(), "help-example");
    }
  }

  private void add(String words, String style) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    label.getStyleClass().add(style);
    getChildren().add(label);
  }
}
