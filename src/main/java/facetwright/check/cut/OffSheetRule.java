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
import facetwright.net.sheet.Stock;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Pieces that do not lie whole on a sheet. */
public final class OffSheetRule implements Rule {
  public static final String NAME = "off-sheet";

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.laid().fits()) {
      return List.of();
    }
    SheetMends sheets = new SheetMends(subject.laid(), subject.laid().kept());
    List<Mend> mends = sheets.mends();
    Message fix = sheets.fix();
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
}
