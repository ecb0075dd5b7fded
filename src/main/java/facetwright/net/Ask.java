package facetwright.net;

import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Decimals;
import facetwright.words.Site;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/** Refuses nonsense at the call, naming the thing and its allowed range. */
public final class Ask {
  /** No measure of a net may be over this, and none may be asked for, in mm: ten metres. */
  public static final double LONGEST = 10_000;

  /** A side of an outline may be no shorter, in mm: nothing that a knife can follow. */
  public static final double LEAST_SIDE = 0.01;

  /** A panel, a solid or a wrap has so many sides or columns round at least. */
  public static final int FEWEST_SIDES = 3;

  /** And at most: with more, a score would lie at every few millimetres of a common sheet. */
  public static final int MOST_SIDES = 64;

  private Ask() {}

  /** A length over 0, up to the given most. */
  public static double length(String what, double mm, double most, Site site) {
    if (!(mm > 0 && mm <= most)) {
      throw new NetException(
          Message.of(
              "%s must be over 0 and at most %s, not %s",
              what, Value.atMost(most), Value.limit(mm)),
          site);
    }
    return mm;
  }

  public static double length(String what, double mm, Site site) {
    return length(what, mm, LONGEST, site);
  }

  /** A length from the one to the other, in mm. */
  public static double between(String what, double mm, double least, double most, Site site) {
    if (!(mm >= least && mm <= most)) {
      throw new NetException(
          Message.of(
              "%s lies in %s to %s, not %s",
              what, Value.atLeast(least), Value.atMost(most), Value.limit(mm)),
          site);
    }
    return mm;
  }

  /** An angle, in degrees. */
  public static double angle(String what, double degrees, double least, double most, Site site) {
    return between(what, degrees, least, most, d -> Message.text(text(d) + "°"), site);
  }

  /** A plain number. */
  public static double number(String what, double value, double least, double most, Site site) {
    return between(what, value, least, most, n -> Message.text(text(n)), site);
  }

  private static double between(
      String what,
      double value,
      double least,
      double most,
      DoubleFunction<Object> told,
      Site site) {
    if (!(value >= least && value <= most)) {
      throw new NetException(
          Message.of(
              "%s lies in %s to %s, not %s",
              what, told.apply(least), told.apply(most), told.apply(value)),
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

  /** The same in words with values. */
  public static void that(boolean holds, Supplier<Message> told, Site site) {
    if (!holds) {
      throw new NetException(told.get(), site);
    }
  }

  /** A number as a maker reads it: no more than three decimals. */
  public static String text(double value) {
    return Decimals.places(value, 3);
  }

  /** A place as a maker reads it. */
  public static Value place(Vec2 place) {
    return new Value.Place(place.x(), place.y(), 0);
  }
}
