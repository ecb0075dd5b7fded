package facetwright.workbench.command;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the program is, its version, and whose work is in it under which licences. */
public final class AboutPage extends VBox {
  /**
   * Work of others.
   *
   * @param name what it is called
   * @param does what it is here for
   * @param licence as its own package says
   */
  record Work(String name, String does, String licence) {}

  static final List<Work> WORKS =
      List.of(
          new Work("OpenJFX", "the window", "GPL-2.0 with the Classpath exception"),
          new Work(
              "RichTextFX, Flowless, ReactFX, UndoFX, WellBehavedFX",
              "the script's editor",
              "BSD-2-Clause or GPL-2.0 with the Classpath exception"),
          new Work("GraalJS", "runs the scripts", "UPL-1.0 and MIT"),
          new Work("JTS Topology Suite", "geometry in the plane", "EPL-2.0 or EDL-1.0"),
          new Work("EJML", "linear algebra", "Apache-2.0"),
          new Work("PDFBox", "PDF pages", "Apache-2.0"),
          new Work("Jackson", "JSON", "Apache-2.0"),
          new Work("picocli", "the command line", "Apache-2.0"),
          new Work("The typefaces", "words on screen and paper", "SIL Open Font License 1.1"));

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
    for (Work work : WORKS) {
      words(work.name() + ": " + work.does() + ". " + work.licence() + ".", "");
    }
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
