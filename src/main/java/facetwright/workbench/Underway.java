package facetwright.workbench;

import facetwright.words.Count;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Tip;
import java.time.Duration;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/**
 * What is being worked on, once it takes longer than one waits unasked, with a button that stops
 * it. The last good net stays meanwhile.
 */
final class Underway extends HBox {
  /** What takes less is not spoken of: it would only flicker. */
  static final Duration UNASKED = Duration.ofMillis(700);

  static final Duration EACH = Duration.ofSeconds(1);

  private final Desk desk;
  private final Later later;
  private final Label words = new Label();
  private final Button stop = new Button("Stop");
  private long run;

  Underway(Desk desk, Later later) {
    super(8);
    this.desk = desk;
    this.later = later;
    getStyleClass().add("underway");
    setAlignment(Pos.CENTER_RIGHT);
    setMinWidth(USE_PREF_SIZE);
    stop.getStyleClass().add("plain");
    stop.setTooltip(new Tip("Stop working on it; the net on the table stays"));
    stop.setOnAction(_ -> desk.stop());
    getChildren().addAll(words, stop);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    desk.working().addListener((_, _, on) -> turned(on));
    desk.heard().addListener((_, _, _) -> turned(desk.working().get()));
    turned(desk.working().get());
  }

  /** Each answer begins a new wait: while pictures come, nothing stands still. */
  private void turned(boolean on) {
    run++;
    if (on) {
      tell(run, 0);
    } else {
      setVisible(false);
    }
  }

  private void tell(long which, int seconds) {
    later.after(
        seconds == 0 ? UNASKED : EACH,
        () -> {
          if (which == run) {
            words.setText(
                "Making the net of "
                    + desk.shownName()
                    + " …"
                    + (seconds == 0 ? "" : " " + Count.of(seconds, "second")));
            setVisible(true);
            tell(which, seconds + 1);
          }
        });
  }
}
