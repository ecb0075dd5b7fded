package facetwright.workbench.command;

import java.io.File;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the program is, its version, and whose work is in it under which licences. */
public final class AboutPage extends VBox {
  /**
   * Work of others.
   *
   * @param name what it is called
   * @param jar how its file begins; empty for none
   * @param does what it is here for
   * @param licence as its own package says
   */
  record Work(String name, String jar, String does, String licence) {}

  static final List<Work> WORKS =
      List.of(
          new Work(
              "OpenJFX", "javafx-graphics", "the window", "GPL-2.0 with the Classpath exception"),
          new Work(
              "RichTextFX, Flowless, ReactFX, UndoFX, WellBehavedFX",
              "richtextfx",
              "the script's editor",
              "BSD-2-Clause or GPL-2.0 with the Classpath exception"),
          new Work("GraalJS", "js-language", "runs the scripts", "UPL-1.0 and MIT"),
          new Work("JTS Topology Suite", "jts-core", "geometry in the plane", "EPL-2.0 or EDL-1.0"),
          new Work("PDFBox", "pdfbox", "PDF pages", "Apache-2.0"),
          new Work("Jackson", "jackson-core", "JSON", "Apache-2.0"),
          new Work("picocli", "picocli", "the command line", "Apache-2.0"),
          new Work("The typefaces", "", "words on screen and paper", "SIL Open Font License 1.1"));

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
      words(
          work.name() + version(work.jar()) + ": " + work.does() + ". " + work.licence() + ".", "");
    }
  }

  /** The version that a file of the class path carries in its name, after a blank; or nothing. */
  private static String version(String jar) {
    return jar.isEmpty()
        ? ""
        : version(jar, System.getProperty("java.class.path").split(File.pathSeparator));
  }

  static String version(String jar, String... classPath) {
    Pattern name =
        Pattern.compile(Pattern.quote(jar) + "-(\\d[\\w.]*?)(-linux|-win|-mac.*)?\\.jar");
    for (String part : classPath) {
      Matcher m = name.matcher(part.substring(part.lastIndexOf(File.separatorChar) + 1));
      if (m.matches()) {
        return " " + m.group(1);
      }
    }
    return "";
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
