package facetwright.net.sheet;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.words.Mend;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sheets that go by a name.
 *
 * <p>ISO sizes follow ISO 216 (A and B) and ISO 269 (C): each next size halves the longer side of
 * the one before, rounded down to a whole millimetre. United States sizes are in inches: the common
 * ones and ANSI/ASME Y14.1 from memory; the architectural and the craft sizes (such as 12x12) are
 * common practice, no source.
 */
public final class SheetSizes {
  private static final List<SheetSize> ALL = all();
  private static final int NEAR_NAMES = 4;
  private static final Pattern SIDES = Pattern.compile("(.+?)\\s*[x×]\\s*(.+)");
  private static final Pattern NO_UNIT = Pattern.compile(".*\\d\\s*");

  private SheetSizes() {}

  /** Every named size, in a fixed order. */
  public static List<SheetSize> list() {
    return ALL;
  }

  /**
   * The size with this name; capitals, spaces and hyphens do not matter.
   *
   * @throws IllegalArgumentException when there is none; the message lists near names
   */
  public static SheetSize named(String name) {
    String wanted = key(name);
    return ALL.stream()
        .filter(s -> key(s.name()).equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(unknown(name)));
  }

  /**
   * A sheet by its name, or by its two sides, such as "8.5 x 11 in" or "200 x 300".
   *
   * @throws IllegalArgumentException when there is no such sheet
   */
  public static SheetSize read(String text, Unit unit) {
    Matcher sides = SIDES.matcher(text.strip());
    try {
      return named(text);
    } catch (IllegalArgumentException e) {
      Optional<Length> second =
          sides.matches() ? length(sides.group(2), unit) : Optional.<Length>empty();
      if (second.isEmpty()) {
        throw e;
      }
      boolean plain = NO_UNIT.matcher(sides.group(1)).matches();
      String tail = sides.group(2).replaceFirst("^[\\d.,/\\s-]+", "");
      Optional<Length> first = length(plain ? sides.group(1) + tail : sides.group(1), unit);
      if (first.isEmpty()) {
        throw e;
      }
      Unit named = Unit.named(tail.strip().toLowerCase(Locale.ROOT).replace(".", "")).orElse(unit);
      return SheetSize.custom(first.get().mm(), second.get().mm(), named);
    }
  }

  private static Optional<Length> length(String text, Unit unit) {
    try {
      return Optional.of(Length.parse(text, unit));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The change to the nearest name; none where none is near. */
  public static List<Mend> mends(String name) {
    return NearName.mends(name, ALL.stream().map(SheetSize::name).toList());
  }

  private static String unknown(String name) {
    String wanted = key(name);
    List<String> near =
        ALL.stream()
            .map(SheetSize::name)
            .filter(n -> NearName.distance(wanted, key(n)) <= 1 + key(n).length() / 4)
            .sorted(
                (a, b) ->
                    Integer.compare(
                        NearName.distance(wanted, key(a)), NearName.distance(wanted, key(b))))
            .limit(NEAR_NAMES)
            .toList();
    String quoted = name.length() > 40 ? name.substring(0, 37) + "..." : name;
    return near.isEmpty()
        ? "no sheet is called \""
            + quoted
            + "\": try \"A4\", \"Letter\", \"12x12\", or give its size"
        : "no sheet is called \"" + quoted + "\": did you mean " + String.join(", ", near) + "?";
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replace('×', 'x').replaceAll("[\\s_-]", "");
  }

  private static List<SheetSize> all() {
    List<SheetSize> sizes = new ArrayList<>();
    iso(sizes, "A", 841, 1189);
    iso(sizes, "B", 1000, 1414);
    iso(sizes, "C", 917, 1297);
    inches(sizes, "Letter", 8.5, 11);
    inches(sizes, "Legal", 8.5, 14);
    inches(sizes, "Tabloid", 11, 17);
    inches(sizes, "Ledger", 17, 11);
    inches(sizes, "Executive", 7.25, 10.5);
    inches(sizes, "Statement", 5.5, 8.5);
    inches(sizes, "ANSI A", 8.5, 11);
    inches(sizes, "ANSI B", 11, 17);
    inches(sizes, "ANSI C", 17, 22);
    inches(sizes, "ANSI D", 22, 34);
    inches(sizes, "ANSI E", 34, 44);
    inches(sizes, "ANSI F", 28, 40);
    inches(sizes, "Arch A", 9, 12);
    inches(sizes, "Arch B", 12, 18);
    inches(sizes, "Arch C", 18, 24);
    inches(sizes, "Arch D", 24, 36);
    inches(sizes, "Arch E", 36, 48);
    inches(sizes, "Arch E1", 30, 42);
    for (int side : new int[] {6, 8, 12}) {
      inches(sizes, side + "x" + side, side, side);
    }
    inches(sizes, "4x6", 4, 6);
    inches(sizes, "5x7", 5, 7);
    inches(sizes, "12x18", 12, 18);
    inches(sizes, "13x19", 13, 19);
    return List.copyOf(sizes);
  }

  private static void iso(List<SheetSize> sizes, String series, int width, int height) {
    int w = width;
    int h = height;
    for (int i = 0; i <= 10; i++) {
      sizes.add(new SheetSize(series + i, w, h));
      int half = h / 2;
      h = w;
      w = half;
    }
  }

  private static void inches(List<SheetSize> sizes, String name, double width, double height) {
    sizes.add(new SheetSize(name, mm(width), mm(height)));
  }

  /** Quarter inches are whole hundredths of a millimetre: rounding noise is taken off. */
  private static double mm(double inches) {
    return Math.rint(inches * Unit.INCH.mm() * 1000) / 1000;
  }
}
