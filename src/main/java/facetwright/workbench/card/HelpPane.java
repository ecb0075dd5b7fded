package facetwright.workbench.card;

import facetwright.script.api.Kinds;
import facetwright.workbench.card.text.Help;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What there is to say about a word, to be read. */
final class HelpPane extends VBox {
  /** How much of it is said. */
  enum Extent {
    /** All, with an example. */
    WHOLE,
    /** All but the example. */
    PLAIN,
    /** What it does and what it takes, without the ranges. */
    BRIEF,
    /** What it does. */
    LEAST
  }

  HelpPane() {
    getStyleClass().add("help");
  }

  /** Says all there is to say. */
  void show(Help help) {
    show(help, Extent.WHOLE);
  }

  void show(Help help, Extent extent) {
    getChildren().clear();
    add(help.title(), "help-title");
    boolean isFull = extent.compareTo(Extent.BRIEF) < 0;
    if (isFull) {
      add(help.belongs(), "quiet");
    }
    add(help.does(), "help-words");
    // What holds for many is said once, after them.
    boolean once = isFull && help.takes().stream().filter(HelpPane::isLength).count() > 1;
    if (extent != Extent.LEAST) {
      help.takes().forEach(row -> add(isFull ? row(help, row, once) : brief(row), "help-row"));
    }
    if (once) {
      add("A length is given" + Kinds.LENGTH_GIVEN.substring(1) + ".", "help-row");
    }
    if (!isFull) {
      add("More is under Help, Words of the script.", "quiet");
    } else if (!help.returns().isEmpty()) {
      add("Gives back " + help.returns() + ".", "help-words");
    }
    if (extent == Extent.WHOLE && !help.example().isEmpty()) {
      add(help.example(), "help-example");
    }
  }

  private static boolean isLength(Help.Row row) {
    return row.wanted().contains(Kinds.LENGTH_GIVEN);
  }

  private static String brief(Help.Row row) {
    String must = row.left().equals("must be given") ? "; must be given" : "";
    return row.name() + (row.does().isEmpty() ? "" : " – " + row.does()) + must + ".";
  }

  private static String row(Help help, Help.Row row, boolean once) {
    boolean alone = row.name().equals(help.title());
    String left =
        switch (row.left()) {
          case "must be given" -> "; must be given";
          case "none" -> "; may be left out";
          default -> "; left out: " + row.left();
        };
    String does = row.does().isEmpty() ? "" : row.does() + ": ";
    String wanted = once ? row.wanted().replace(Kinds.LENGTH_GIVEN, "") : row.wanted();
    return (alone ? "Takes " : row.name() + " – ") + does + wanted + left + ".";
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
