package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.NoticePane;
import facetwright.workbench.notice.Notices;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However narrow the table, a notice's words have room, and nothing of it is cut off. */
class NoticeRoomTest {
  private static NoticePane shown(double width) throws Exception {
    Fx.start();
    return Fx.get(
        () -> {
          Notices notices = new Notices();
          NoticePane pane = new NoticePane(notices, () -> {});
          notices.show(
              Notice.question(
                  "along",
                  "The script uses tubs.js, which is not in that folder",
                  "Without it there is no net. Made one file, the script holds all that it uses.",
                  new Notice.Choice("Bring it along", () -> {}),
                  new Notice.Choice("Make it one file", () -> {}),
                  new Notice.Choice("Save the script alone", () -> {}),
                  new Notice.Choice("Cancel", () -> {})));
          StackPane root = new StackPane(pane);
          new Scene(root, width, 600);
          root.applyCss();
          pane.resize(width, pane.prefHeight(width));
          pane.layout();
          pane.getChildren().forEach(child -> ((Region) child).layout());
          return pane;
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 420, 590, 760, 1000, 1400})
  void wordsAndButtonsLieWhole(int width) throws Exception {
    NoticePane pane = shown(width);
    Region said = (Region) pane.getChildren().getFirst();
    Region choices = (Region) pane.getChildren().getLast();
    assertThat(said.getWidth()).isGreaterThan(Math.min(0.4 * width, 500));
    assertThat(said.getHeight()).isGreaterThanOrEqualTo(said.prefHeight(said.getWidth()) - 1);
    assertThat(said.getBoundsInParent().intersects(choices.getBoundsInParent())).isFalse();
    assertThat(pane.lookupAll(".button")).hasSize(4);
    for (Node button : pane.lookupAll(".button")) {
      Bounds at = pane.sceneToLocal(button.localToScene(button.getLayoutBounds()));
      assertThat(at.getMinX()).isGreaterThanOrEqualTo(0);
      assertThat(at.getMaxX()).isLessThanOrEqualTo(width);
      assertThat(at.getMaxY()).isLessThanOrEqualTo(pane.getHeight());
      assertThat(((Button) button).getWidth()).isGreaterThanOrEqualTo(button.prefWidth(-1) - 1);
    }
  }

  @Test
  void thereIsOneLineWhereThereIsRoom() throws Exception {
    NoticePane wide = shown(1400);
    NoticePane narrow = shown(560);
    assertThat(wide.getHeight()).isLessThan(narrow.getHeight());
  }
}
