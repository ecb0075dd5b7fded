package facetwright.net;

import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Value;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * One flat region of a net.
 *
 * @param name what the maker calls it, such as "wall 3"
 * @param role what it is for
 * @param outline where it lies in the net, in mm
 * @param openings windows and holes, inside the outline and apart from each other
 * @param site where the script made it
 * @param onBlank where it was found on a blank; null for a panel that was made by itself
 * @param sides what scripts call each side of the outline; empty for one that they don't call
 */
public record Panel(
    String name,
    PanelRole role,
    Polygon2 outline,
    List<Opening> openings,
    Site site,
    OnBlank onBlank,
    List<String> sides)
    implements Serializable {

  public Panel {
    openings = List.copyOf(openings);
    sides = List.copyOf(sides);
  }

  /** One that was made by itself. */
  public Panel(String name, PanelRole role, Polygon2 outline, List<Opening> openings, Site site) {
    this(name, role, outline, openings, site, null, Collections.nCopies(outline.size(), ""));
  }

  /** What it is called, and where it lies where nobody named it. */
  public Value.Name called() {
    Value.Name called = Value.name(name);
    return onBlank == null || onBlank.isNamed() ? called : called.at(onBlank.spot());
  }

  /** The same, called so. */
  Panel named(String other) {
    return new Panel(other, role, outline, openings, site, onBlank, sides);
  }

  /** The same elsewhere, its openings with it. */
  Panel moved(Motion2 m) {
    return new Panel(
        name,
        role,
        m.apply(outline),
        openings.stream().map(o -> o.moved(m)).toList(),
        site,
        onBlank,
        sides);
  }

  /** As seen in a mirror; side 0 stays it. */
  Panel mirrored() {
    int n = sides.size();
    return new Panel(
        name,
        role,
        outline.mirrored(),
        openings.stream().map(Opening::mirrored).toList(),
        site,
        onBlank == null ? null : onBlank.mirrored(),
        IntStream.range(0, n).mapToObj(i -> sides.get(Polygon2.mirroredSide(i, n))).toList());
  }

  /** Card left after windows and holes are cut, in mm². */
  public double cardArea() {
    return outline.area() - openings.stream().mapToDouble(o -> o.outline().area()).sum();
  }

  /** The windows with paper or film behind them. */
  public List<Polygon2> panes() {
    return openings.stream().filter(o -> !o.behind().isEmpty()).map(Opening::outline).toList();
  }

  /** The panel as a region of the plane, openings taken out. */
  public Polygon region() {
    return Planar.polygon(outline, openings.stream().map(Opening::outline).toList());
  }

  /**
   * Where a panel was found on a blank, so that its maker finds it again: nobody drew it, but lines
   * round it.
   *
   * @param corners in mm from the blank's lower left corner, in the panel's order: clockwise of a
   *     panel that is the mirror image of what was drawn
   * @param isNamed whether the script names it, so that its name tells which it is
   */
  public record OnBlank(List<Vec2> corners, boolean isNamed) implements Serializable {
    /** How near to the place with the most room is near enough, in mm. */
    private static final double NEAR = 0.01;

    public OnBlank {
      corners = List.copyOf(corners);
    }

    /** Side {@code index} runs from corner {@code index} to the next. */
    public Segment2 side(int index) {
      return new Segment2(corners.get(index), corners.get((index + 1) % corners.size()));
    }

    /** Of the mirror image of its panel. */
    OnBlank mirrored() {
      int n = corners.size();
      return new OnBlank(
          IntStream.range(0, n).mapToObj(c -> corners.get(Polygon2.mirroredCorner(c, n))).toList(),
          isNamed);
    }

    /** A point inside it, rounded as far as there is room for. */
    public Value.Place spot() {
      Polygon2 outline = Polygon2.ofEitherSense(corners);
      Vec2 at = Planar.inmost(outline, List.of(), NEAR);
      double room = Double.POSITIVE_INFINITY;
      for (int i = 0; i < outline.size(); i++) {
        room = Math.min(room, outline.side(i).distance(at));
      }
      return new Value.Place(at.x(), at.y(), room);
    }
  }
}
