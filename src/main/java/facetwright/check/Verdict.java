package facetwright.check;

import facetwright.check.closing.FoldFlatRule;
import facetwright.check.closing.InTheWay;
import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.check.fit.FitRule;
import facetwright.check.fit.SwingRule;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Laps;
import facetwright.fold.pose.PanelStrain;
import facetwright.fold.pose.ScoreGap;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.touch.Collision;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether a form closes, in a sentence or two for its maker. */
public final class Verdict {
  /** The finest distance worth telling, in mm. */
  private static final double FINE = 0.001;

  /** What a verdict comes to. */
  public enum Outcome {
    CLOSES,
    /** It does not close, or can't be made as it stands. */
    FAILS,
    UNKNOWN
  }

  /** Rules on whether the form closes and can be made. */
  private static final Set<String> OF_CLOSING =
      Set.of(
          "seam-lengths",
          "gap",
          "tear",
          "fold-flat",
          "panel-through-panel",
          "tab-too-big",
          "not-solved");

  private final Subject subject;
  private final FoldedForm form;
  private final List<Finding> findings;

  private Verdict(Subject subject, List<Finding> findings) {
    this.subject = subject;
    this.form = subject.folded();
    this.findings = findings;
  }

  /**
   * The verdict on a net on its sheets and the same net folded.
   *
   * @param findings all that {@link Checks} found in them
   */
  public static Verdict of(Laid laid, FoldedForm folded, List<Finding> findings) {
    return new Verdict(new Subject(laid, folded), findings);
  }

  /**
   * The words where nothing was looked for yet.
   *
   * @param unit what its lengths are told in
   */
  public static String of(Laid laid, FoldedForm folded, Unit unit) {
    return of(laid, folded, Checks.all(laid, folded)).text(unit);
  }

  /** Whether a form closes and can be made; unknown where nothing determines that. */
  public static Outcome outcome(Net net, FoldedForm form) {
    return form.closure() == Closure.NOT_SOLVED
        ? Outcome.UNKNOWN
        : form.canBeMade(net) ? Outcome.CLOSES : Outcome.FAILS;
  }

  /** What it comes to; the {@link #text words} begin with "Closes" where it closes, only there. */
  public Outcome outcome() {
    Outcome outcome = outcome(subject.net(), form);
    return outcome == Outcome.UNKNOWN && because().isPresent() ? Outcome.FAILS : outcome;
  }

  /** What is found that keeps it from closing or from being made; empty where it closes. */
  public Optional<Finding> cause() {
    return outcome() == Outcome.CLOSES
        ? Optional.empty()
        : because()
            .or(() -> findings.stream().filter(f -> OF_CLOSING.contains(f.rule())).findFirst());
  }

  /**
   * In words.
   *
   * @param unit what its lengths are told in
   */
  public String text(Unit unit) {
    return words().text(unit);
  }

  private Optional<Finding> because() {
    return findings.stream()
        .filter(f -> !f.verdict().isEmpty() && !f.rule().equals(FitRule.NAME))
        .findFirst();
  }

  private Message words() {
    return switch (form.closure()) {
      case CLOSES -> closes();
      case CLOSES_WITH_STRAIN -> strained();
      case FORGIVEN -> forgivenMiss();
      case OPEN -> open();
      case IN_ITSELF -> inItself();
      case NOT_SOLVED -> notKnown();
    };
  }

  private Message closes() {
    return withTab().orElseGet(this::meets);
  }

  /** What of tabs, which can be cut otherwise, keeps a form that closes from being made. */
  private Optional<Message> withTab() {
    return worst()
        .map(this::met)
        .map(w -> Message.of("Can't be made as it stands: every join meets, but %s.", w));
  }

  private Message meets() {
    Message fits =
        findings.stream()
            .filter(f -> !f.verdict().isEmpty())
            .findFirst()
            .map(f -> Message.of(", but %s", f.verdict()))
            .orElse(Message.EMPTY);
    List<Message> goes = new ArrayList<>();
    if (fits.isEmpty()) {
      goes.addAll(FitRule.fits(subject));
      goes.addAll(SwingRule.words(subject));
    }
    fits = goes.isEmpty() ? fits : Message.of("; %s", Message.join("; ", goes));
    if (form.gaps().isEmpty()) {
      return Message.of("Closes: it has no joins that could miss%s.", fits);
    }
    double within = Math.max(FINE, Math.ceil(form.gap() / FINE) * FINE);
    return Message.of("Closes: every join meets to within %s%s.", Value.within(within), fits);
  }

  private Message strained() {
    PanelStrain worst = form.worst().orElseThrow();
    return withTab()
        .orElseGet(
            () ->
                Message.of(
                    "Closes if the card bends by %s in %s; card forgives %s.",
                    Value.share(worst.part()), subject.name(worst.panel()), forgiven()));
  }

  private Message forgivenMiss() {
    return withTab()
        .orElseGet(
            () -> Message.of("Closes: %s, less than a steady hand holds when cutting.", miss()));
  }

  private Message open() {
    return told()
        .orElseGet(
            () ->
                Message.of(
                    "Does not close: %s.%s",
                    miss(),
                    form.worst()
                        .map(
                            w ->
                                Message.of(
                                    " The joins would meet if the card bent by %s in %s, but it"
                                        + " forgives %s.",
                                    Value.shareOver(w.part()), subject.name(w.panel()), forgiven()))
                        .orElse(Message.EMPTY)));
  }

  /** What keeps it from closing, where that is known. */
  private Optional<Message> told() {
    return because().map(f -> Message.of("Does not close: %s.", f.verdict()));
  }

  private Message inItself() {
    return told()
        .orElseGet(
            () ->
                Message.of(
                    "Does not close: every join meets, but %s.",
                    form.locked().stream()
                        .findFirst()
                        .map(f -> FoldFlatRule.words(subject, f))
                        .or(() -> worst().map(this::met))
                        .orElseThrow()));
  }

  /** Of panels in each other's way those that are deepest in each other. */
  private Optional<Collision> worst() {
    Comparator<Collision> facets = Comparator.comparing(c -> !c.isOfTab(subject.net()));
    return form.obstacles(subject.net()).stream()
        .max(facets.thenComparing(Collision::isInOnePlace).thenComparingDouble(Collision::depth));
  }

  private Message met(Collision c) {
    return InTheWay.words(subject, c, subject::name);
  }

  /** What misses most, why where that is known, and how much else misses. */
  private Message miss() {
    List<JoinGap> gaps =
        form.gaps().stream()
            .filter(g -> g.mm() > 0)
            .sorted(Comparator.comparingDouble(JoinGap::mm).reversed())
            .toList();
    Optional<ScoreGap> tear = form.tears().stream().max(Comparator.comparingDouble(ScoreGap::mm));
    double worst = form.gap();
    if (tear.isPresent() && tear.get().mm() >= worst) {
      return Message.of(
          "the card would tear or buckle by %s at %s",
          Value.length(tear.get().mm()),
          subject.name(subject.net().scores().get(tear.get().score())));
    }
    JoinGap first = gaps.getFirst();
    Join join = subject.net().joins().get(first.join());
    double uneven = SeamLengthsRule.difference(subject, join);
    long others = gaps.stream().skip(1).filter(g -> g.mm() > Mm.HAIR).count();
    return Message.of(
        "%s misses by %s%s%s%s",
        subject.name(join),
        Value.length(first.mm()),
        join instanceof Join.Lap lap && Laps.isBeside(subject.net(), form, lap)
            ? ", for it lies beside it, not under it"
            : "",
        uneven > Mm.HAIR ? Message.of(", for its sides differ by %s", Value.length(uneven)) : "",
        others == 0
            ? ""
            : others == 1
                ? ", and one other join misses too"
                : Message.of(", and %s other joins miss too", others));
  }

  private Message notKnown() {
    return told().orElseGet(this::free);
  }

  /** What nothing determines. */
  private Message free() {
    List<Integer> open = form.free();
    int others = open.size() - 1;
    return Message.of(
        "Not known: it can't be told whether it closes, because nothing determines how far to fold"
            + " %s%s.",
        subject.name(subject.net().scores().get(open.getFirst())),
        others == 0 ? "" : others == 1 ? " and one other" : Message.of(" and %s others", others));
  }

  private static Value forgiven() {
    return Value.share(SolverSettings.USUAL.card().forgivenStrain());
  }
}
