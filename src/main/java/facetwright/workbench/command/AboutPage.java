package facetwright.workbench.command;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the program is, its version, and what work of others is in it under which licences. */
public final class AboutPage extends VBox {
  public AboutPage() {
    getStyleClass().add("about");
    String version = AboutPage.class.getPackage().getImplementationVersion();
    words(
        "Version "
            + (version == null ? "(not packaged)" : version)
            + ", Java "
            + Runtime.version().feature()
            + ".",
        "");
    words(
        "A workbench for scored-and-folded cardstock forms. It needs no network and no account;"
            + " what you make is yours.",
        "");
    words(
        "Knives are sharp: cut away from yourself, on a mat. Battery lights only in paper"
            + " lanterns.",
        "");
    words("Work of others that is in it", "keys-head");
    Shipped.byLicences().forEach((licences, what) -> words(licences + ": " + what + ".", ""));
    words("SIL Open Font License 1.1: the typefaces on screen and paper.", "");
  }

  private void words(String text, String style) {
    Label label = new Label(text);
    label.setWrapText(true);
    if (!style.isEmpty()) {
      label.getStyleClass().add(style);
    }
    getChildren().add(label);
  }
}
