package facetwright.workbench.goal;

import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.words.Sentence;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A line above the dials that asks something of the design, and what came of it. */
public abstract class Bar extends VBox {
  private final Desk desk;
  private final Offer offer;
  private final FlowPane row = new FlowPane(8, 4);
  private final WayBack back = new WayBack();
  private Runnable otherwise = () -> {};
  private Runnable opening = () -> {};
  private Runnable taken = () -> {};

  Bar(Desk desk, Supplier<? extends Asking> hire, Executor ui) {
    this.desk = desk;
    offer = new Offer(desk, hire, ui, this::close, () -> taken.run(), () -> first().requestFocus());
    getStyleClass().add("goal");
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(row, offer);
    setOnKeyPressed(Key.AWAY.then(this::close));
    hide();
  }

  /**
   * Lays out what is chosen, with buttons after it.
   *
   * @param tip what the button that asks does
   */
  final void lay(List<? extends Node> controls, String tip) {
    Button find = new Button("Find dials");
    find.setTooltip(new Tip(Key.ASK.tip(tip + "; nothing turns before you take it")));
    find.setOnAction(_ -> find());
    Button close = new Button("Close");
    close.getStyleClass().add("plain");
    close.setTooltip(new Tip(Key.AWAY.tip("Put this line away")));
    close.setOnAction(_ -> close());
    row.getChildren().setAll(controls);
    // Neither stands in a line of its own.
    HBox both = new HBox(8, find, close);
    both.setAlignment(Pos.CENTER_LEFT);
    row.getChildren().add(both);
  }

  /** A list to choose from in which anything else can be typed. */
  final ComboBox<String> typed(String name, String tip) {
    ComboBox<String> box = new ComboBox<>();
    box.setEditable(true);
    box.setAccessibleText(name);
    box.setTooltip(new Tip(tip));
    box.getEditor().setPrefColumnCount(6);
    // What is typed takes the place of what stood there.
    box.focusedProperty()
        .addListener(
            (_, _, on) -> {
              if (on) {
                Platform.runLater(box.getEditor()::selectAll);
              }
            });
    box.setOnKeyPressed(
        e -> {
          if (Key.ASK.is(e)) {
            find();
            e.consume();
          }
        });
    return box;
  }

  /** Asks. */
  final void find() {
    try {
      seek();
    } catch (IllegalArgumentException e) {
      offer.tell("✕ " + Sentence.of(e.getMessage()));
    }
  }

  /**
   * Asks for what is chosen.
   *
   * @throws IllegalArgumentException when that can't be asked, without a full stop
   */
  abstract void seek();

  /** Where the choice begins. */
  abstract Control first();

  /** Who gives the focus a place, where it cannot go back to where it was. */
  public final void onLost(Runnable giving) {
    otherwise = giving;
  }

  /** Lays the line open, ready to be chosen in. */
  void open() {
    opening.run();
    back.remember(this);
    offer.tell("");
    setVisible(true);
    setManaged(true);
    first().requestFocus();
  }

  /** Puts the line away; what is being sought is not sought any more. */
  public final void close() {
    if (isVisible()) {
      back.go(this, otherwise);
    }
    hide();
  }

  private void hide() {
    offer.forget();
    setVisible(false);
    setManaged(false);
  }

  /** Does something, such as closing other lines, whenever this one opens. */
  public final void onOpening(Runnable first) {
    opening = first;
  }

  /** Does something whenever what is offered is taken. */
  final void onTaking(Runnable then) {
    taken = then;
  }

  final Desk desk() {
    return desk;
  }

  final Offer offer() {
    return offer;
  }

  /** What numbers without a unit count: the design's, or mm before there is one. */
  final Unit unit() {
    Design design = desk.design().get();
    return design == null ? Unit.MM : design.unit();
  }

  /** What it says now. Tests watch by it. */
  public final String told() {
    return offer.words();
  }

  /** Chooses one of the ways. Tests choose by it. */
  public final void choose(String way) {
    offer.choose(way);
  }
}
