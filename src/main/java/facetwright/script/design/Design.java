package facetwright.script.design;

import facetwright.check.finding.Finding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Moments;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.words.Spoken;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything one script and its dials come to, as one value. Windows and commands only show it.
 *
 * @param title what the design is called
 * @param unit what its plain numbers count
 * @param header who made it and under what licence
 * @param dials its dials, in the order the script declares them
 * @param laid the net on its sheets
 * @param folded the folded form
 * @param findings what a maker should know
 * @param moments of what goes in or on, as they were reckoned to find that; none where it was not
 *     looked for
 * @param said what the script said on its way, line by line
 * @param spoken for each panel of the net how the script speaks of it
 */
public record Design(
    String title,
    Unit unit,
    Header header,
    List<Dial> dials,
    Laid laid,
    FoldedForm folded,
    List<Finding> findings,
    List<Moments.Found> moments,
    List<String> said,
    List<Spoken> spoken)
    implements Serializable {

  public Design {
    dials = List.copyOf(dials);
    findings = List.copyOf(findings);
    moments = List.copyOf(moments);
    said = List.copyOf(said);
    spoken = List.copyOf(spoken);
  }

  /** The same with what was found in it. */
  public Design found(List<Finding> newFindings) {
    return new Design(title, unit, header, dials, laid, folded, newFindings, moments, said, spoken);
  }

  /** The same with one line more that is said, after those of the script. */
  public Design saying(String line) {
    List<String> all = new ArrayList<>(said);
    all.add(line);
    return new Design(title, unit, header, dials, laid, folded, findings, moments, all, spoken);
  }

  /** The same with the moments reckoned for an order of gluing that was looked at. */
  public Design reckoned(GlueOrder order) {
    List<Moments.Found> all = folded.closure() == Closure.NOT_SOLVED ? moments : order.moments();
    return new Design(title, unit, header, dials, laid, folded, findings, all, said, spoken);
  }

  /** In which order it is made up. */
  public GlueOrder gluing() {
    return GlueOrder.of(net(), folded, moments);
  }

  public Net net() {
    return laid.net();
  }

  /** Whether a finding says that it can't be made as it stands. */
  public boolean isSound() {
    return findings.stream().noneMatch(f -> f.severity() == Finding.Severity.ERROR);
  }

  /**
   * What the comment block at the head of a script says.
   *
   * @param author who made it, or empty
   * @param licence how it may be used, or empty
   * @param tags what to find it by
   * @param notes free words, or empty
   */
  public record Header(String author, String licence, List<String> tags, String notes)
      implements Serializable {
    public Header {
      tags = List.copyOf(tags);
    }
  }
}
