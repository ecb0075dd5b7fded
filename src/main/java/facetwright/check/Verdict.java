package facetwright.check;

import facetwright.check.closing.CauseRule;
import facetwright.check.closing.FoldFlatRule;
import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.check.fit.FitRule;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Laps;
import facetwright.fold.pose.PanelStrain;
import facetwright.fold.pose.ScoreGap;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.touch.Collision;
import facetwright.measure.LengthWords;
import facetwright.measure.Unit;
import facetwright.net.Join;
import facetwright.net.sheet.Laid;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether a form closes, in a sentence or two for its maker. */
public final class Verdict {
  /** The finest distance worth telling, in mm. */
  private static final double FINE = 0.001;

  private final Subject subject;
  private final FoldedForm form;

  private Verdict(Subject subject) {
    this.subject = subject;
    this.form = subject.folded();
  }

  /**
   * The words for a net on its sheets and the same net folded.
   *
   * @param unit what its lengths are told in
   */
  public static String of(Laid laid, FoldedForm folded, Unit unit) {
    Verdict verdict = new Verdict(new Subject(laid, folded));
    return LengthWords.in(unit, verdict.words());
  }

  private String words() {
    return switch (form.closure()) {
      case CLOSES -> closes();
      case CLOSES_WITH_STRAIN -> strained();
      case FORGIVEN -> forgivenMiss();
      case OPEN -> open();
      case IN_ITSELF -> inItself();
      case NOT_SOLVED -> notKnown();
    };
  }

  private String closes() {
    return withTab().orElseGet(this::meets);
  }

  /** What of tabs, which can be cut otherwise, keeps a form that closes from being made. */
  private Optional<String> withTab() {
    return worst().map(c -> "Can't be made as it stands: every join meets, but " + met(c) + ".");
  }

  private String meets() {
    String fits = FitRule.words(subject).map(w -> ", but " + w).orElse("");
    if (form.gaps().isEmpty()) {
      return "Closes: it has no joins that could miss" + fits + ".";
    }
    double within = Math.max(FINE, Math.ceil(form.gap() / FINE) * FINE);
    return "Closes: every join meets to within " + Mm.fine(within) + " mm" + fits + ".";
  }

  private String strained() {
    PanelStrain worst = form.worst().orElseThrow();
    return withTab()
        .orElseGet(
            () ->
                String.format(
                    "Closes if the card bends by %s in %s; card forgives %s.",
                    Mm.percent(worst.part()), subject.name(worst.panel()), forgiven()));
  }

  private String forgivenMiss() {
    return withTab()
        .orElseGet(() -> "Closes: " + miss() + ", less than a steady hand holds when cutting.");
  }

  private String open() {
    return cause()
        .orElseGet(
            () ->
                "Does not close: "
                    + miss()
                    + "."
                    + form.worst()
                        .map(
                            w ->
                                String.format(
                                    " The joins would meet if the card bent by %s in %s, but it"
                                        + " forgives %s.",
                                    Mm.percentOver(w.part()), subject.name(w.panel()), forgiven()))
                        .orElse(""));
  }

  /** What keeps it from closing, where that is known. */
  private Optional<String> cause() {
    return CauseRule.first(subject).map(w -> "Does not close: " + w + ".");
  }

  private String inItself() {
    return cause()
        .orElseGet(
            () ->
                "Does not close: every join meets, but "
                    + worst()
                        .map(this::met)
                        .or(
                            () ->
                                form.locked().stream()
                                    .findFirst()
                                    .map(f -> FoldFlatRule.words(subject, f)))
                        .orElse("its pinched rows reach through each other")
                    + ".");
  }

  /** Of panels in each other's way those that are deepest in each other. */
  private Optional<Collision> worst() {
    Comparator<Collision> facets = Comparator.comparing(c -> !c.isOfTab(subject.net()));
    return form.obstacles(subject.net()).stream()
        .max(facets.thenComparing(Collision::isInOnePlace).thenComparingDouble(Collision::depth));
  }

  private String met(Collision c) {
    String both = subject.name(c.a()) + " and " + subject.name(c.b());
    return c.isInOnePlace()
        ? both + " lie in one place, for the card runs round more than once"
        : both + " pass through each other, " + Mm.text(c.depth()) + " deep";
  }

  /** What misses most, why where that is known, and how much else misses. */
  private String miss() {
    List<JoinGap> gaps =
        form.gaps().stream()
            .filter(g -> g.mm() > 0)
            .sorted(Comparator.comparingDouble(JoinGap::mm).reversed())
            .toList();
    Optional<ScoreGap> tear = form.tears().stream().max(Comparator.comparingDouble(ScoreGap::mm));
    double worst = form.gap();
    if (tear.isPresent() && tear.get().mm() >= worst) {
      return "the card would tear or buckle by "
          + Mm.text(tear.get().mm())
          + " at "
          + subject.name(subject.net().scores().get(tear.get().score()));
    }
    JoinGap first = gaps.getFirst();
    Join join = subject.net().joins().get(first.join());
    double uneven = SeamLengthsRule.difference(subject, join);
    long others = gaps.stream().skip(1).filter(g -> g.mm() > Mm.HAIR).count();
    return subject.name(join)
        + " misses by "
        + Mm.text(first.mm())
        + (join instanceof Join.Lap lap && Laps.isBeside(subject.net(), form, lap)
            ? ", for it lies beside it, not under it"
            : "")
        + (uneven > Mm.HAIR ? ", for its sides differ by " + Mm.text(uneven) : "")
        + (others == 0
            ? ""
            : others == 1
                ? ", and one other join misses too"
                : ", and " + others + " other joins miss too");
  }

  private String notKnown() {
    return cause().orElseGet(this::free);
  }

  /** What nothing determines. */
  private String free() {
    List<Integer> open = form.free();
    int others = open.size() - 1;
    return String.format(
        "Not known: it can't be told whether it closes, because nothing determines how far to fold"
            + " %s%s.",
        subject.name(subject.net().scores().get(open.getFirst())),
        others == 0 ? "" : others == 1 ? " and one other" : " and " + others + " others");
  }

  private static String forgiven() {
    return Mm.percent(SolverSettings.USUAL.card().forgivenStrain());
  }
}
