package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;

import facetwright.geom.Vec2;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.PointKinds;

/** Where something lies: a place before the options, as {@code at} among them, or both. */
final class Placing {
  private Placing() {}

  /** The place before the options. */
  static Arg<Vec2> before() {
    return optional(
        "place", PointKinds.point(), "where it lies, counted from the middle; the same as at");
  }

  /** Both together, each left out where it is not given. */
  static Vec2 sum(Call call, Arg<Vec2> place, Arg<Vec2> at) {
    return or(call, place).plus(or(call, at));
  }

  /** A place; nowhere else than where it counts from where it is left out. */
  static Vec2 or(Call call, Arg<Vec2> place) {
    return call.has(place) ? call.get(place) : Vec2.ZERO;
  }
}
