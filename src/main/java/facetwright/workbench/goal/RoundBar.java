package facetwright.workbench.goal;

import facetwright.adjust.propose.Question;
import facetwright.measure.Ruler;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;

/** Rounds the design on the table to a ruler. */
public final class RoundBar extends Bar {
  private static final List<String> MARKS = List.of("1 mark", "2 marks", "4 marks", "8 marks");

  private final ComboBox<String> rulers;
  private final RulerBox ruler;
  private final ChoiceBox<String> marks = new ChoiceBox<>();
  private Ruler asked = Ruler.HALF_MM;

  /**
   * @param hire who answers; asked for when it is needed first
   * @param ui runs work on the window's thread
   */
  public RoundBar(Desk desk, Supplier<? extends Asking> hire, Executor ui) {
    super(desk, hire, ui);
    rulers =
        typed(
            "Ruler",
            "The ruler you set measures by, of either unit: the distance between two of its marks");
    ruler = new RulerBox(rulers);
    marks.getItems().setAll(MARKS);
    marks.setValue(MARKS.getFirst());
    marks.setAccessibleText("Marks that a dial may be turned by");
    marks.setTooltip(new Tip("No dial turns by more, nor by more than a fifth of its value"));
    lay(
        List.of(
            new Label("Round to a ruler of"),
            rulers,
            new Label("turning no dial by more than"),
            marks),
        "Look for dials that put measures on the ruler's marks");
  }

  @Override
  public void open() {
    ruler.of(unit());
    super.open();
  }

  /** Chooses a ruler, as a person types it. Tests choose by it. */
  public void ruler(String text) {
    rulers.setValue(text);
    rulers.getEditor().setText(text);
  }

  /** Tells somebody the ruler, whenever the design was rounded to it. */
  public void onRounded(Consumer<Ruler> then) {
    onTaking(() -> then.accept(asked));
  }

  @Override
  void seek() {
    String most = marks.getValue();
    int count = Integer.parseInt(most.substring(0, most.indexOf(' ')));
    asked = ruler.ruler();
    offer().ask(new Question.Round(asked, count));
  }

  @Override
  Control first() {
    return rulers;
  }
}
