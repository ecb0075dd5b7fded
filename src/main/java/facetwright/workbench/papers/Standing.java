package facetwright.workbench.papers;

import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Fault;
import facetwright.workbench.key.Key;
import javafx.scene.control.Label;

/** Which state of the design the papers are of, in words over them where it is not the present. */
final class Standing extends Label {
  private static final String LAST =
      "These are the papers of the last good state, not of what is in the script now.";

  private final Desk desk;

  Standing(Desk desk) {
    this.desk = desk;
    getStyleClass().add("told");
    setMaxWidth(Double.MAX_VALUE);
    setWrapText(true);
    setMinHeight(USE_PREF_SIZE);
    managedProperty().bind(visibleProperty());
    desk.fault().addListener((_, _, _) -> show());
    desk.design().addListener((_, _, _) -> show());
    show();
  }

  private void show() {
    boolean amiss = desk.fault().get() != null;
    setText(!amiss ? "" : "✕ " + (desk.design().get() == null ? none() : LAST + " " + fault()));
    setVisible(amiss);
  }

  /** Why there are no papers at all. */
  String none() {
    return desk.fault().get() == null
        ? "The papers come with the design, which is being worked on …"
        : "There are no papers: there is no net of this design yet. " + fault();
  }

  /** Why these papers are not to leave the window now; empty where they may. */
  String hindrance() {
    if (desk.design().get() == null) {
      return none();
    }
    if (desk.fault().get() != null) {
      return LAST + " " + fault() + " Mend it, or take it back (" + Key.UNDO.text() + "), first.";
    }
    return desk.working().get()
        ? "The design has changed and is still being worked on. Try again in a moment."
        : "";
  }

  private String fault() {
    Fault fault = desk.fault().get();
    return fault.site().lead() + Sentence.of(fault.message());
  }
}
