package facetwright.fold.touch;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A tree of upright boxes, each parted in the middle across its longer way, to find the pairs that
 * meet without asking every pair. For n boxes of which few meet it takes about n log n steps.
 */
final class BoxTree {
  private final Node root;

  /** A box. */
  static final class Box {
    private final double[] low;
    private final double[] high;

    private Box(double[] low, double[] high) {
      this.low = low;
      this.high = high;
    }

    /** The box round points, so much larger on each side, in mm. */
    static Box around(List<Vec3> points, double by) {
      double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
      double[] high = {
        Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
      };
      for (Vec3 p : points) {
        double[] parts = {p.x(), p.y(), p.z()};
        for (int k = 0; k < 3; k++) {
          low[k] = Math.min(low[k], parts[k] - by);
          high[k] = Math.max(high[k], parts[k] + by);
        }
      }
      return new Box(low, high);
    }

    /** The box round some of several. */
    private static Box around(List<Integer> numbers, List<Box> boxes) {
      double[] least = boxes.get(numbers.getFirst()).low.clone();
      double[] most = boxes.get(numbers.getFirst()).high.clone();
      for (int number : numbers) {
        Box box = boxes.get(number);
        for (int k = 0; k < 3; k++) {
          least[k] = Math.min(least[k], box.low[k]);
          most[k] = Math.max(most[k], box.high[k]);
        }
      }
      return new Box(least, most);
    }

    private boolean meets(Box other) {
      for (int k = 0; k < 3; k++) {
        if (low[k] > other.high[k] || other.low[k] > high[k]) {
          return false;
        }
      }
      return true;
    }

    private int longerWay() {
      int way = 0;
      for (int k = 1; k < 3; k++) {
        way = high[k] - low[k] > high[way] - low[way] ? k : way;
      }
      return way;
    }
  }

  /** Two boxes that meet; {@code a} is the smaller number. */
  record Pair(int a, int b) {}

  private sealed interface Node {
    Box box();

    record Leaf(int number, Box box) implements Node {}

    record Fork(Node left, Node right, Box box) implements Node {}
  }

  /** A tree over at least one box. */
  BoxTree(List<Box> boxes) {
    root = build(IntStream.range(0, boxes.size()).boxed().toList(), boxes);
  }

  private static Node build(List<Integer> numbers, List<Box> boxes) {
    if (numbers.size() == 1) {
      return new Node.Leaf(numbers.getFirst(), boxes.get(numbers.getFirst()));
    }
    Box box = Box.around(numbers, boxes);
    int way = box.longerWay();
    List<Integer> sorted = new ArrayList<>(numbers);
    sorted.sort(
        (i, j) -> {
          Box one = boxes.get(i);
          Box other = boxes.get(j);
          int order =
              Double.compare(one.low[way] + one.high[way], other.low[way] + other.high[way]);
          return order != 0 ? order : Integer.compare(i, j);
        });
    int middle = sorted.size() / 2;
    return new Node.Fork(
        build(sorted.subList(0, middle), boxes),
        build(sorted.subList(middle, sorted.size()), boxes),
        box);
  }

  /** All pairs of boxes that meet, touching ones too, in the order of their numbers. */
  List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    within(root, pairs);
    pairs.sort(Comparator.comparingInt(Pair::a).thenComparingInt(Pair::b));
    return pairs;
  }

  private static void within(Node node, List<Pair> pairs) {
    if (node instanceof Node.Fork(Node left, Node right, _)) {
      within(left, pairs);
      within(right, pairs);
      across(left, right, pairs);
    }
  }

  private static void across(Node one, Node two, List<Pair> pairs) {
    if (!one.box().meets(two.box())) {
      return;
    }
    if (one instanceof Node.Fork(Node left, Node right, _)) {
      across(two, left, pairs);
      across(two, right, pairs);
    } else if (two instanceof Node.Fork(Node left, Node right, _)) {
      across(one, left, pairs);
      across(one, right, pairs);
    } else if (one instanceof Node.Leaf(int a, _) && two instanceof Node.Leaf(int b, _)) {
      pairs.add(new Pair(Math.min(a, b), Math.max(a, b)));
    }
  }
}
