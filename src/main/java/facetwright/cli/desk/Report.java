package facetwright.cli.desk;

import facetwright.aim.KnobMend;
import facetwright.check.Summary;
import facetwright.check.finding.Finding;
import facetwright.geom.Box2;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.design.DialText;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A design in words: the verdict first, then measures, then findings. */
public final class Report {
  private Report() {}

  public static List<String> lines(Design design) {
    return lines(design, Optional.empty());
  }

  /** With the turn of one dial that would help most, where it does not close. */
  public static List<String> lines(Design design, Optional<KnobMend> mend) {
    List<String> lines = new ArrayList<>();
    lines.add(design.title());
    lines.add("  " + Summary.of(design.laid(), design.folded(), design.findings(), design.unit()));
    mend.ifPresent(m -> lines.add("  " + m.text(design.unit())));
    if (!design.dials().isEmpty()) {
      lines.add(
          "  dials: "
              + design.dials().stream()
                  .map(d -> d.name() + " " + DialText.angled(d, d.value(), design.unit()))
                  .collect(Collectors.joining(", ")));
    }
    Net net = design.net();
    Box2 box = net.box();
    lines.add(
        String.format(
            Locale.ROOT,
            "  net: %s, %s, %s, %s, %s × %s",
            Count.of(net.pieces(), "piece"),
            Count.of(net.panels().size(), "panel"),
            Count.of(net.scores().size(), "score"),
            Count.of(net.cuts(), "cut"),
            text(box.width(), design.unit()),
            text(box.height(), design.unit())));
    for (Finding finding : design.findings()) {
      String place = finding.site().isKnown() ? finding.site().text() + ": " : "";
      lines.add(
          "  "
              + finding.severity().name().toLowerCase(Locale.ROOT)
              + ": "
              + place
              + finding.message());
      if (!finding.fix().isBlank()) {
        lines.add("    " + finding.fix());
      }
    }
    return lines;
  }

  /** As the maker's ruler reads it; "about" where it lies between two marks. */
  static String text(double mm, Unit unit) {
    return new Length(mm).read(unit);
  }
}
