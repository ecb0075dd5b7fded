package facetwright.papers.copies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.Stock;
import facetwright.papers.cutting.FromEdge;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Each sheet is cut again as the steps say. */
class PartingTest {
  private static final double GAP = 2;

  /** The widest division of the rulers tried, in mm. */
  private static final double MARKS = 25.4 / 16;

  private static Stock sheet(double width, double height) {
    return SheetSize.custom(width, height, Unit.MM).stock(220);
  }

  /** Follows the steps by themselves: what lies where in the end, group by group. */
  private static Set<Set<Integer>> cut(Stock stock, List<Box2> boxes, Parting parting) {
    List<Box2> parts = new ArrayList<>(List.of(new Box2(0, 0, stock.width(), stock.height())));
    for (Parting.Step step : parting.steps()) {
      for (Parting.Divided divided : step.parts()) {
        // What is cut lies ready: it came of a step before.
        Box2 rest = parts.stream().filter(p -> isSame(p, divided.box())).findFirst().orElseThrow();
        parts.remove(rest);
        for (double at : step.at()) {
          boolean isUp = step.way() == FromEdge.BOTTOM;
          double line = at + (isUp ? rest.minY() : rest.minX());
          for (Box2 box : boxes) {
            boolean isThere = rest.meets(box);
            double from = isUp ? box.minY() : box.minX();
            double to = isUp ? box.maxY() : box.maxX();
            assertThat(isThere && from < line - 1e-6 && to > line + 1e-6).isFalse();
          }
          parts.add(
              isUp
                  ? new Box2(rest.minX(), rest.minY(), rest.maxX(), line)
                  : new Box2(rest.minX(), rest.minY(), line, rest.maxY()));
          rest =
              isUp
                  ? new Box2(rest.minX(), line, rest.maxX(), rest.maxY())
                  : new Box2(line, rest.minY(), rest.maxX(), rest.maxY());
        }
        parts.add(rest);
      }
    }
    Set<Set<Integer>> groups = new HashSet<>();
    for (Box2 part : parts) {
      Set<Integer> group = new HashSet<>();
      for (int i = 0; i < boxes.size(); i++) {
        if (part.grown(1e-6).holds(boxes.get(i), LengthTolerance.FINE)) {
          group.add(i);
        }
      }
      groups.add(group);
    }
    return groups;
  }

  private static boolean isSame(Box2 a, Box2 b) {
    return Math.abs(a.minX() - b.minX()) < 1e-6
        && Math.abs(a.minY() - b.minY()) < 1e-6
        && Math.abs(a.maxX() - b.maxX()) < 1e-6
        && Math.abs(a.maxY() - b.maxY()) < 1e-6;
  }

  /** A sheet divided by chance from edge to edge is parted whole, on marks of the ruler. */
  @Property(tries = 60, seed = "20261210")
  void whatStraightCutsMadeTheyPart(@ForAll @IntRange(min = 1, max = 10_000) int seed) {
    Random chance = new Random(seed);
    Stock stock = sheet(200 + chance.nextInt(200), 200 + chance.nextInt(200));
    List<Box2> boxes = new ArrayList<>();
    divide(new Box2(0, 0, stock.width(), stock.height()), 2 + chance.nextInt(8), chance, boxes);
    Ruler ruler = chance.nextBoolean() ? Ruler.HALF_MM : Ruler.SIXTEENTHS;
    Parting parting = Parting.of(stock, boxes, ruler);
    assertThat(parting.together()).isEmpty();
    Set<Set<Integer>> each = new HashSet<>();
    for (int i = 0; i < boxes.size(); i++) {
      each.add(Set.of(i));
    }
    assertThat(cut(stock, boxes, parting)).isEqualTo(each);
    assertThat(parting.lines()).hasSize(boxes.size() - 1);
    for (Parting.Step step : parting.steps()) {
      for (Parting.Divided part : step.parts()) {
        double edge = step.way() == FromEdge.BOTTOM ? part.box().minY() : part.box().minX();
        for (double at : step.at()) {
          edge += at;
          // Where two gaps come to lie in one line, what both leave may be less than a division.
          boolean isWide = free(boxes, part.box(), step.way(), edge) >= MARKS;
          if (isWide) {
            assertThat(Math.abs(ruler.read(new Length(at)).errorMm())).isLessThan(1e-6);
          }
        }
      }
    }
  }

  /** How wide the gap is in which a cut lies. */
  private static double free(List<Box2> boxes, Box2 part, FromEdge way, double line) {
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (Box2 box : boxes) {
      if (box.meets(part)) {
        double end = way == FromEdge.BOTTOM ? box.maxY() : box.maxX();
        double start = way == FromEdge.BOTTOM ? box.minY() : box.minX();
        from = end <= line + 1e-6 ? Math.max(from, end) : from;
        to = start >= line - 1e-6 ? Math.min(to, start) : to;
      }
    }
    return to - from;
  }

  private static void divide(Box2 part, int into, Random chance, List<Box2> boxes) {
    boolean isUp = part.height() > part.width();
    double size = isUp ? part.height() : part.width();
    if (into < 2 || size < 30) {
      boxes.add(part.grown(-GAP / 2));
      return;
    }
    double at = size * (0.3 + 0.4 * chance.nextDouble());
    int first = 1 + chance.nextInt(into - 1);
    divide(
        isUp
            ? new Box2(part.minX(), part.minY(), part.maxX(), part.minY() + at)
            : new Box2(part.minX(), part.minY(), part.minX() + at, part.maxY()),
        first,
        chance,
        boxes);
    divide(
        isUp
            ? new Box2(part.minX(), part.minY() + at, part.maxX(), part.maxY())
            : new Box2(part.minX() + at, part.minY(), part.maxX(), part.maxY()),
        into - first,
        chance,
        boxes);
  }

  // Four round a fifth, each reaching past the next: the least that no straight cut parts.
  @Test
  void aPinwheelStaysTogether() {
    List<Box2> wheel =
        List.of(
            new Box2(0, 0, 60, 28),
            new Box2(62, 0, 90, 60),
            new Box2(30, 62, 90, 90),
            new Box2(0, 30, 28, 90),
            new Box2(30, 30, 60, 60));
    Parting parting = Parting.of(sheet(90, 90), wheel, Ruler.MM);
    assertThat(parting.steps()).isEmpty();
    assertThat(parting.together()).containsExactly(List.of(0, 1, 2, 3, 4));
    assertThat(new PartingText(parting, Order.usual(Unit.MM)).lines()).isEmpty();
    // Beside a sixth, what can be is parted.
    List<Box2> more = new ArrayList<>(wheel);
    more.add(new Box2(92, 0, 120, 90));
    Parting some = Parting.of(sheet(120, 90), more, Ruler.MM);
    assertThat(some.lines()).hasSize(1);
    assertThat(new PartingText(some, Order.usual(Unit.MM)).lines())
        .containsExactly(
            "1. The whole sheet at 91 mm from the left: 1 + 2 + 3 + 4 + 5 | 6.",
            "1 + 2 + 3 + 4 + 5: no straight cut comes between these, part them with a knife.");
  }

  /** Equal parts are cut in one go, and a stop is set once for equal cuts. */
  @Test
  void rowsAndColumnsTakeTwoSettings() {
    List<Box2> boxes = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 2; column++) {
        double x = 1 + 100 * column;
        double y = 1 + 80 * row;
        boxes.add(new Box2(x, y, x + 98, y + 78));
      }
    }
    Parting parting = Parting.of(sheet(200, 240), boxes, Ruler.MM);
    assertThat(new PartingText(parting, Order.usual(Unit.MM)).lines())
        .containsExactly(
            "1. The whole sheet 2 times at 80 mm from the bottom, each from the fresh edge:"
                + " 1 + 2 | 3 + 4 | 5 + 6.",
            "2. Each of 1 + 2, 3 + 4, 5 + 6 at 100 mm from the left: 1 | 2; 3 | 4; 5 | 6.");
    double all = parting.lines().stream().mapToDouble(Segment2::length).sum();
    assertThat(all).isCloseTo(2 * 200 + 3 * 80, within(1e-6));
  }
}
