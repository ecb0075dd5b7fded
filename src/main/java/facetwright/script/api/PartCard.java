package facetwright.script.api;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.script.sandbox.CallException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a part is cut from, as far as the script says so, and how often it is made.
 *
 * @param size of its sheet
 * @param weight in g/m²
 * @param caliper in mm
 * @param colour what its maker calls it by; empty where not said
 * @param count how many of it are made, at least 1
 */
public record PartCard(
    Optional<SheetSize> size,
    Optional<Double> weight,
    Optional<Double> caliper,
    String colour,
    int count) {
  /** The most of one part that a design is made of. */
  public static final int MOST = 50;

  /** The options by which parts of every kind say so. */
  public record Options(
      Arg<Integer> count,
      Arg<String> sheet,
      Arg<Double> weight,
      Arg<Double> caliper,
      Arg<String> colour) {
    public static Options fresh() {
      return new Options(
          usual("count", Kinds.count(1, MOST), 1, "how many of it are made"),
          optional(
              "sheet",
              Kinds.text(SheetSizes.list().stream().map(SheetSize::name).toList()),
              "the size of sheet it is cut from, where that is not the design's: \"A4\""),
          optional(
              "weight",
              Kinds.number(40, 1_000),
              "grams per square metre of its card, where that is not the design's"),
          optional(
              "caliper",
              Kinds.length(0.01, 5),
              "how thick its card is, where that is not the design's"),
          optional("colour", Kinds.text(), "the colour of its card: \"navy\""));
    }

    public PartCard read(Call call) {
      Optional<SheetSize> size = Optional.empty();
      if (call.has(sheet)) {
        try {
          size = Optional.of(SheetSizes.named(call.get(sheet)));
        } catch (IllegalArgumentException e) {
          throw new CallException(
              "sheet: " + e.getMessage(), "", SheetSizes.mends(call.get(sheet)));
        }
      }
      return new PartCard(
          size,
          Optional.ofNullable(call.get(weight)),
          Optional.ofNullable(call.get(caliper)),
          call.has(colour) ? call.get(colour) : "",
          call.get(count));
    }

    /** All of them, after others. */
    public Arg<?>[] after(Arg<?>... others) {
      List<Arg<?>> all = new ArrayList<>(List.of(others));
      all.addAll(List.of(count, sheet, weight, caliper, colour));
      return all.toArray(Arg<?>[]::new);
    }
  }

  /** The same card, so many made. */
  public PartCard counted(int made) {
    return new PartCard(size, weight, caliper, colour, made);
  }

  /** Whether it is cut from a card of its own. */
  public boolean isOwn() {
    return size.isPresent() || weight.isPresent() || caliper.isPresent() || !colour.isEmpty();
  }

  /** How thick its card is, in mm; NaN where that is not said. */
  public double thick() {
    return thick(caliper.orElse(null), weight.orElse(null));
  }

  /** How thick a card is of which so much is said, in mm; NaN where nothing is. */
  public static double thick(Double caliper, Double weight) {
    return caliper != null ? caliper : weight != null ? Stock.usualCaliper(weight) : Double.NaN;
  }

  /** Its card, on the sheet of another where none is named. */
  public Stock on(Stock other) {
    double gsm = weight.orElse(other.weight());
    double mm = Double.isNaN(thick()) ? other.caliper() : thick();
    return size.map(s -> s.stock(gsm, mm, Stock.Grain.UNKNOWN))
        .orElse(other)
        .of(gsm, mm, colour.isEmpty() ? other.colour() : colour);
  }
}
