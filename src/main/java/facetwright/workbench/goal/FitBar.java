package facetwright.workbench.goal;

import facetwright.adjust.fit.Fitting;
import facetwright.adjust.propose.Question;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Tip;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;

/** Makes the design on the table as large as a sheet takes it, or several of it. */
public final class FitBar extends Bar {
  private final ComboBox<String> sheet;
  private final TextField copies = new TextField("1");
  private final RulerBox ruler;

  /**
   * @param hire who answers; asked for when it is needed first
   * @param ui runs work on the window's thread
   */
  public FitBar(Desk desk, Supplier<? extends Asking> hire, Executor ui) {
    super(desk, hire, ui);
    sheet = typed("Sheet", "The sheet you have, by its name or its sides, such as 7 1/2 x 10 in");
    copies.setPrefColumnCount(3);
    copies.setAccessibleText("How many on one sheet");
    copies.setTooltip(new Tip("How many shall lie on one sheet, 1 to " + Fitting.MOST));
    copies.setOnAction(_ -> find());
    ComboBox<String> rulers = typed("Ruler", "The ruler that dials are set by, of either unit");
    ruler = new RulerBox(rulers);
    lay(
        List.of(
            new Label("Fit"),
            copies,
            new Label("to a sheet of"),
            sheet,
            new Label("by a ruler of"),
            rulers),
        "Look for the largest that fits, its lengths in proportion");
  }

  @Override
  public void open() {
    Design design = desk().design().get();
    ruler.of(unit());
    List<String> names =
        CommonSheets.atHand().stream()
            .map(SheetSize::name)
            .collect(Collectors.toCollection(ArrayList::new));
    if (design != null) {
      String own = design.laid().stock().name();
      names.remove(own);
      names.addFirst(own);
    }
    sheet.getItems().setAll(names);
    sheet(names.getFirst());
    super.open();
  }

  /** Chooses a sheet, as a person types it. */
  public void sheet(String text) {
    sheet.setValue(text);
    sheet.getEditor().setText(text);
  }

  /** Chooses how many shall lie on it. Tests choose by it. */
  public void copies(String text) {
    copies.setText(text);
  }

  @Override
  void seek() {
    String many = copies.getText().strip();
    if (!many.matches("\\d{1,6}")) {
      throw new IllegalArgumentException(
          "\"" + many + "\" is no number of pieces: give 1 to " + Fitting.MOST);
    }
    String size = sheet.getEditor().getText().strip();
    offer()
        .ask(new Question.Fit(SheetSizes.read(size, unit()), Integer.parseInt(many), ruler.grid()));
  }

  @Override
  Control first() {
    return sheet;
  }
}
