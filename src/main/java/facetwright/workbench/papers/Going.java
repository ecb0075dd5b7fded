package facetwright.workbench.papers;

import facetwright.workbench.look.Tip;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;

/**
 * How work on papers goes: what is being done, how much of its bound is used up, and a button that
 * ends it. It is seen only where work takes longer than a moment; when the bar is full, the work
 * ends by itself.
 */
final class Going extends HBox {
  /** So many milliseconds pass before it is seen, and between two looks. */
  private static final int MOMENT = 700;

  private static final int LOOK = 250;

  private final PaperWork work;
  private final Executor ui;
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = new Label();
  private int begun;

  /**
   * @param ui runs work on the window's thread
   */
  Going(PaperWork work, Executor ui) {
    super(10);
    this.work = work;
    this.ui = ui;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("strip");
    bar.setAccessibleText("How much of the time that a paper may take is used up");
    Button stop = new Button("Stop");
    stop.setTooltip(new Tip("End the drawing or saving under way; nothing half done is left"));
    stop.setOnAction(_ -> work.stop());
    getChildren().addAll(stop, bar, words);
    setVisible(false);
    managedProperty().bind(visibleProperty());
    work.going()
        .addListener(
            (_, _, on) -> {
              begun++;
              if (on) {
                after(MOMENT, begun);
              } else {
                setVisible(false);
              }
            });
  }

  private void after(int milliseconds, int beginning) {
    CompletableFuture.delayedExecutor(milliseconds, TimeUnit.MILLISECONDS, ui)
        .execute(() -> look(beginning));
  }

  private void look(int beginning) {
    if (beginning == begun && work.going().get()) {
      // Most papers take a hundredth of their bound: the bar begins fast, so that they are seen to
      // go.
      bar.setProgress(Math.sqrt(work.part()));
      String doing = work.doing();
      words.setText(
          (doing.isEmpty()
                  ? "Drawing"
                  : Character.toUpperCase(doing.charAt(0)) + doing.substring(1))
              + " … (it ends by itself when the bar is full, if not before)");
      setVisible(true);
      after(LOOK, beginning);
    }
  }
}
