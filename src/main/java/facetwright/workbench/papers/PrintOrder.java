package facetwright.workbench.papers;

import facetwright.language.Language;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.order.Order;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.util.StringConverter;

/**
 * For how many pieces the papers are, what the printer takes, the ruler at hand, the language they
 * are read in, and how wide pictures are.
 */
public final class PrintOrder extends HBox {
  private static final String USUAL = "usual page";
  private static final String USUAL_RULER = "usual ruler";

  private final ChoiceBox<String> page = new ChoiceBox<>();
  private final ChoiceBox<String> ruler = new ChoiceBox<>();
  private final ChoiceBox<Language> language = new ChoiceBox<>();
  private final Map<String, Ruler> rulers = new LinkedHashMap<>();
  private final CountField pieces;
  private final CountField pixels;
  private final HBox ofPicture;

  /**
   * @param changed told when another order is given
   */
  PrintOrder(Runnable changed) {
    super(8);
    setAlignment(Pos.CENTER_LEFT);
    pieces =
        new CountField(
            "Pieces to make",
            Key.PRESS.tipOne("How many you make: for a class, or 3 and more for a ring"),
            1,
            1,
            Order.MOST,
            changed);
    pixels =
        new CountField(
            "Pixels of a picture",
            Key.PRESS.tipOne(
                "How many pixels wide pictures are saved, "
                    + Order.LEAST_PIXELS
                    + " to "
                    + Order.MOST_PIXELS),
            Order.USUAL_PIXELS,
            Order.LEAST_PIXELS,
            Order.MOST_PIXELS,
            changed);
    Label many = new Label("Pieces");
    many.setLabelFor(pieces);
    pieces.setOnKeyPressed(
        e -> {
          if (Key.MORE_COPIES.is(e)) {
            pieces.count(pieces.count() + Key.MORE_COPIES.sense(e));
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
    page.setTooltip(new Tip("What your printer takes; " + Order.leastPage(Unit.MM)));
    page.valueProperty().addListener((_, _, _) -> changed.run());
    ruler.getItems().add(USUAL_RULER);
    Ruler.common().forEach(r -> rulers.put(r.name(), r));
    ruler.getItems().addAll(rulers.keySet());
    ruler.setValue(USUAL_RULER);
    ruler.setAccessibleText("Your ruler");
    ruler.setTooltip(new Tip("Your ruler, of either unit: every measure to set is told by it"));
    ruler.valueProperty().addListener((_, _, _) -> changed.run());
    language.getItems().addAll(Language.values());
    language.setConverter(new OwnName());
    language.setValue(Language.ENGLISH);
    language.setAccessibleText("Language of the papers");
    language.setTooltip(new Tip("The language that your learners read; your own words stay"));
    language.valueProperty().addListener((_, _, _) -> changed.run());
    Label wide = new Label("Pixels");
    wide.setLabelFor(pixels);
    ofPicture = new HBox(8, wide, pixels);
    ofPicture.setAlignment(Pos.CENTER_LEFT);
    // A picture is set by no ruler, and what follows keeps its place.
    ruler.visibleProperty().bind(ofPicture.visibleProperty().not());
    StackPane either = new StackPane(ruler, ofPicture);
    either.setAlignment(Pos.CENTER_LEFT);
    show(null);
    getChildren().addAll(many, pieces, page, either, language);
  }

  /** The order, for a design in this unit. */
  Order order(Unit unit) {
    String name = page.getValue();
    Order usual = Order.usual(unit).of(pieces.count()).wide(pixels.count());
    return (name.equals(USUAL) ? usual : usual.on(SheetSizes.named(name)))
        .by(rulers.getOrDefault(ruler.getValue(), usual.ruler()))
        .in(language.getValue());
  }

  /** Shows what is asked of the paper that is chosen; null where none is. */
  void show(Paper chosen) {
    ofPicture.setVisible(chosen != null && chosen.exporter().isPicture());
  }

  /** Has measures told for this ruler. */
  public void ruler(Ruler wanted) {
    String name = wanted.name();
    if (!ruler.getItems().contains(name)) {
      ruler.getItems().add(name);
      rulers.put(name, wanted);
    }
    ruler.setValue(name);
  }

  /** The language that papers are read in. */
  public ObjectProperty<Language> language() {
    return language.valueProperty();
  }

  /** Shows languages as their speakers call them. */
  private static final class OwnName extends StringConverter<Language> {
    @Override
    public String toString(Language shown) {
      return shown == null ? "" : shown.ownName();
    }

    @Override
    public Language fromString(String name) {
      return Arrays.stream(Language.values())
          .filter(l -> l.ownName().equals(name))
          .findFirst()
          .orElse(Language.ENGLISH);
    }
  }
}
