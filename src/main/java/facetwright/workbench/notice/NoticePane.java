package facetwright.workbench.notice;

import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * The notice that shows, as a band across the window that covers nothing. Esc chooses what changes
 * nothing. One that is awaited takes the keyboard, and Enter chooses what is usual; one that comes
 * by itself leaves the keyboard where it is, and no key that is typed elsewhere answers it.
 */
public final class NoticePane extends HBox {
  private final Notices notices;
  private final Runnable otherwise;
  private final WayBack back = new WayBack();

  /**
   * @param otherwise gives the focus a place, where it cannot go back to where it was
   */
  public NoticePane(Notices notices, Runnable otherwise) {
    this.notices = notices;
    this.otherwise = otherwise;
    getStylesheets().add(NoticePane.class.getResource("notice.css").toExternalForm());
    getStyleClass().add("notice");
    setAlignment(Pos.CENTER_LEFT);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    // As high as its words need, however they break.
    setMinHeight(USE_PREF_SIZE);
    back.watch(this);
    notices.now().addListener((_, _, notice) -> show(notice));
    setOnKeyPressed(Key.AWAY.then(notices::putAway));
  }

  private void show(Notice notice) {
    if (notice == null) {
      back.go(this, otherwise);
      setVisible(false);
      getChildren().clear();
      return;
    }
    if (notice.isAwaited()) {
      back.remember(this);
    } else {
      back.go(this, otherwise);
    }
    Label title = new Label(notice.title());
    title.setWrapText(true);
    title.getStyleClass().add("notice-title");
    Label words = new Label(notice.words());
    words.setWrapText(true);
    words.setManaged(!notice.words().isEmpty());
    VBox said = new VBox(2, title, words);
    said.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox choices = new HBox(8);
    choices.setAlignment(Pos.CENTER_RIGHT);
    choices.setMinWidth(USE_PREF_SIZE);
    Notice.Choice none = notice.choices().getLast();
    for (Notice.Choice choice : notice.choices()) {
      Button button = new Button(choice.name());
      button.setOnAction(_ -> notices.choose(choice));
      boolean first = notice.isAwaited() && choices.getChildren().isEmpty();
      String key =
          choice.equals(none)
              ? Key.AWAY.tip("")
              : first ? " (" + Key.PRESS.one() + ")" : " (" + Key.NEXT_PART.text() + " leads here)";
      button.setTooltip(new Tip(notice.title() + " " + choice.name() + key));
      button.setMinWidth(USE_PREF_SIZE);
      button.setAccessibleText(choice.name() + ". " + notice.title() + ". " + notice.words());
      choices.getChildren().add(button);
    }
    getChildren().setAll(said, choices);
    setVisible(true);
    if (notice.isAwaited()) {
      Button usual = (Button) choices.getChildren().getFirst();
      usual.getStyleClass().add("usual");
      usual.setDefaultButton(true);
      Platform.runLater(usual::requestFocus);
    }
  }
}
