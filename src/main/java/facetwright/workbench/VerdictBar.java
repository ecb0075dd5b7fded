package facetwright.workbench;

import facetwright.check.Summary;
import facetwright.measure.Unbroken;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Fault;
import facetwright.workbench.look.Tip;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What the design comes to, in a sentence; or what is wrong with the script, and what to do. It is
 * two lines high whatever it says, so that the net below stays; more is told by its tooltip, and of
 * a fault at the foot of the script.
 */
final class VerdictBar extends HBox {
  private final Desk desk;
  private final Label title = new Label();
  private final Label sentence = new Label();
  private final Label remedy = new Label();
  private final Tip whole = new Tip("");
  private String tinted = "";

  VerdictBar(Desk desk) {
    this.desk = desk;
    getStyleClass().add("verdict");
    setAlignment(Pos.CENTER_LEFT);
    title.getStyleClass().add("title");
    sentence.setWrapText(true);
    sentence.getStyleClass().add("sentence");
    remedy.setWrapText(true);
    remedy.getStyleClass().add("quiet");
    VBox words = new VBox(sentence, remedy);
    words.getStyleClass().add("words");
    Tooltip.install(words, whole);
    words.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(words, Priority.ALWAYS);
    title.setMinWidth(USE_PREF_SIZE);
    getChildren().addAll(title, words);
    desk.design().addListener((_, _, _) -> show());
    desk.fault().addListener((_, _, _) -> show());
    desk.working().addListener((_, _, _) -> show());
    show();
  }

  private void show() {
    Design design = desk.design().get();
    Fault fault = desk.fault().get();
    title.setText(design == null ? "Facetwright" : design.title());
    if (fault != null) {
      tint("trouble");
      String where = fault.site().lead();
      sentence.setText(Unbroken.measures("✕ " + where + ended(fault.message())));
      String stays =
          design == null ? " There is no net yet." : " The last good net stays on the table.";
      String help = fault.remedy().isEmpty() ? "" : ended(fault.remedy());
      remedy.setText(Unbroken.measures((help + stays).strip()));
    } else if (design == null) {
      tint("");
      sentence.setText(desk.working().get() ? "Working on the design …" : "");
      remedy.setText("");
    } else {
      tint(design.isSound() ? "sound" : "trouble");
      sentence.setText(
          Unbroken.measures(
              (design.isSound() ? "" : "✕ ")
                  + Summary.of(design.laid(), design.folded(), design.findings(), design.unit())));
      remedy.setText("");
    }
    remedy.setManaged(!remedy.getText().isEmpty());
    whole.setText((sentence.getText() + "\n" + remedy.getText()).strip());
  }

  /** A bar whose classes change is styled and painted anew, so they are left where they stand. */
  private void tint(String tint) {
    if (!tint.equals(tinted)) {
      getStyleClass().remove(tinted);
      if (!tint.isEmpty()) {
        getStyleClass().add(tint);
      }
      tinted = tint;
    }
  }

  /** The words with a full stop, where they do not end in a sign already. */
  private static String ended(String words) {
    return words.matches("(?s).*[.?!…]") ? words : words + ".";
  }
}
