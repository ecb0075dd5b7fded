package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** A host with a few functions that show what a script did. */
final class Probe implements Host<List<String>> {
  private final List<String> said = new ArrayList<>();
  private final List<Site> sites = new ArrayList<>();

  @Override
  public SequencedMap<String, ProxyExecutable> globals(SiteFinder finder, HostClock clock) {
    SequencedMap<String, ProxyExecutable> globals = new LinkedHashMap<>();
    globals.put(
        "say",
        guard(
            clock,
            arguments -> {
              said.add(arguments[0].isString() ? arguments[0].asString() : arguments[0].toString());
              sites.add(finder.here());
              return null;
            }));
    globals.put(
        "columns",
        guard(
            clock,
            arguments -> {
              if (arguments.length == 0 || arguments[0].asInt() < 3) {
                throw new CallException("columns must be 3 or more", "Give it 3 or more");
              }
              return arguments[0].asInt();
            }));
    globals.put(
        "broken",
        guard(
            clock,
            _ -> {
              throw new IllegalStateException("a fault");
            }));
    return globals;
  }

  /** A function that is run on the host's time. */
  private static ProxyExecutable guard(HostClock clock, ProxyExecutable function) {
    return arguments -> clock.run(() -> function.execute(arguments));
  }

  @Override
  public List<String> finish() {
    return said;
  }

  @Override
  public List<String> names() {
    return List.of("columns", "rows", "say", "wrap");
  }

  List<Site> sites() {
    return sites;
  }

  static List<String> run(String source) throws ScriptException {
    return Sandbox.run("test.js", source, Budget.USUAL, new Probe());
  }
}
