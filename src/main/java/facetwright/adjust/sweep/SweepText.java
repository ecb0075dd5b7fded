package facetwright.adjust.sweep;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.geom.RoundOff;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.words.Count;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;

/** A sweep in words. */
public final class SweepText {
  private final Unit unit;

  /**
   * @param unit the design's
   */
  public SweepText(Unit unit) {
    this.unit = unit;
  }

  /** What heads each column of {@link #row}. */
  public static List<String> head(String dial) {
    return List.of(dial, "form", "tall", "wide", "deep", "gap", "sheet", "measures", "findings");
  }

  /** One step as a row of a table. */
  public List<String> row(Sweep sweep, Sweep.Sample step) {
    String value = step.typed() + (isNow(sweep, step) ? " (now)" : "");
    if (step.design().isEmpty()) {
      return List.of(value, "none", "", "", "", "", "", "", "");
    }
    Design design = step.design().get();
    FoldedForm form = design.folded();
    Measures m = form.measures();
    boolean known = form.closure() != Closure.NOT_SOLVED;
    return List.of(
        value,
        closure(design),
        known ? length(m.height()) : "?",
        known ? length(m.width()) : "?",
        known ? length(m.depth()) : "?",
        known ? new Length(form.gap()).text(unit) : "?",
        sheet(design),
        String.valueOf(step.measures()),
        findings(design));
  }

  /** What stands below a step's picture. */
  public List<String> below(Sweep.Sample step) {
    Design design = step.design().orElseThrow();
    FoldedForm form = design.folded();
    Measures m = form.measures();
    List<String> lines = new ArrayList<>();
    if (form.closure() == Closure.NOT_SOLVED) {
      lines.add("whether it closes is not known");
    } else {
      lines.add(
          length(m.height())
              + " tall, "
              + length(m.width())
              + " wide, "
              + closure(design)
              + (form.closure() == Closure.OPEN ? " by " + new Length(form.gap()).text(unit) : ""));
    }
    String findings = findings(design);
    lines.add(sheet(design) + (findings.isEmpty() ? "" : "; " + findings));
    return lines;
  }

  /** Whether a step is where the dial stands now. */
  public static boolean isNow(Sweep sweep, Sweep.Sample step) {
    return Math.abs(step.value() - sweep.dial().value()) < RoundOff.PART;
  }

  private static String closure(Design design) {
    FoldedForm form = design.folded();
    Verdict verdict = Verdict.of(design.laid(), form, design.findings());
    if (form.closes() && verdict.outcome() == Verdict.Outcome.FAILS) {
      return "not as meant";
    }
    return switch (form.closure()) {
      case CLOSES -> "closes";
      case CLOSES_WITH_STRAIN ->
          "closes, card bends " + Decimals.places(100 * form.strain(), 2) + " %";
      case FORGIVEN -> "closes to a hair";
      case OPEN -> "open";
      case IN_ITSELF -> "panels in each other";
      case NOT_SOLVED -> "not known";
    };
  }

  private static String sheet(Design design) {
    String sheets = design.laid().sheets() == 1 ? "" : design.laid().sheets() + " × ";
    return (design.laid().fits() ? "fits " : "not on ") + sheets + design.laid().stock().name();
  }

  private static String findings(Design design) {
    List<String> words = new ArrayList<>();
    for (Finding.Severity severity : Finding.Severity.values()) {
      long count = design.findings().stream().filter(f -> f.severity() == severity).count();
      String word =
          switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
          };
      if (count > 0) {
        words.add(Count.of(count, word));
      }
    }
    return String.join(", ", words);
  }

  private String length(double mm) {
    return new Length(mm).read(unit);
  }
}
