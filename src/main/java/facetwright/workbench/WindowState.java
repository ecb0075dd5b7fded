package facetwright.workbench;

import facetwright.language.Language;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.file.State;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringExpression;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window's size and place, dividers, look and language, as they were the last time. */
final class WindowState {
  private static final double WIDE = 1280;
  private static final double HIGH = 800;
  private static final double LEAST_WIDE = 720;
  private static final double LEAST_HIGH = 480;

  private final Stage stage;
  private final House house;
  private final State state;

  WindowState(Stage stage, House house, State state) {
    this.stage = stage;
    this.house = house;
    this.state = state;
  }

  /** Puts all as it was, as far as the screens of today allow. */
  Scene restore() {
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double wide = number("window.wide", LEAST_WIDE, 20_000, usual(WIDE, screen.getWidth()));
    double high = number("window.high", LEAST_HIGH, 20_000, usual(HIGH, screen.getHeight()));
    Scene scene = new Scene(house, wide, high);
    stage.setMinWidth(Math.min(LEAST_WIDE, screen.getWidth()));
    stage.setMinHeight(Math.min(LEAST_HIGH, screen.getHeight()));
    double x = number("window.x", -50_000, 50_000, Double.NaN);
    double y = number("window.y", -50_000, 50_000, Double.NaN);
    if (!Double.isNaN(x)
        && !Double.isNaN(y)
        && !Screen.getScreensForRectangle(x + 40, y + 20, 200, 40).isEmpty()) {
      stage.setX(x);
      stage.setY(y);
    }
    stage.setMaximized(state.isOn("window.whole"));
    Room room = house.room();
    room.dark().set(state.isOn("dark") || Boolean.getBoolean("facetwright.dark"));
    room.fold().divide(number("divider", 0.2, 0.95, 0.66));
    room.fold().away().set(state.isOn("script.away"));
    house.textSize().pixels().set(number("text", TextSize.LEAST, TextSize.MOST, TextSize.USUAL));
    state
        .text("language")
        .flatMap(Language::tagged)
        .ifPresent(house.papers().order().language()::setValue);
    return scene;
  }

  /** Four fifths of the screen, but not less than is comfortable, with room for the frame. */
  private static double usual(double least, double screen) {
    return Math.min(screen * 0.94, Math.max(least, screen * 0.8));
  }

  private double number(String key, double least, double most, double otherwise) {
    return state.number(key, least, most).orElse(otherwise);
  }

  /** What the window is called. */
  static StringExpression title(Desk desk) {
    return Bindings.createStringBinding(
            () ->
                (desk.file().get() == null ? "Untitled design" : desk.fileName())
                    + (desk.changed().get() ? " (not saved)" : "")
                    + " – Facetwright",
            desk.file(),
            desk.changed())
        .concat("");
  }

  /** Remembers all as it is. */
  void remember() {
    Map<String, String> now = new LinkedHashMap<>();
    Room room = house.room();
    now.put("window.whole", yes(stage.isMaximized()));
    if (!stage.isMaximized() && stage.getScene() != null) {
      now.put("window.x", Double.toString(stage.getX()));
      now.put("window.y", Double.toString(stage.getY()));
      now.put("window.wide", Double.toString(stage.getScene().getWidth()));
      now.put("window.high", Double.toString(stage.getScene().getHeight()));
    }
    now.put("dark", yes(room.dark().get()));
    now.put("divider", Double.toString(room.fold().divider()));
    now.put("script.away", yes(room.fold().away().get()));
    now.put("text", Double.toString(house.textSize().pixels().get()));
    now.put("language", house.papers().order().language().get().tag());
    state.remember(now);
  }

  private static String yes(boolean on) {
    return on ? "yes" : "no";
  }
}
