package facetwright.bench;

import facetwright.check.Checks;
import facetwright.check.finding.Finding;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The demo design, warm: from its script, and the same geometry straight from Java. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {
      "--enable-native-access=ALL-UNNAMED",
      "--sun-misc-unsafe-memory-access=allow",
      "-Xmx1g"
    })
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 4, time = 3)
public class EvaluationBench {
  private String script;

  @Setup
  public void read() throws Exception {
    script = LibraryDesigns.text("harbour-lantern");
  }

  @Benchmark
  public Design fromScript() throws Exception {
    return Facetwright.evaluate("harbour-lantern.js", script, Map.of(), Budget.USUAL);
  }

  @Benchmark
  public List<Finding> straightFromJava() {
    Site at = Site.NONE;
    double side = 28;
    double wall = 60;
    WrapDraft body =
        WrapDraft.of(
                Collections.nCopies(8, side), WrapRow.usual(List.of(side, wall, wall, side)), at)
            .seam(12, at);
    body.all().columns("even", at).rows("rim", at).remove(at);
    body.all().columns("even", at).rows("wall", at).gusset(Pinch.IN, null, at);
    body.all().columns("odd", at).rows("rim", at).tabs(at).hole(3, at);
    body.all().columns("odd", at).rows("wall", at).layer(1.5, "wave paper", at);
    Net net = body.build();
    Stock stock = SheetSizes.named("A3").stock(220);
    Laid laid = SheetLayout.lay(net, stock, new Room(0, SheetLayout.USUAL_GAP));
    FoldedForm folded = Folding.fold(laid.net());
    return Checks.all(laid, GlueOrder.of(laid.net(), folded));
  }
}
