package facetwright.workbench.goal;

import facetwright.aim.GoalReader;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;

/** Aims: what the design on the table should come to, and which dial to turn for it. */
public final class GoalBar extends Bar {
  private static final String ANY = "any dial";

  private final ChoiceBox<String> word = new ChoiceBox<>();
  private final TextField value = new TextField();
  private final ChoiceBox<String> turn = new ChoiceBox<>();
  private final RulerBox ruler;

  /**
   * @param hire who solves; asked for when it is needed first
   * @param ui runs work on the window's thread
   */
  public GoalBar(Desk desk, Supplier<? extends Asking> hire, Executor ui) {
    super(desk, hire, ui);
    word.getItems().setAll(GoalReader.WORDS);
    word.setValue("height");
    word.setAccessibleText("What to aim at");
    word.setTooltip(new Tip("What the design should come to"));
    value.setPrefColumnCount(7);
    value.setAccessibleText("Wanted");
    value.setTooltip(new Tip(Key.ASK.tip("How much it is to be, in mm or inches")));
    value.setOnAction(_ -> find());
    word.valueProperty().addListener((_, _, w) -> value.setPromptText(example(w)));
    value.setPromptText(example(word.getValue()));
    turn.setAccessibleText("Dial to turn");
    turn.setTooltip(new Tip("It starts where it stands now; all other dials stay"));
    var rulers = typed("Ruler", "The ruler that dials are set by, of either unit");
    ruler = new RulerBox(rulers);
    lay(
        List.of(
            new Label("Aim at"),
            word,
            value,
            new Label("by turning"),
            turn,
            new Label("by a ruler of"),
            rulers),
        "Look for dials that make it so");
    dials(null);
    desk.design().addListener((_, _, design) -> dials(design));
  }

  @Override
  public void open() {
    ruler.of(unit());
    super.open();
    value.selectAll();
  }

  /** Lays the line open and solves for a wish. */
  public void open(Wish wish) {
    open();
    word.setValue(wish.word());
    value.setText(wish.value());
    turn.setValue(wish.turn().isEmpty() ? ANY : wish.turn());
    find();
  }

  private void dials(Design design) {
    String before = turn.getValue();
    List<String> names = new ArrayList<>(List.of(ANY));
    if (design != null) {
      design.dials().stream().filter(d -> !d.isWord()).map(Dial::name).forEach(names::add);
    }
    if (!names.equals(turn.getItems())) {
      turn.getItems().setAll(names);
    }
    turn.setValue(names.contains(before) ? before : ANY);
  }

  @Override
  void seek() {
    Wish wish =
        new Wish(
            word.getValue(),
            value.getText().strip(),
            turn.getValue().equals(ANY) ? "" : turn.getValue());
    offer().ask(wish.question(unit(), ruler.grid()));
  }

  @Override
  Control first() {
    return value;
  }

  private static String example(String word) {
    return switch (word) {
      case "volume" -> "250 ml";
      case "area" -> "300 cm2";
      case "gap" -> "0";
      case "ring" -> "8";
      case "fits" -> "Letter";
      default -> "120 mm";
    };
  }
}
