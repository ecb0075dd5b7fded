package facetwright.workbench.papers;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.order.Order;
import facetwright.workbench.key.Key;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** For how many pieces the papers are, what the printer takes, and the ruler at hand. */
final class PrintOrder extends HBox {
  private static final String USUAL = "usual page";
  private static final String USUAL_RULER = "usual ruler";

  private final TextField pieces = new TextField("1");
  private final ChoiceBox<String> page = new ChoiceBox<>();
  private final ChoiceBox<String> ruler = new ChoiceBox<>();
  private final Map<String, Ruler> rulers = new LinkedHashMap<>();
  private final Runnable changed;
  private int copies = 1;

  /**
   * @param changed told when another order is given
   */
  PrintOrder(Runnable changed) {
    super(8);
    this.changed = changed;
    setAlignment(Pos.CENTER_LEFT);
    Label many = new Label("Pieces");
    many.setLabelFor(pieces);
    pieces.setPrefColumnCount(4);
    pieces.setAccessibleText("Pieces to make");
    pieces.setTooltip(
        new Tooltip("How many you make: for a class, or 3 and more for a ring (Enter)"));
    pieces.setOnAction(_ -> typed());
    pieces
        .focusedProperty()
        .addListener(
            (_, _, on) -> {
              if (!on) {
                typed();
              }
            });
    pieces.setOnKeyPressed(
        e -> {
          if (Key.MORE_COPIES.is(e)) {
            order(copies + Key.MORE_COPIES.sense(e));
            e.consume();
          }
        });
    page.getItems().add(USUAL);
    SheetSizes.list().stream()
        .filter(Order::isPage)
        .map(SheetSize::name)
        .forEach(page.getItems()::add);
    page.setValue(USUAL);
    page.setAccessibleText("Page of the printer");
    page.setTooltip(new Tooltip("What your printer takes"));
    page.valueProperty().addListener((_, _, _) -> changed.run());
    ruler.getItems().add(USUAL_RULER);
    Ruler.common().forEach(r -> rulers.put(r.name(), r));
    ruler.getItems().addAll(rulers.keySet());
    ruler.setValue(USUAL_RULER);
    ruler.setAccessibleText("Your ruler");
    ruler.setTooltip(new Tooltip("Your ruler, of either unit: every measure to set is told by it"));
    ruler.valueProperty().addListener((_, _, _) -> changed.run());
    getChildren().addAll(many, pieces, page, ruler);
  }

  /** The order, for a design in this unit. */
  Order order(Unit unit) {
    String name = page.getValue();
    Order usual = Order.usual(unit).of(copies);
    return (name.equals(USUAL) ? usual : usual.on(SheetSizes.named(name)))
        .by(rulers.getOrDefault(ruler.getValue(), usual.ruler()));
  }

  /** Has measures told for this ruler. */
  void ruler(Ruler wanted) {
    String name = wanted.name();
    if (!ruler.getItems().contains(name)) {
      ruler.getItems().add(name);
      rulers.put(name, wanted);
    }
    ruler.setValue(name);
  }

  private void typed() {
    OptionalInt number = number(pieces.getText().strip());
    order(number.orElse(copies));
  }

  /** As near to so many as can be ordered. */
  private void order(int wanted) {
    int before = copies;
    copies = Math.clamp(wanted, 1, Order.MOST);
    pieces.setText(Integer.toString(copies));
    if (copies != before) {
      changed.run();
    }
  }

  private static OptionalInt number(String text) {
    return text.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }
}
