package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.control.skin.TextFieldSkin;
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
  private boolean fieldBlinks;
  private CodeArea area;
  private TextField field;
  private Stage stage;

  @BeforeEach
  void open() throws Exception {
    Fx.start();
    Fx.run(
        () -> {
          area = new CodeArea("one");
          field = new TextField("two");
          field.setSkin(
              new TextFieldSkin(field) {
                @Override
                public void setCaretAnimating(boolean on) {
                  super.setCaretAnimating(on);
                  fieldBlinks = on;
                }
              });
          stage = new Stage();
          stage.setScene(new Scene(new VBox(area, field), 200, 100));
          Carets.of(stage.getScene(), (_, work) -> due.add(work));
          stage.show();
          stage.requestFocus();
          area.requestFocus();
        });
    Fx.until("it has the focus", area::isFocused);
  }

  @AfterEach
  void close() throws Exception {
    Fx.run(stage::close);
  }

  private Duration rate() throws Exception {
    Fx.pulse();
    return Fx.get(() -> area.getCaretSelectionBind().getUnderlyingCaret().getBlinkRate());
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
    pass();
    Fx.run(field::requestFocus);
    assertThat(rate()).as("where the keys went away from").isEqualTo(Duration.millis(500));
    assertThat(fieldBlinks).isTrue();
    pass();
    assertThat(fieldBlinks).isFalse();
    press(field);
    assertThat(fieldBlinks).isTrue();
    for (String button : List.of("one", "two")) {
      pass();
      assertThat(fieldBlinks).as(button).isFalse();
    }
  }
}
