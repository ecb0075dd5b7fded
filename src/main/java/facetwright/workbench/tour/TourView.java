package facetwright.workbench.tour;

import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.value.ChangeListener;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The note of the step one is at, beside its control, which is framed. */
public final class TourView extends Pane {
  /** How wide a note is, in times its lettering. */
  private static final double EMS = 24.3;

  private static final double FRAME = 3;
  private static final double OFF = 12;

  private final Runnable ended;
  private final Runnable otherwise;
  private final WayBack way = new WayBack();
  private final Region frame = new Region();
  private final VBox note = new VBox(8);
  private final Label title = new Label();
  private final Label words = new Label();
  private final Label keys = new Label();
  private final Label did = new Label("✓ Done");
  private final Button back = new Button("Back");
  private final Button on = new Button("Next");
  private final InvalidationListener moved = _ -> requestLayout();
  private final ChangeListener<Boolean> done = (_, _, now) -> done(now);
  private List<TourStep> steps = List.of();
  private int at = -1;

  /**
   * @param ended told when the tour is over, at its end or before
   * @param otherwise gives the focus a place, where it cannot go back to where it was
   */
  public TourView(Runnable ended, Runnable otherwise) {
    this.ended = ended;
    this.otherwise = otherwise;
    getStylesheets().add(TourView.class.getResource("tour.css").toExternalForm());
    setPickOnBounds(false);
    setVisible(false);
    frame.getStyleClass().add("tour-frame");
    frame.setMouseTransparent(true);
    frame.setManaged(false);
    title.getStyleClass().add("tour-title");
    title.setWrapText(true);
    words.setWrapText(true);
    keys.setWrapText(true);
    keys.getStyleClass().add("quiet");
    did.getStyleClass().add("tour-done");
    back.setOnAction(_ -> go(at - 1));
    on.setOnAction(_ -> go(at + 1));
    back.setTooltip(new Tip("The step before"));
    on.setTooltip(new Tip("Go on, whether you did it or not"));
    Button end = new Button("End the tour");
    end.setTooltip(new Tip(Key.AWAY.tip("Put the tour away") + "; it is under Help at any time"));
    end.getStyleClass().add("plain");
    end.setOnAction(_ -> end());
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox buttons = new HBox(8, end, space, back, on);
    buttons.setAlignment(Pos.CENTER_LEFT);
    note.getStyleClass().add("tour-note");
    note.getChildren().addAll(title, words, keys, did, buttons);
    note.setManaged(false);
    getChildren().addAll(frame, note);
    note.addEventHandler(javafx.scene.input.KeyEvent.KEY_PRESSED, Key.AWAY.then(this::end));
  }

  /** Begins the tour. */
  public void start(List<TourStep> tour) {
    if (isRunning()) {
      leave();
    }
    way.remember(this);
    steps = List.copyOf(tour);
    at = -1;
    go(0);
  }

  public boolean isRunning() {
    return at >= 0;
  }

  /** The control the step is about; empty when there is no tour. */
  public Optional<Node> beside() {
    return isRunning() ? Optional.of(steps.get(at).beside()) : Optional.empty();
  }

  /** Ends the tour where it stands. */
  public void end() {
    if (isRunning()) {
      leave();
      at = -1;
      way.go(this, otherwise);
      setVisible(false);
      ended.run();
    }
  }

  private void go(int to) {
    if (to >= steps.size()) {
      end();
      return;
    }
    if (isRunning()) {
      leave();
    }
    at = Math.max(0, to);
    TourStep step = steps.get(at);
    step.enter().run();
    title.setText((at + 1) + " of " + steps.size() + ": " + step.title());
    words.setText(step.words());
    keys.setText(step.keys());
    back.setDisable(at == 0);
    on.setText(at == steps.size() - 1 ? "Finish" : "Next");
    step.done().addListener(done);
    done(step.done().getValue());
    step.beside().localToSceneTransformProperty().addListener(moved);
    step.beside().layoutBoundsProperty().addListener(moved);
    for (Node n = step.beside(); n != null; n = n.getParent()) {
      n.visibleProperty().addListener(moved);
    }
    setVisible(true);
    toFront();
    requestLayout();
    on.requestFocus();
  }

  private void leave() {
    TourStep step = steps.get(at);
    step.done().removeListener(done);
    step.beside().localToSceneTransformProperty().removeListener(moved);
    step.beside().layoutBoundsProperty().removeListener(moved);
    for (Node n = step.beside(); n != null; n = n.getParent()) {
      n.visibleProperty().removeListener(moved);
    }
    step.leave().run();
  }

  private void done(boolean now) {
    did.setVisible(now);
    did.setManaged(now);
    on.getStyleClass().remove("usual");
    if (now) {
      on.getStyleClass().add("usual");
    }
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    if (!isRunning()) {
      return;
    }
    Node beside = steps.get(at).beside();
    boolean seen = isSeen(beside);
    frame.setVisible(seen);
    double wide = Math.rint(Math.min(EMS * words.getFont().getSize(), getWidth() - 2 * OFF));
    double high = note.prefHeight(wide);
    if (!seen) {
      note.resizeRelocate(getWidth() - wide - OFF, getHeight() - high - OFF, wide, high);
      return;
    }
    Bounds control = sceneToLocal(beside.localToScene(beside.getLayoutBounds()));
    // Whole in the window, even round what lies at its edge.
    double left = Math.max(0, control.getMinX() - FRAME);
    double top = Math.max(0, control.getMinY() - FRAME);
    frame.resizeRelocate(
        left,
        top,
        Math.min(getWidth(), control.getMaxX() + FRAME) - left,
        Math.min(getHeight(), control.getMaxY() + FRAME) - top);
    Bounds place = place(control, wide, high, getWidth(), getHeight());
    note.resizeRelocate(Math.rint(place.getMinX()), Math.rint(place.getMinY()), wide, high);
  }

  private static boolean isSeen(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node.getScene() != null;
  }

  /**
   * Where a note fits beside a control: right, left, above, below it, or else on it. What is
   * smaller than the note stands among others of its kind, which stay in sight with the note below.
   */
  static Bounds place(Bounds control, double wide, double high, double width, double height) {
    double x = Math.clamp(control.getMinX(), OFF, Math.max(OFF, width - wide - OFF));
    double y = Math.clamp(control.getMinY(), OFF, Math.max(OFF, height - high - OFF));
    boolean isSmall = control.getWidth() < wide && control.getHeight() < high / 2;
    if (isSmall && control.getMaxY() + OFF + high <= height) {
      return new BoundingBox(x, control.getMaxY() + OFF, wide, high);
    }
    if (control.getMaxX() + OFF + wide <= width) {
      return new BoundingBox(control.getMaxX() + OFF, y, wide, high);
    }
    if (control.getMinX() - OFF - wide >= 0) {
      return new BoundingBox(control.getMinX() - OFF - wide, y, wide, high);
    }
    if (control.getMinY() - OFF - high >= 0) {
      return new BoundingBox(x, control.getMinY() - OFF - high, wide, high);
    }
    if (control.getMaxY() + OFF + high <= height) {
      return new BoundingBox(x, control.getMaxY() + OFF, wide, high);
    }
    return new BoundingBox(x + OFF, y + OFF, wide, high);
  }
}
