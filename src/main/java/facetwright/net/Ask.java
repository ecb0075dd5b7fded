package facetwright.net;

import facetwright.geom.Vec2;
import facetwright.words.Decimals;
import facetwright.words.Site;

/** Refuses nonsense at the call, naming the thing and its allowed range. */
public final class Ask {
  /** No measure of a net may be over this, in mm. */
  public static final double MOST_MM = 5000;

  private Ask() {}

  /** A length over 0, up to the given most. */
  public static double length(String what, double mm, double most, Site site) {
    if (!(mm > 0 && mm <= most)) {
      throw new NetException(
          what + " must be over 0 and at most " + text(most) + " mm, not " + text(mm) + " mm",
          site);
    }
    return mm;
  }

  public static double length(String what, double mm, Site site) {
    return length(what, mm, MOST_MM, site);
  }

  public static double between(
      String what, double value, double least, double most, String unit, Site site) {
    if (!(value >= least && value <= most)) {
      throw new NetException(
          what
              + " lies in "
              + text(least)
              + unit
              + " to "
              + text(most)
              + unit
              + ", not "
              + text(value)
              + unit,
          site);
    }
    return value;
  }

  public static int count(String what, int value, int least, int most, Site site) {
    if (value < least || value > most) {
      throw new NetException(what + " must be " + least + " to " + most + ", not " + value, site);
    }
    return value;
  }

  public static void that(boolean holds, String message, Site site) {
    if (!holds) {
      throw new NetException(message, site);
    }
  }

  /** A number as a maker reads it: no more than three decimals. */
  public static String text(double value) {
    return Decimals.places(value, 3);
  }

  /** A place in mm as a maker reads it. */
  public static String text(Vec2 place) {
    return "(" + text(place.x()) + ", " + text(place.y()) + ")";
  }
}
