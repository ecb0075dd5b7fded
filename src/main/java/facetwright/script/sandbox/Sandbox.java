package facetwright.script.sandbox;

import facetwright.words.Site;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** Runs scripts within bounds. */
public final class Sandbox {
  /** So many runs a script with one dial to turn takes for its aim, the look at its design too. */
  private static final int AHEAD = 8;

  private Sandbox() {}

  /**
   * Runs one script against a host's functions, and waits for it.
   *
   * @param fileName what its user calls the script
   * @param source its text
   * @param budget what it may take
   * @param host what it can call, and what it comes to
   * @return what {@link Host#finish} gives
   * @throws ScriptException when it comes to nothing; see {@link ScriptException#isStillRunning}
   */
  public static <T> T run(String fileName, String source, Budget budget, Host<T> host)
      throws ScriptException {
    if (source.length() > ScriptLength.MOST) {
      throw new ScriptException(
          ScriptException.Kind.MEMORY,
          fileName + ScriptLength.WRONG,
          Site.NONE,
          ScriptLength.REMEDY);
    }
    warmUp();
    return watched(source, budget, host);
  }

  private static <T> T watched(String source, Budget budget, Host<T> host) throws ScriptException {
    Run<T> run = new Run<>(source, host);
    run.start();
    Watch.over(run, budget.reading(source.length()));
    return run.result();
  }

  /**
   * Loads the engine, so that the next run begins at once and its budget is not spent on that.
   * Takes about a second the first time, and nothing afterwards.
   */
  public static void warmUp() {
    if (!Warm.DONE) {
      throw new IllegalStateException("the script engine is not there");
    }
  }

  /**
   * Makes ready in the background what the next few runs need. For a process that waits for the
   * next script and has nothing else to do.
   */
  public static void makeReady() {
    Spare.refill(AHEAD);
  }

  /** Its initialisation is the warming up; the language does it once. */
  private static final class Warm {
    static final boolean DONE = run();

    private static boolean run() {
      Budget patient = new Budget(Duration.ofMinutes(1), Duration.ofMinutes(1), Long.MAX_VALUE);
      try {
        return watched("const a = [1, 2].map((x) => `${x}`); a.join('');", patient, IDLE);
      } catch (ScriptException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static final Host<Boolean> IDLE =
      new Host<>() {
        @Override
        public SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock) {
          return new LinkedHashMap<>();
        }

        @Override
        public Boolean finish() {
          return true;
        }

        @Override
        public List<String> names() {
          return List.of();
        }
      };
}
