package facetwright.script.api;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.net.Shapes;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.List;
import java.util.stream.Stream;

/** The shape of a window, as a script asks for it. */
public sealed interface WindowShape {
  /** The panel's own shape with an even border, in mm. */
  record Border(double border) implements WindowShape {}

  /** An outline about the panel's middle. */
  record Outline(Polygon2 outline) implements WindowShape {}

  /** The options by which a window's shape is given, fresh for each function that takes them. */
  static Options options() {
    return new Options(
        optional(
            "border", Kinds.length(), "card left all round, for a window of the panel's own shape"),
        optional("width", Kinds.length(), "width of a rectangle"),
        optional("height", Kinds.length(), "height of a rectangle"),
        optional(
            "sides",
            Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES),
            "for a shape with equal sides: how many"),
        optional(
            "across",
            Kinds.length(),
            "for a shape with equal sides: its size from corner to opposite corner"),
        optional("corners", PointKinds.corners(), "a free shape, its corners [x, y]"),
        optional("outline", Kinds.thing(Things.OUTLINE), "an outline, its middle at the place"),
        usual(
            "at",
            PointKinds.point(),
            Vec2.ZERO,
            "where its middle lies, counted from the panel's middle"));
  }

  /** The same shape moved. */
  default WindowShape moved(Vec2 by) {
    return switch (this) {
      case Border border -> border;
      case Outline(Polygon2 outline) -> new Outline(outline.taken(by::plus));
    };
  }

  /** The options by which a window's shape is given. */
  record Options(
      Arg<Double> border,
      Arg<Double> width,
      Arg<Double> height,
      Arg<Integer> sides,
      Arg<Double> across,
      Arg<List<Vec2>> corners,
      Arg<facetwright.net.outline.Outline> outline,
      Arg<Vec2> at) {

    public Arg<?>[] all() {
      return new Arg<?>[] {border, width, height, sides, across, corners, outline, at};
    }

    /** Whether any shape is given. */
    public boolean isGiven(Call call) {
      return Stream.of(border, width, height, sides, across, corners, outline).anyMatch(call::has);
    }

    public WindowShape read(Call call, String function) {
      boolean rectangle = call.has(width) && call.has(height);
      boolean regular = call.has(sides) && call.has(across);
      boolean half = call.has(width) != call.has(height) || call.has(sides) != call.has(across);
      int given =
          (call.has(border) ? 1 : 0)
              + (rectangle ? 1 : 0)
              + (regular ? 1 : 0)
              + (call.has(corners) ? 1 : 0)
              + (call.has(outline) ? 1 : 0);
      if (given != 1 || half) {
        throw new CallException(
            function + " needs one shape",
            "Give border, or width and height, or sides and across, or corners, or an outline.");
      }
      if (call.has(border)) {
        return new Border(call.get(border));
      }
      Vec2 middle = call.get(at);
      if (rectangle) {
        double w = call.get(width);
        double h = call.get(height);
        return new Outline(Polygon2.rectangle(middle.x() - w / 2, middle.y() - h / 2, w, h));
      }
      if (regular) {
        int n = call.get(sides);
        // A flat side at the bottom, as windows stand.
        double first = -Math.PI / 2 + Math.PI / n;
        return new Outline(Polygon2.regular(middle, n, call.get(across) / 2, first));
      }
      if (call.has(outline)) {
        return new Outline(call.get(outline).polygon().taken(middle::plus));
      }
      try {
        return new Outline(
            Shapes.outline(
                "a window", call.get(corners).stream().map(middle::plus).toList(), Site.NONE));
      } catch (NetException e) {
        throw new CallException(Message.of("%s: %s", function, e.told()), Message.EMPTY, List.of());
      }
    }
  }
}
