package facetwright.workbench.sweep;

import facetwright.adjust.sweep.SweepValues;
import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import facetwright.workbench.picture.Picture;
import facetwright.workbench.picture.Pictures;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;

/** The design at many values of one dial; a click takes one. */
public final class SweepView extends BorderPane {
  private static final double WIDE = 150;
  private static final double HIGH = 128;

  private final Desk desk;
  private final Pictures.Wall pictures;
  private final Label title = new Label();
  private final FlowPane cards = new FlowPane(10, 10);
  private final WayBack back = new WayBack();
  private Runnable otherwise = () -> {};

  public SweepView(Desk desk, Pictures.Wall pictures) {
    this.desk = desk;
    this.pictures = pictures;
    getStyleClass().add("sweep");
    getStylesheets().add(SweepView.class.getResource("sweep.css").toExternalForm());
    title.getStyleClass().add("sweep-title");
    Button close = new Button("Close");
    close.setTooltip(new Tip(Key.AWAY.tip("Back to the table")));
    close.setOnAction(_ -> close());
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox top = new HBox(12, title, space, close);
    top.setAlignment(Pos.CENTER_LEFT);
    top.getStyleClass().add("strip");
    ScrollPane all = new ScrollPane(cards);
    all.setFitToWidth(true);
    cards.getStyleClass().add("sweep-cards");
    setTop(top);
    setCenter(all);
    setVisible(false);
    // The values of one design's dial are no other's.
    desk.laid().addListener((_, _, _) -> close());
    addEventFilter(KeyEvent.KEY_PRESSED, Key.AWAY.then(this::close));
  }

  /** Who gives the focus a place, where it cannot go back to where it was. */
  public void onLost(Runnable giving) {
    otherwise = giving;
  }

  /** Shows a dial of the present design over its range. */
  public void show(String name) {
    Design design = desk.design().get();
    if (design == null) {
      return;
    }
    Dial dial = design.dials().stream().filter(d -> d.name().equals(name)).findFirst().orElse(null);
    if (dial == null) {
      return;
    }
    Unit unit = design.unit();
    title.setText("Pick a value for " + name);
    cards.getChildren().clear();
    for (double value : SweepValues.of(dial, unit)) {
      String text = DialText.text(dial, value, unit);
      boolean now = Math.abs(value - dial.value()) < RoundOff.PART;
      SweepCard card = new SweepCard(name + " " + text, now, () -> take(name, text));
      cards.getChildren().add(card);
      Map<String, String> settings = new LinkedHashMap<>(desk.settings().get());
      settings.put(name, text);
      pictures.of(desk.request(settings), card::show);
    }
    back.remember(this);
    setVisible(true);
    toFront();
    // One begins at the value that is now.
    cards.getChildren().stream()
        .filter(card -> card.getStyleClass().contains("now"))
        .findFirst()
        .orElse(cards.getChildren().getFirst())
        .requestFocus();
  }

  private void take(String name, String text) {
    desk.turn(name, text);
    close();
  }

  /** Goes away; what is not drawn yet is not drawn any more. */
  void close() {
    pictures.forget();
    if (isVisible()) {
      back.go(this, otherwise);
      setVisible(false);
    }
  }

  /** One value. */
  private static final class SweepCard extends VBox {
    private final Canvas canvas = new Canvas(WIDE, HIGH);
    private final Label size = new Label("…");

    SweepCard(String words, boolean now, Runnable take) {
      getStyleClass().add("sweep-card");
      if (now) {
        getStyleClass().add("now");
      }
      Label value = new Label(now ? words + " (now)" : words);
      value.getStyleClass().add("dial-name");
      size.getStyleClass().add("quiet");
      size.setWrapText(true);
      size.setMaxWidth(WIDE);
      size.setAlignment(Pos.TOP_CENTER);
      size.setTextAlignment(TextAlignment.CENTER);
      getChildren().addAll(canvas, value, size);
      setAlignment(Pos.TOP_CENTER);
      setFocusTraversable(true);
      setAccessibleRole(AccessibleRole.BUTTON);
      setAccessibleText(words);
      Tooltip.install(this, new Tip(Key.PRESS.tip("Take " + words)));
      setOnMouseClicked(_ -> take.run());
      setOnKeyPressed(
          e -> {
            if (Key.PRESS.is(e)) {
              take.run();
              e.consume();
            }
          });
    }

    void show(Picture picture) {
      size.setText(picture.size());
      picture.paint(canvas.getGraphicsContext2D(), WIDE, HIGH, 8);
    }
  }
}
