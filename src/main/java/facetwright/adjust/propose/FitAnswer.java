package facetwright.adjust.propose;

import facetwright.adjust.OnMarks;
import facetwright.adjust.Remark;
import facetwright.adjust.fit.FitWriting;
import facetwright.adjust.fit.Fitting;
import facetwright.adjust.fit.FittingText;
import facetwright.adjust.write.Written;
import facetwright.aim.Grid;
import facetwright.measure.Ruler;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.ToSet;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A fitting as a proposal. */
final class FitAnswer {
  private FitAnswer() {}

  static Proposal to(WhatIf what, Question.Fit asked) throws ScriptException {
    Design was = what.design();
    Fitting fitting = Fitting.of(what, asked.sheet(), asked.copies(), List.of(), asked.grid());
    FittingText text = new FittingText(was, fitting);
    List<Remark> remarks = new ArrayList<>();
    remarks.add(Remark.of(text.before()));
    text.after().stream().map(Remark::of).forEach(remarks::add);
    text.effect().stream().map(Remark::of).forEach(remarks::add);
    if (asked.grid() instanceof Grid.Marks(Ruler ruler, _)) {
      remarks.add(Remark.of(onMarks(was, fitting, text.isTurned(), ruler)));
    }
    Suggestions ways = ways(what, asked, fitting, text, remarks);
    remarks.addAll(ways.remarks());
    return new Proposal(fitting.isMet(), OfOutcome.dials(fitting.outcome()), remarks, ways.all());
  }

  private static String onMarks(Design was, Fitting fitting, boolean isTurned, Ruler ruler) {
    return OnMarks.text(toSet(was, ruler), toSet(fitting.design(), ruler), ruler, isTurned);
  }

  private static ToSet toSet(Design design, Ruler ruler) {
    return ToSet.of(design.net(), ScoreChart.of(design.net(), ruler));
  }

  private static Suggestions ways(
      WhatIf what, Question.Fit asked, Fitting fitting, FittingText text, List<Remark> remarks)
      throws ScriptException {
    Suggestions ways = new Suggestions(what);
    Map<String, String> settings = what.settings(fitting.outcome());
    String sheet = asked.sheet().name();
    boolean isOther = text.isOtherSheet() && fitting.isMet();
    if (isOther) {
      Written named = FitWriting.sheet(what, fitting);
      String turning = text.isTurned() ? "Turn the dials, and write " : "Write ";
      if (named.isThere()) {
        ways.write(turning + sheet + " into the script", settings, named);
      } else {
        remarks.add(
            Remark.of(
                "The script has its papers made for "
                    + what.design().laid().stock().name()
                    + " and "
                    + named.why()
                    + ": change its sheet there yourself."));
      }
    }
    if (text.isTurned()) {
      if (ways.all().isEmpty()) {
        ways.turn(settings);
      }
      ways.writeAll("Write it all into the script", FitWriting.of(what, fitting, asked.grid()));
    }
    return ways;
  }
}
