package facetwright.net;

import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.io.Serializable;

/**
 * Where and which way an opening was measured when it was asked for, such as from the middle of its
 * panel.
 *
 * @param into from there to where the opening lies now, apart from its size
 * @param scale how much larger it is than it was asked for, over 0
 * @param isMirrored whether it is the mirror image, left to right, of what was asked for
 */
public record Datum(Motion2 into, double scale, boolean isMirrored) implements Serializable {
  /** Measured where it lies. */
  public static final Datum HERE = of(Motion2.NONE);

  public static Datum of(Motion2 into) {
    return new Datum(into, 1, false);
  }

  /** A place as it was measured, in mm. */
  Vec2 measured(Vec2 place) {
    return isMirrored ? back(place).mirrored() : back(place);
  }

  /** An outline as it was measured, its first side first. */
  Polygon2 measured(Polygon2 outline) {
    Polygon2 back = outline.taken(this::back);
    return isMirrored ? back.mirrored() : back;
  }

  private Vec2 back(Vec2 place) {
    Vec2 d = place.minus(into.shift());
    return new Vec2(
            into.cos() * d.x() + into.sin() * d.y(), into.cos() * d.y() - into.sin() * d.x())
        .times(1 / scale);
  }

  /** Where a place lies that was measured so. */
  Vec2 place(Vec2 measured) {
    return into.apply((isMirrored ? measured.mirrored() : measured).times(scale));
  }

  /** Where an outline lies that was measured so. */
  Polygon2 place(Polygon2 measured) {
    return into.apply((isMirrored ? measured.mirrored() : measured).taken(c -> c.times(scale)));
  }

  /** The same when the panel is moved. */
  Datum then(Motion2 motion) {
    return new Datum(into.then(motion), scale, isMirrored);
  }

  /** The same of the panel's mirror image. */
  Datum mirrored() {
    return new Datum(
        new Motion2(into.cos(), -into.sin(), into.shift().mirrored()), scale, !isMirrored);
  }

  /** The same when the panel is made larger about its own origin. */
  Datum scaled(double factor) {
    return new Datum(
        new Motion2(into.cos(), into.sin(), into.shift().times(factor)),
        scale * factor,
        isMirrored);
  }
}
