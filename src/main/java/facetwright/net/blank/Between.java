package facetwright.net.blank;

import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.draft.PanelDraft;
import facetwright.words.SaidTwice;
import java.util.List;

/** What is said of the lines between panels, and what it comes to. */
final class Between {
  private final List<PanelDraft> a;
  private final List<PanelDraft> b;
  private final Mark.Folded fold;
  private boolean met;

  /** Whether it is what counts somewhere, and what counts in its place. */
  private boolean counts;

  private Between later;

  Between(List<PanelDraft> a, List<PanelDraft> b, Mark.Folded fold) {
    this.a = a;
    this.b = b;
    this.fold = fold;
  }

  /** A line as it is between two panels, by all that is said. */
  static Line said(List<Between> all, Line line, PanelDraft one, PanelDraft other) {
    Line now = line;
    Between last = null;
    for (Between between : all) {
      if ((between.fold.kind() != null || !line.isCut()) && between.isOf(one, other)) {
        between.met = true;
        if (last != null) {
          last.giveWay(between);
        }
        last = between;
        now = between.of(now);
      }
    }
    if (last != null) {
      last.counts = true;
    }
    return now;
  }

  private Line of(Line line) {
    LineKind kind = fold.kind() == null ? line.kind() : fold.kind();
    return fold.fold() != null || line.isCut() || kind == LineKind.CUT
        ? line.as(kind, fold.fold() == null ? LineFold.FREE : fold.fold(), fold.site())
        : new Line(line.at(), kind, line.folds(), fold.site());
  }

  /** Of one line something else is said later: all that this says, or not. */
  private void giveWay(Between next) {
    boolean isAll =
        (next.fold.fold() != null || fold.fold() == null)
            && (next.fold.kind() != null || fold.kind() == null);
    if (isAll) {
      later = next;
    } else {
      counts = true;
    }
  }

  private boolean isOf(PanelDraft one, PanelDraft other) {
    return (a.contains(one) && b.contains(other)) || (a.contains(other) && b.contains(one));
  }

  /** Refuses what is said of no line, and notes what counts nowhere. */
  void tell(SaidTwice twice) {
    Ask.that(
        met,
        () ->
            Message.of(
                "no %s runs between the panels at %s and %s: give points on both sides of one",
                fold.kind() == null ? "score" : "line",
                Ask.place(fold.a().getFirst()),
                Ask.place(fold.b().getFirst())),
        fold.site());
    if (!counts) {
      twice.replaced("fold", "", fold.site(), later.fold.site());
    }
  }
}
