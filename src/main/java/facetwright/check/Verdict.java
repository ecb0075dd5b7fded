package facetwright.check;

import facetwright.check.closing.CauseRule;
import facetwright.check.closing.FoldFlatRule;
import facetwright.check.closing.InTheWay;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Subject;
import facetwright.check.fit.FitRule;
import facetwright.check.fit.SwingRule;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.PanelStrain;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.touch.Collision;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.words.Count;
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

  /** Whether a form closes and can be made; unknown where nothing determines that. */
  public static Outcome outcome(Net net, FoldedForm form) {
    return form.closure() == Closure.NOT_SOLVED
        ? Outcome.UNKNOWN
        : form.canBeMade(net) ? Outcome.CLOSES : Outcome.FAILS;
  }

  /** What it comes to; the {@link #text words} begin with "Closes" where it closes, only there. */
  public Outcome outcome() {
    return because().isPresent() || !against().isEmpty()
        ? Outcome.FAILS
        : outcome(subject.net(), form);
  }

  /** What is found that keeps it from closing or from being made; empty where it closes. */
  public Optional<Finding> cause() {
    return outcome() == Outcome.CLOSES
        ? Optional.empty()
        : because()
            .or(() -> findings.stream().filter(f -> OF_CLOSING.contains(f.rule())).findFirst())
            .or(() -> against().stream().findFirst());
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
    return findings.stream().filter(f -> CauseRule.NAMES.contains(f.rule())).findFirst();
  }

  /** What can't be as it is meant, whether it closes or not, the first to mend first. */
  private List<Finding> against() {
    return findings.stream()
        .filter(f -> f.severity() == Finding.Severity.ERROR)
        .filter(f -> !CauseRule.NAMES.contains(f.rule()) && !OF_CLOSING.contains(f.rule()))
        .toList();
  }

  private Message words() {
    return leading().map(this::asMeant).orElseGet(this::folding);
  }

  /** What its words begin with, where that is no matter of folding. */
  Optional<Finding> leading() {
    boolean isOfFolding = because().isPresent() || outcome(subject.net(), form) == Outcome.FAILS;
    return isOfFolding ? Optional.empty() : against().stream().findFirst();
  }

  private Message asMeant(Finding first) {
    int others = against().size() - 1;
    return Message.of(
        "Can't be made as meant: %s%s. %s",
        first.told(), others == 0 ? "" : "; and " + Count.of(others, "other fault"), beside());
  }

  /** How it folds, where something else keeps it from being as it is meant. */
  private Message beside() {
    return switch (form.closure()) {
      case CLOSES_WITH_STRAIN -> Message.of("It comes together if %s.", bends());
      case FORGIVEN -> Message.of("It comes together: %s.", hardly());
      case NOT_SOLVED -> Message.of("Nor is it known whether it closes, because %s.", free());
      case CLOSES, OPEN, IN_ITSELF -> Message.of("%s.", joined()).capital();
    };
  }

  /** Whether it closes, and why not: the cause where one is known, however near the joins come. */
  private Message folding() {
    return told().orElseGet(this::closing);
  }

  private Message closing() {
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
    List<Message> goes = new ArrayList<>(FitRule.fits(subject));
    goes.addAll(SwingRule.words(subject));
    Message fits = goes.isEmpty() ? Message.EMPTY : Message.of("; %s", Message.join("; ", goes));
    return Message.of("Closes: %s%s.", joined(), fits);
  }

  private Message joined() {
    return form.gaps().isEmpty()
        ? Message.text("it has no joins that could miss")
        : Message.of("every join meets to within %s", within(form));
  }

  /** How near the joins of a form come, to the finest that is told. */
  public static Value within(FoldedForm form) {
    return Value.within(Math.max(FINE, Math.ceil(form.gap() / FINE) * FINE));
  }

  private Message strained() {
    return withTab().orElseGet(() -> Message.of("Closes if %s.", bends()));
  }

  private Message bends() {
    PanelStrain worst = form.worst().orElseThrow();
    return Message.of(
        "the card bends by %s in %s; card forgives %s",
        Value.share(worst.part()), subject.name(worst.panel()), forgiven());
  }

  private Message forgivenMiss() {
    return withTab().orElseGet(() -> Message.of("Closes: %s.", hardly()));
  }

  private Message hardly() {
    return Message.of("%s, less than a steady hand holds when cutting", miss());
  }

  private Message open() {
    return Message.of(
        "Does not close: %s.%s",
        miss(),
        form.worst()
            .map(
                w ->
                    Message.of(
                        " The joins would meet if the card bent by %s in %s, but it forgives %s.",
                        Value.shareOver(w.part()), subject.name(w.panel()), forgiven()))
            .orElse(Message.EMPTY));
  }

  /** What keeps it from closing, where that is known. */
  private Optional<Message> told() {
    return because().map(f -> Message.of("Does not close: %s.", f.verdict()));
  }

  private Message inItself() {
    return Message.of(
        "Does not close: every join meets, but %s.",
        form.locked().stream()
            .findFirst()
            .map(f -> FoldFlatRule.words(subject, f))
            .or(() -> worst().map(this::met))
            .orElseThrow());
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

  private Message miss() {
    return Miss.words(subject);
  }

  private Message notKnown() {
    return Message.of(
        "Not known: it can't be told whether it closes, because %s%s.",
        free(),
        findings.stream()
            .filter(f -> f.rule().equals("pinched-in-turn"))
            .findFirst()
            .map(f -> Message.of(": %s", f.verdict()))
            .orElse(Message.EMPTY));
  }

  /** What nothing determines. */
  private Message free() {
    List<Integer> open = form.free();
    int others = open.size() - 1;
    return Message.of(
        "nothing determines how far to fold %s%s",
        subject.name(subject.net().scores().get(open.getFirst())),
        others == 0 ? "" : others == 1 ? " and one other" : Message.of(" and %s others", others));
  }

  /** How far card may bend. */
  public static Value forgiven() {
    return Value.share(SolverSettings.USUAL.card().forgivenStrain());
  }
}
