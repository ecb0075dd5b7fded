package facetwright.workbench.goal;

import facetwright.aim.GoalReader;
import facetwright.script.Design;
import facetwright.script.Dial;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.focus.WayBack;
import facetwright.worker.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A line above the dials: what the design should come to, which dial to turn, what came of it. */
public final class GoalBar extends VBox {
  private static final String ANY = "any dial";

  private final Desk desk;
  private final Supplier<? extends Asking> hire;
  private final Executor ui;
  private final ChoiceBox<String> word = new ChoiceBox<>();
  private final TextField value = new TextField();
  private final ChoiceBox<String> turn = new ChoiceBox<>();
  private final Label outcome = new Label();
  private final Button apply = new Button("Turn them so");
  private final WayBack back = new WayBack();
  private Runnable otherwise = () -> {};
  private Asking asking;
  private Wish.Came came;
  private long asks;

  /**
   * @param hire who solves; asked for when it is needed first
   * @param ui runs work on the window's thread
   */
  public GoalBar(Desk desk, Supplier<? extends Asking> hire, Executor ui) {
    this.desk = desk;
    this.hire = hire;
    this.ui = ui;
    getStyleClass().add("goal");
    word.getItems().setAll(GoalReader.WORDS);
    word.setValue("height");
    word.setAccessibleText("What to aim at");
    word.setTooltip(new Tooltip("What the design is to come to"));
    value.setPrefColumnCount(7);
    value.setAccessibleText("Wanted");
    value.setTooltip(new Tooltip("How much it is to be, in mm or inches (Enter)"));
    value.setPromptText("120 mm");
    value.setOnAction(_ -> find());
    word.valueProperty().addListener((_, _, w) -> value.setPromptText(example(w)));
    turn.setAccessibleText("Dial to turn");
    turn.setTooltip(
        new Tooltip("Dials that may turn start where the script has them; all others stay"));
    Button find = new Button("Find dials");
    find.setTooltip(new Tooltip("Solves for dials that make it so (Enter)"));
    find.setOnAction(_ -> find());
    Button close = new Button("Close");
    close.getStyleClass().add("plain");
    close.setTooltip(new Tooltip("Puts this line away (Esc)"));
    close.setOnAction(_ -> close());
    apply.setTooltip(new Tooltip("Turns the dials; Ctrl+Alt+Z takes it back in one step"));
    apply.setOnAction(_ -> apply());
    outcome.setWrapText(true);
    FlowPane row =
        new FlowPane(8, 4, new Label("Aim at"), word, value, new Label("by turning"), turn, find);
    row.getChildren().addAll(apply, close);
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(row, outcome);
    setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            close();
            e.consume();
          }
        });
    desk.design().addListener((_, _, design) -> dials(design));
    desk.text().addListener((_, _, _) -> forget());
    desk.settings().addListener((_, _, _) -> forget());
    forget();
    show(false);
  }

  /** Who gives the focus a place, where it cannot go back to where it was. */
  public void onLost(Runnable giving) {
    otherwise = giving;
  }

  private void close() {
    back.go(this, otherwise);
    show(false);
  }

  /** Lays the line open, ready to be typed in. */
  public void open() {
    back.remember(this);
    show(true);
    value.requestFocus();
    value.selectAll();
  }

  /** Lays the line open and solves for a wish. */
  public void open(Wish wish) {
    back.remember(this);
    show(true);
    word.setValue(wish.word());
    value.setText(wish.value());
    turn.setValue(wish.turn().isEmpty() ? ANY : wish.turn());
    find();
    apply.requestFocus();
  }

  private void show(boolean on) {
    setVisible(on);
    setManaged(on);
  }

  private void dials(Design design) {
    String before = turn.getValue();
    List<String> names = new ArrayList<>(List.of(ANY));
    design.dials().stream().map(Dial::name).forEach(names::add);
    if (!names.equals(turn.getItems())) {
      turn.getItems().setAll(names);
    }
    turn.setValue(names.contains(before) ? before : ANY);
  }

  private void find() {
    Design design = desk.design().get();
    if (design == null || design.dials().isEmpty()) {
      tell("This design has no dials to turn.");
      return;
    }
    Wish wish =
        new Wish(
            word.getValue(),
            value.getText().strip(),
            turn.getValue().equals(ANY) ? "" : turn.getValue());
    Optional<String> trouble = wish.trouble(design.unit());
    if (trouble.isPresent()) {
      tell("✕ " + trouble.get());
      return;
    }
    if (asking == null) {
      asking = hire.get();
    }
    long number = ++asks;
    tell("Looking for dials …");
    var _ =
        asking
            .ask(wish.request(desk.request(), design))
            .thenAccept(reply -> ui.execute(() -> heard(number, wish, design, reply)));
  }

  private void heard(long number, Wish wish, Design before, Reply reply) {
    if (number != asks) {
      return;
    }
    switch (reply) {
      case Reply.Done(Design aimed) -> {
        came = wish.came(aimed, before);
        outcome.setText((came.met() ? "" : "✕ ") + came.words());
        apply.setDisable(came.settings().isEmpty());
        if (!apply.isDisabled()) {
          apply.requestFocus();
        }
      }
      case Reply.Failed failed -> tell("✕ " + failed.message() + ". " + failed.remedy());
      case Reply.Stopped _ -> tell("Stopped.");
    }
  }

  private void tell(String words) {
    came = null;
    apply.setDisable(true);
    outcome.setText(words);
  }

  /** What was found is for a script and dials that are no more. */
  private void forget() {
    asks++;
    tell("");
  }

  private void apply() {
    if (came != null) {
      desk.turnAll(came.settings());
    }
  }

  /** What was found, in words. */
  public String told() {
    return outcome.getText();
  }

  private static String example(String word) {
    return switch (word) {
      case "volume" -> "250 ml";
      case "area" -> "300 cm2";
      case "gap" -> "0";
      case "fits" -> "Letter";
      default -> "120 mm";
    };
  }
}
