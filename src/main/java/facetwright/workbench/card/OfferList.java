package facetwright.workbench.card;

import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Offer;
import facetwright.workbench.card.text.Offers;
import facetwright.workbench.key.Key;
import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The offers as a list, with what there is to say about the chosen one. */
final class OfferList extends VBox {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
  private static final int ROWS = 7;

  /** How tall the help is at most, in times the lettering of the count. */
  private static final double MOST_HELP = 19;

  private final VBox rows = new VBox();
  private final HelpPane help = new HelpPane();
  private final ScrollPane about = new ScrollPane(help);
  private final Label count = new Label();
  private final Consumer<Offer> taken;
  private Offers offers = new Offers(new Stretch(0, 0), List.of());
  private int chosen;
  private int top;

  /**
   * @param taken what is done with an offer that is pressed
   * @param grown what is done when the list wants another height
   */
  OfferList(Consumer<Offer> taken, Runnable grown) {
    this.taken = taken;
    help.heightProperty()
        .addListener(
            (_, _, height) -> {
              about.setPrefViewportHeight(
                  Math.min(MOST_HELP * count.getFont().getSize(), height.doubleValue()));
              grown.run();
            });
    getStyleClass().add("offers");
    rows.getStyleClass().add("offer-rows");
    count.getStyleClass().addAll("quiet", "offer-count");
    about.setFitToWidth(true);
    about.setFocusTraversable(false);
    about.getStyleClass().add("offer-about");
    VBox.setVgrow(about, Priority.ALWAYS);
    rows.setOnScroll(e -> choose(chosen + (e.getDeltaY() < 0 ? 1 : -1)));
    getChildren().addAll(rows, count, about);
  }

  void show(Offers now) {
    offers = now;
    top = 0;
    choose(0);
  }

  Offers offers() {
    return offers;
  }

  Offer chosen() {
    return offers.all().get(chosen);
  }

  /** Goes so many rows on, round at the ends for a step of one. */
  void step(int by) {
    int n = offers.all().size();
    choose(Math.abs(by) == 1 ? Math.floorMod(chosen + by, n) : chosen + by);
  }

  private void choose(int index) {
    int n = offers.all().size();
    chosen = Math.clamp(index, 0, n - 1);
    top = Math.clamp(top, Math.max(0, chosen - ROWS + 1), chosen);
    rows.getChildren().clear();
    for (int i = top; i < Math.min(n, top + ROWS); i++) {
      rows.getChildren().add(row(i));
    }
    count.setText(
        "%d of %d – %s writes it, %s closes"
            .formatted(chosen + 1, n, Key.OFFERS_TAKE.one(), Key.OFFERS_CLOSE.text()));
    help.show(chosen().help());
    about.setVvalue(0);
  }

  private Region row(int i) {
    Offer offer = offers.all().get(i);
    Label word = new Label(offer.word());
    word.getStyleClass().add("offer-word");
    Label sort = new Label(offer.sort());
    sort.getStyleClass().add("quiet");
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox row = new HBox(8, word, space, sort);
    row.getStyleClass().add("offer");
    row.pseudoClassStateChanged(CHOSEN, i == chosen);
    row.setAccessibleRole(AccessibleRole.LIST_ITEM);
    row.setAccessibleText(offer.word() + ", " + offer.sort() + ". " + offer.help().does());
    row.setOnMousePressed(
        e -> {
          taken.accept(offer);
          e.consume();
        });
    return row;
  }
}
