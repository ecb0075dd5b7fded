package facetwright.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Angles as makers write them: in degrees, "50 deg" or "50°". */
public final class Degrees {
  /** What stands behind a number that counts degrees. */
  public static final String SIGN = "°";

  private static final Pattern TEXT =
      Pattern.compile("([-+]?(?:\\d+\\.?\\d*|\\.\\d+))\\s*(?:°|deg|degs|degrees?)");

  private Degrees() {}

  /** Reads "50 deg", "50 degrees" or "50°"; empty for all that does not say that it is an angle. */
  public static Optional<Double> parse(String text) {
    Matcher angle = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
    return angle.matches() ? Optional.of(Double.valueOf(angle.group(1))) : Optional.empty();
  }
}
