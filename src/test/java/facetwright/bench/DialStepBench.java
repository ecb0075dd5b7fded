package facetwright.bench;

import facetwright.fold.Folding;
import facetwright.fold.Solving;
import facetwright.fold.close.ClosingSolver;
import facetwright.fold.close.Solved;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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

/**
 * The library's largest looped design while a dial is turned, to be held beside the 16.7 ms of a
 * picture at 60 a second.
 */
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
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class DialStepBench {
  private static final int FRAMES = 60;

  private List<Net> steps;
  private int now;
  private Solved solved;
  private FoldPath path;

  @Setup
  public void read() throws Exception {
    String script = LibraryDesigns.text("harbour-lantern");
    steps = List.of(lantern(script, "60"), lantern(script, "61"));
    solved = Solving.of(steps.getFirst());
    path = Folding.path(steps.getFirst());
    path.at(0.5);
  }

  private static Net lantern(String script, String wall) throws Exception {
    Map<String, String> dials = Map.of("sides", "12", "wall", wall);
    return Facetwright.evaluate("harbour-lantern.js", script, dials, Budget.USUAL).net();
  }

  private Net next() {
    now = (now + 1) % steps.size();
    return steps.get(now);
  }

  /** From where it came to rest at the last step. */
  @Benchmark
  public Solved solvedAgain() {
    Net net = next();
    solved = ClosingSolver.solve(net, ScoreAngles.nominal(net), SolverSettings.USUAL, solved);
    return solved;
  }

  @Benchmark
  public Solved solvedFromNothing() {
    return Solving.of(next());
  }

  /** Solved from nothing, put together, stood up and measured. */
  @Benchmark
  public FoldedForm folded() {
    return Folding.fold(next());
  }

  /** A new way and sixty pictures of it. */
  @Benchmark
  public List<List<Motion3>> wayOfSixtyFrames() {
    return frames(Folding.path(next()));
  }

  /** Sixty pictures of a way already solved. */
  @Benchmark
  public List<List<Motion3>> sixtyFramesMore() {
    return frames(path);
  }

  private static List<List<Motion3>> frames(FoldPath way) {
    return IntStream.rangeClosed(1, FRAMES).mapToObj(i -> way.at((double) i / FRAMES)).toList();
  }
}
