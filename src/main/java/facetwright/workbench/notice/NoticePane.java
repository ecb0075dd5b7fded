package facetwright.workbench.notice;

import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The notice that shows, as a card near the top of the window. Esc chooses what changes nothing.
 */
public final class NoticePane extends StackPane {
  private static final double WIDTH = 520;

  private final Notices notices;
  private Node before;

  public NoticePane(Notices notices) {
    this.notices = notices;
    getStylesheets().add(NoticePane.class.getResource("notice.css").toExternalForm());
    setPickOnBounds(false);
    setVisible(false);
    setAlignment(Pos.TOP_CENTER);
    notices.now().addListener((_, _, notice) -> show(notice));
    setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            notices.putAway();
            e.consume();
          }
        });
  }

  private void show(Notice notice) {
    if (notice == null) {
      setVisible(false);
      getChildren().clear();
      if (before != null && before.getScene() == getScene()) {
        before.requestFocus();
      }
      before = null;
      return;
    }
    if (!isVisible() && getScene() != null) {
      before = getScene().getFocusOwner();
    }
    Label title = new Label(notice.title());
    title.setWrapText(true);
    title.getStyleClass().add("notice-title");
    Label words = new Label(notice.words());
    words.setWrapText(true);
    words.setManaged(!notice.words().isEmpty());
    HBox choices = new HBox(8);
    choices.setAlignment(Pos.CENTER_RIGHT);
    for (Notice.Choice choice : notice.choices()) {
      Button button = new Button(choice.name());
      button.setOnAction(_ -> notices.choose(choice));
      button.setMinWidth(Region.USE_PREF_SIZE);
      choices.getChildren().add(button);
    }
    Button usual = (Button) choices.getChildren().getFirst();
    usual.getStyleClass().add("usual");
    usual.setDefaultButton(true);
    VBox card = new VBox(8, title, words, choices);
    card.getStyleClass().add("notice");
    card.setMaxSize(WIDTH, Region.USE_PREF_SIZE);
    card.setAccessibleText(notice.title() + ". " + notice.words());
    getChildren().setAll(card);
    setVisible(true);
    Platform.runLater(usual::requestFocus);
  }
}
