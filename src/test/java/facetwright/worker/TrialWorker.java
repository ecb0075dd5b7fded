package facetwright.worker;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Stance;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.Stock;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.Host;
import facetwright.script.sandbox.HostClock;
import facetwright.script.sandbox.Sandbox;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.sandbox.SiteFinder;
import facetwright.words.Site;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** A worker whose scripts know one function, {@code title}, and all make the same square card. */
final class TrialWorker {
  static final Budget BUDGET =
      new Budget(Duration.ofMillis(500), Duration.ofSeconds(5), 128L << 20);

  /** File names that make the evaluator itself misbehave. */
  static final String DEAF = "deaf.js";

  static final String CRASH = "crash.js";
  static final String PRINT = "print.js";
  static final String TRIES = "tries.js";
  static final String HUGE = "huge.js";

  private TrialWorker() {}

  public static void main(String[] args) {
    WorkerMain.run((request, tried) -> new Reply.Done(evaluate(request, tried)));
  }

  private static Design evaluate(Request request, Runnable tried) throws ScriptException {
    switch (request.fileName()) {
      case DEAF -> {
        while (true) {
          Thread.onSpinWait();
        }
      }
      case CRASH -> Runtime.getRuntime().halt(3);
      case PRINT -> System.out.println("a stray line");
      case TRIES -> {
        for (int i = 0; i < 3; i++) {
          tried.run();
        }
      }
      case HUGE -> {
        return card("x".repeat(Frames.LONGEST + 1));
      }
      default -> {}
    }
    return Sandbox.run(request.fileName(), request.source(), BUDGET, new Titled());
  }

  static Design card(String title) {
    Polygon2 square = Polygon2.rectangle(0, 0, 50, 50);
    Panel panel = new Panel("card", PanelRole.FACET, square, List.of(), new Site(1, 1));
    Stance stance =
        new Stance(
            List.of(new Stance.Corner(0, 0), new Stance.Corner(0, 1), new Stance.Corner(0, 2)));
    Net net =
        new Net(
            List.of(panel),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            stance);
    Stock stock = new Stock("A4", 210, 297, 220, 0.275, Stock.Grain.LONG);
    FoldedForm folded =
        new FoldedForm(
            List.of(Motion3.NONE),
            List.of(),
            List.of(),
            Closure.CLOSES,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new Measures(50, 50, 0, 0, 2500));
    return new Design(
        title,
        Unit.MM,
        new Design.Header("", "", List.of(), ""),
        List.of(),
        new Laid(net, stock, 1, true, new Room(0, 0)),
        folded,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static final class Titled implements Host<Design> {
    private String title = "";

    @Override
    public SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock) {
      ProxyExecutable named =
          arguments ->
              clock.run(
                  () -> {
                    title = arguments[0].asString();
                    return null;
                  });
      return new LinkedHashMap<>(Map.of("title", named));
    }

    @Override
    public Design finish() {
      return card(title);
    }

    @Override
    public List<String> names() {
      return List.of("title");
    }
  }
}
