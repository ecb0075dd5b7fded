package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Pieces that do not lie whole on a sheet. */
public final class OffSheetRule implements Rule {
  public static final String NAME = "off-sheet";

  /** Sizes by ISO 216 and ISO 269, which are not offered to who counts in inches. */
  private static final Pattern ISO = Pattern.compile("[ABC]\\d+");

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.laid().fits()) {
      return List.of();
    }
    Optional<SheetSize> larger = larger(subject.laid());
    List<Mend> mends = larger.<Mend>map(s -> new Mend.Sheet(s.name())).stream().toList();
    Message fix = fix(larger, percent(subject.laid()));
    List<Finding> found = new ArrayList<>();
    int[] piece = subject.net().pieceOfPanel();
    for (int n = 0; n < subject.net().pieces(); n++) {
      int number = n;
      List<Integer> panels =
          IntStream.range(0, piece.length).filter(p -> piece[p] == number).boxed().toList();
      Box2 box =
          panels.stream()
              .map(p -> subject.panel(p).outline().box())
              .reduce(Box2::union)
              .orElseThrow();
      if (!liesOnASheet(subject.laid(), box)) {
        int first = panels.getFirst();
        found.add(finding(subject, message(subject, box, first), fix, first, mends));
      }
    }
    if (found.isEmpty()) {
      found.add(
          new Finding(
                  NAME,
                  Finding.Severity.ERROR,
                  Message.of(
                      "The net does not fit the %s sheet with its margin of %s.",
                      subject.laid().stock().name(), Value.given(subject.laid().margin())),
                  fix,
                  new Place.WholeNet(),
                  Site.NONE,
                  mends)
              .telling(
                  Message.of("the net does not fit the %s sheet", subject.laid().stock().name())));
    }
    return found;
  }

  private static Finding finding(
      Subject subject, Message message, Message fix, int panel, List<Mend> mends) {
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            message,
            fix,
            new Place.AtPanel(panel),
            subject.panel(panel).site(),
            mends)
        .telling(
            Message.of(
                "the piece with %s does not fit the %s sheet",
                subject.name(panel), subject.laid().cardOf(panel).name()));
  }

  private static boolean liesOnASheet(Laid laid, Box2 box) {
    return laid.sheetBoxes().stream().anyMatch(sheet -> sheet.holds(box, LengthTolerance.FINE));
  }

  private static Message message(Subject subject, Box2 box, int first) {
    Stock stock = subject.laid().cardOf(first);
    List<Message> over = new ArrayList<>();
    double margin = subject.laid().margin();
    double wide = box.width() - (stock.width() - 2 * margin);
    double high = box.height() - (stock.height() - 2 * margin);
    if (wide > LengthTolerance.FINE.mm()) {
      over.add(Message.of("%s too wide", Value.length(wide)));
    }
    if (high > LengthTolerance.FINE.mm()) {
      over.add(Message.of("%s too high", Value.length(high)));
    }
    Message border =
        margin > 0
            ? Message.of(", with a margin of %s to stay clear of all round", Value.given(margin))
            : Message.EMPTY;
    return Message.of(
        "The piece with %s is %s wide and %s high; the %s sheet is %s wide and %s high%s%s.",
        subject.name(first),
        Value.length(box.width()),
        Value.length(box.height()),
        stock.name(),
        Value.length(stock.width()),
        Value.length(stock.height()),
        border,
        over.isEmpty() ? "" : Message.of(": %s", Message.join(" and ", over)));
  }

  private static Message fix(Optional<SheetSize> larger, int percent) {
    Message smaller =
        percent < 1
            ? Message.text("Make it smaller, or divide it into more pieces.")
            : Message.of(
                "Make it smaller, at %s or less of every length, tabs and borders too, or divide"
                    + " it into more pieces.",
                Value.share(percent / 100.0));
    return larger
        .map(size -> Message.of("Use a larger sheet: %s would do. %s", size.name(), smaller))
        .orElse(smaller);
  }

  /** The largest whole percentage of its size at which it fits; 0 where it is less than one. */
  private static int percent(Laid laid) {
    int fits = 0;
    int over = 100;
    while (over - fits > 1) {
      int tried = (fits + over) / 2;
      if (fits(laid, tried / 100.0)) {
        fits = tried;
      } else {
        over = tried;
      }
    }
    return fits;
  }

  /** Whether the net made smaller fits; a larger sheet for the net as it is comes to the same. */
  private static boolean fits(Laid laid, double scale) {
    Stock stock = laid.stock();
    double border = 2 * laid.margin();
    Stock larger =
        new Stock(
            stock.name(),
            (stock.width() - border) / scale,
            (stock.height() - border) / scale,
            stock.weight(),
            stock.caliper(),
            stock.grain());
    double gap = Math.min(SheetLayout.MOST_GAP, SheetLayout.USUAL_GAP / scale);
    return SheetLayout.lay(laid.net(), larger, 0, gap).fits();
  }

  /** The least named size on which it fits, of the same series where the sheet belongs to one. */
  private static Optional<SheetSize> larger(Laid laid) {
    Stock stock = laid.stock();
    String series = stock.name().replaceFirst("\\d+$", "");
    boolean inSeries =
        !series.equals(stock.name())
            && SheetSizes.list().stream().anyMatch(s -> s.name().equals(stock.name()));
    boolean isOfInches = !ISO.matcher(stock.name()).matches() && !stock.name().endsWith("mm");
    return SheetSizes.list().stream()
        .filter(s -> !isOfInches || !ISO.matcher(s.name()).matches())
        .filter(s -> !inSeries || s.name().replaceFirst("\\d+$", "").equals(series))
        .filter(s -> s.width() * s.height() > stock.width() * stock.height())
        .sorted(Comparator.comparingDouble(s -> s.width() * s.height()))
        .filter(s -> 2 * laid.margin() < Math.min(s.width(), s.height()))
        .filter(
            s ->
                SheetLayout.lay(
                        laid.net(), s.stock(stock.weight()), laid.margin(), SheetLayout.USUAL_GAP)
                    .fits())
        .findFirst();
  }
}
