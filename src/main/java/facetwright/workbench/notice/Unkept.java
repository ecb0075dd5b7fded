package facetwright.workbench.notice;

import facetwright.words.Sentence;
import facetwright.workbench.look.Tip;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * Says, as long as it is so, that unsaved work is not kept in case the program ends. It can't be
 * put away, and takes the keyboard from nobody.
 */
public final class Unkept extends HBox {
  private final Label why = new Label();
  private final Button again = new Button("Try again");

  /**
   * @param saveAs lets the user save the work somewhere else
   */
  public Unkept(Runnable saveAs) {
    getStylesheets().add(NoticePane.class.getResource("notice.css").toExternalForm());
    getStyleClass().addAll("notice", "unkept");
    setAlignment(Pos.CENTER_LEFT);
    setMinHeight(USE_PREF_SIZE);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    Label title = new Label("What you have not saved is not being kept");
    title.setWrapText(true);
    title.getStyleClass().add("notice-title");
    why.setWrapText(true);
    VBox said = new VBox(2, title, why);
    said.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(said, Priority.ALWAYS);
    Button save = new Button("Save as …");
    save.setOnAction(_ -> saveAs.run());
    save.setTooltip(new Tip("Save the script where there is room"));
    again.setTooltip(new Tip("Try to keep it once more; it is tried by itself, too"));
    HBox choices = new HBox(8, save, again);
    choices.setAlignment(Pos.CENTER_RIGHT);
    choices.setMinWidth(USE_PREF_SIZE);
    save.setMinWidth(USE_PREF_SIZE);
    again.setMinWidth(USE_PREF_SIZE);
    getChildren().setAll(said, choices);
  }

  /** What tries once more to keep it. */
  public void tryAgainBy(Runnable keep) {
    again.setOnAction(_ -> keep.run());
  }

  /**
   * Says why work is not kept, or no more that it is not.
   *
   * @param trouble empty where all is kept
   */
  public void show(Optional<String> trouble) {
    why.setText(
        trouble
            .map(
                t ->
                    Sentence.of(t)
                        + " If the program or the machine stopped now, it would be lost.")
            .orElse(""));
    setVisible(trouble.isPresent());
  }
}
