package facetwright.workbench.table;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.workbench.look.Camera;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The part of the view that is painted at every change. */
class FieldTest {
  private static final double WIDE = 800;
  private static final double HIGH = 500;

  @Test
  void holdsTheSheetsAndLittleElse() throws Exception {
    Laid laid = laid(50);
    Camera camera = Fitting.of(laid, WIDE, HIGH, 0, 1);
    Field field = Field.about(laid, camera, WIDE, HIGH, 1);
    Box2 sheet = laid.sheet(0);
    assertThat(camera.screenX(new Vec2(sheet.minX(), 0)) - field.left()).isBetween(16.0, 17.0);
    assertThat(camera.screenY(new Vec2(0, sheet.maxY())) - field.top()).isBetween(0.0, 17.0);
    assertThat(field.left() + field.width() - camera.screenX(new Vec2(sheet.maxX(), 0)))
        .isBetween(16.0, 17.0);
    assertThat(field.top() + field.height() - camera.screenY(new Vec2(0, sheet.minY())))
        .isBetween(16.0, 17.0);
    assertThat(field.width() * field.height()).isLessThan(WIDE * HIGH / 2);
  }

  @Test
  void isNoMoreThanTheView() throws Exception {
    Laid laid = laid(50);
    Camera near = Fitting.of(laid, WIDE, HIGH, 0, 1).zoomed(8, WIDE / 2, HIGH / 2);
    assertThat(Field.about(laid, near, WIDE, HIGH, 1)).isEqualTo(Field.whole(WIDE, HIGH));
    Field away = Field.about(laid, near.moved(1e5, -1e5), WIDE, HIGH, 1);
    assertThat(away.width() * away.height()).isZero();
  }

  @Test
  void isAllOfTheViewWhereTheNetReachesOverItsSheet() throws Exception {
    Laid laid = laid(900);
    Camera camera = Fitting.of(laid, WIDE, HIGH, 0, 1);
    assertThat(Field.about(laid, camera, WIDE, HIGH, 1)).isEqualTo(Field.whole(WIDE, HIGH));
  }

  private static Laid laid(int side) throws Exception {
    String script =
        """
        design("Card", { units: "mm" });
        panel("front", { width: %d, height: %d });
        sheet("A4");
        """
            .formatted(side, side);
    return Facetwright.evaluate("card.js", script, Map.of(), Budget.USUAL).laid();
  }
}
