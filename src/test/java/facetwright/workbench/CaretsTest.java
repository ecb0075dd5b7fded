package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.ArrayDeque;
import java.util.Deque;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.TextInputControlSkin;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A caret stands once nothing was pressed for a while, and blinks again with the next key. */
class CaretsTest {
  private final Deque<Runnable> due = new ArrayDeque<>();
  private CodeArea area;
  private TextField field;
  private ComboBox<String> box;
  private Stage stage;

  @BeforeEach
  void open() throws Exception {
    Fx.start();
    Fx.run(
        () -> {
          area = new CodeArea("one");
          field = new TextField("two");
          box = new ComboBox<>();
          box.setEditable(true);
          VBox all = new VBox(area, field, box);
          all.getStyleClass().add("room");
          all.getStylesheets().add(House.class.getResource("room.css").toExternalForm());
          stage = new Stage();
          stage.setScene(new Scene(all, 200, 100));
          Carets.of(stage.getScene(), (_, work) -> due.add(work));
          stage.show();
          stage.requestFocus();
          area.requestFocus();
        });
    Fx.until("it has the focus", area::isFocused);
    Fx.pulse();
  }

  @AfterEach
  void close() throws Exception {
    Fx.run(stage::close);
  }

  private Duration rate() throws Exception {
    Fx.pulse();
    return Fx.get(() -> area.getCaretSelectionBind().getUnderlyingCaret().getBlinkRate());
  }

  /** Whether the toolkit draws frames for the caret of a field. */
  private boolean blinks(TextInputControl of) throws Exception {
    Method asked = TextInputControlSkin.class.getDeclaredMethod("isCaretBlinking");
    asked.setAccessible(true);
    return Fx.get(() -> (boolean) asked.invoke(of.getSkin()));
  }

  /** The time passes until nothing more waits for it. */
  private void pass() throws Exception {
    Fx.run(
        () -> {
          for (int i = 0; i < 3 && !due.isEmpty(); i++) {
            due.remove().run();
          }
        });
    assertThat(due).as("what waits while nothing is pressed").isEmpty();
  }

  private void press(Node in) throws Exception {
    Fx.run(() -> Fx.press(in, "Right"));
  }

  @Test
  void theCaretOfTheScriptStandsAndBlinksOn() throws Exception {
    assertThat(rate()).isEqualTo(Duration.millis(500));
    pass();
    assertThat(rate()).isEqualTo(Duration.ZERO);
    assertThat(Fx.get(() -> area.getCaretSelectionBind().getUnderlyingCaret().isVisible()))
        .as("it shows")
        .isTrue();
    press(area);
    assertThat(rate()).isEqualTo(Duration.millis(500));
    press(area);
    assertThat(due).as("one wait for many keys").hasSize(1);
    pass();
    assertThat(rate()).isEqualTo(Duration.ZERO);
  }

  @Test
  void soDoesThatOfAField() throws Exception {
    for (TextField each : new TextField[] {field, box.getEditor()}) {
      Fx.run((each.equals(field) ? field : box)::requestFocus);
      assertThat(blinks(each)).isTrue();
      pass();
      assertThat(blinks(each)).isFalse();
      press(each);
      assertThat(blinks(each)).isTrue();
      Fx.run(area::requestFocus);
      assertThat(blinks(each)).as("where the keys went away from").isFalse();
    }
  }

  /** Dials' fields are written anew whenever a design comes. */
  @Test
  void aFieldThatIsWrittenFromElsewhereDoesNotBlink() throws Exception {
    for (TextField each : new TextField[] {field, box.getEditor()}) {
      Fx.run(
          () -> {
            each.setText("something longer");
            each.end();
          });
      Fx.pulse();
      assertThat(blinks(each)).isFalse();
    }
  }
}
