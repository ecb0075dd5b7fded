package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.export.Papers;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.papers.order.Order;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

class TemplatePagesTest {
  /** The room a line of text takes, by the typeface's own measures. */
  private static Polygon2 room(Mark.Text t) {
    double back =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> t.width() / 2;
          case END -> t.width();
        };
    Motion2 motion = Motion2.turn(Math.toRadians(t.angle())).then(Motion2.shift(t.at()));
    return motion.apply(
        Polygon2.rectangle(
            -back,
            -t.size() * Lettering.DESCENT,
            Math.max(t.width(), 1e-3),
            t.size() * (Lettering.DESCENT + Lettering.CAP_HEIGHT)));
  }

  private static List<Mark.Text> texts(Drawing page) {
    return page.marks().stream()
        .filter(m -> m instanceof Mark.Text)
        .map(m -> (Mark.Text) m)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "60, 20, 10, 10",
    "60, 20, 60, 120",
    "90, 25, 5, 5",
    "90, 40, 12, 80",
    "110, 20, 30, 60",
    "40, 15, 90, 200",
    "30, 12, 5, 5",
    "120, 40, 4, 4"
  })
  void wordsLieOnThePageAndOnNothingElse(double side, double wall, double x, double y) {
    Laid laid = Papers.at(Papers.tray(side, wall), Papers.A4, x, y);
    for (Drawing page :
        TemplatePages.of(
            "Tray for the lantern walk", Order.usual(Unit.MM).telling(), laid, Template.PLAIN)) {
      List<Mark.Text> texts = texts(page);
      for (int i = 0; i < texts.size(); i++) {
        Polygon2 room = room(texts.get(i));
        assertThat(texts.get(i).size()).isGreaterThanOrEqualTo(Lettering.pt(8) - 1e-9);
        for (Vec2 corner : room.corners()) {
          assertThat(corner.x()).isBetween(0.0, page.width());
          assertThat(corner.y()).isBetween(0.0, page.height());
        }
        for (int j = 0; j < i; j++) {
          assertThat(Planar.sharedArea(room, room(texts.get(j))))
              .as(texts.get(i).content() + " on " + texts.get(j).content())
              .isLessThan(0.01);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"60, 20, 10, 10", "60, 20, 60, 120", "90, 25, 5, 5", "40, 15, 90, 200"})
  void wordsAndRulersKeepOffThePanels(double side, double wall, double x, double y) {
    Laid laid = Papers.at(Papers.tray(side, wall), Papers.A4, x, y);
    List<Drawing> pages =
        TemplatePages.of("Tray", Order.usual(Unit.MM).telling(), laid, Template.PLAIN);
    assertThat(pages).hasSize(1);
    int net = NetDrawing.of(laid, 0, NetDrawing.TEMPLATE).marks().size();
    List<Mark> added = pages.getFirst().marks().subList(net, pages.getFirst().marks().size());
    assertThat(added).hasSizeGreaterThan(100);
    for (Mark mark : added) {
      for (Polygon2 outline : outlines(laid.net())) {
        switch (mark) {
          case Mark.Text t -> assertThat(Planar.sharedArea(room(t), outline)).isZero();
          case Mark.Stroke s ->
              assertThat(
                      Planar.polygon(outline)
                          .intersects(
                              Planar.factory()
                                  .createLineString(
                                      s.points().stream()
                                          .map(Planar::coordinate)
                                          .toArray(Coordinate[]::new))))
                  .isFalse();
          case Mark.Fill _, Mark.Patch _, Mark.Circle _ -> {}
        }
      }
    }
  }

  private static List<Polygon2> outlines(Net net) {
    return net.panels().stream().map(p -> p.outline()).toList();
  }

  @Test
  void aFullSheetHasItsRulerOnAPanelAndItsWordsOnAPageMore() {
    Laid full = Papers.at(Papers.slitSquares(100), Papers.stock("Square", 202, 202), 1, 1);
    List<Drawing> pages =
        TemplatePages.of("Full", Order.usual(Unit.INCH).telling(), full, Template.PLAIN);
    assertThat(pages).hasSize(2);
    assertThat(texts(pages.get(0)).stream().map(Mark.Text::content)).contains("100 mm", "4 in");
    String words = String.join(" ", texts(pages.get(1)).stream().map(Mark.Text::content).toList());
    assertThat(words)
        .contains("Sheet 1 is full")
        .contains("no room for its title, legend and caution")
        .contains("7.95 × 7.95 in")
        .contains("away from yourself");
  }

  @Test
  void givesTheSheetInTheUnitOfTheDesign() {
    Laid laid = Papers.at(Papers.tray(40, 12), Papers.LETTER, 20, 20);
    String words =
        String.join(
            " ",
            texts(
                    TemplatePages.of("Tray", Order.usual(Unit.INCH).telling(), laid, Template.PLAIN)
                        .getFirst())
                .stream()
                .map(Mark.Text::content)
                .toList());
    assertThat(words).contains("Letter, 8 1/2 × 11 in").contains("Outside faces up");
  }

  @Test
  void letteringMeasuresAndWraps() {
    assertThat(Lettering.width("00", Mark.Weight.REGULAR, 10))
        .isEqualTo(Lettering.width("17", Mark.Weight.REGULAR, 10));
    assertThat(Lettering.printable("½ × 3\t灯\u0000")).isEqualTo("½ × 3 ? ");
    assertThat(Lettering.wrap("one two three", Mark.Weight.REGULAR, 10, 45))
        .allMatch(l -> Lettering.width(l, Mark.Weight.REGULAR, 10) <= 45)
        .hasSizeGreaterThan(1);
    assertThat(Lettering.wrap("w".repeat(50), Mark.Weight.BOLD, 4, 30))
        .allMatch(l -> Lettering.width(l, Mark.Weight.BOLD, 4) <= 30);
  }
}
