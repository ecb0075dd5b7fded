package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/**
 * The Java side of a run: what a script can call, and what it comes to. All methods are called on
 * the run's own thread.
 *
 * @param <T> what a run comes to
 */
public interface Host<T> {
  /**
   * The functions that a script finds among its globals, by name. Every function should do its work
   * inside {@link HostClock#run}, so that its time is not held against the script and its errors
   * reach the script as ordinary JavaScript errors.
   */
  SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock);

  /**
   * Called after the script ended well, still under the host budget. May throw {@link
   * CallException} or {@link facetwright.net.NetException}.
   */
  T finish();

  /** All names a script may use, globals and members alike, to suggest the one that was meant. */
  List<String> names();

  /**
   * The names that could stand where one stands that is not defined; none where that is no slip.
   */
  default List<String> meant(String unknown, Site site) {
    return names();
  }

  /**
   * A file that the script uses begins to be read, or is read.
   *
   * @param file the one that is being read now; empty for none
   */
  default void reads(String file) {}

  /** Whether a function that stands on its own has this name. */
  default boolean isFunction(String name) {
    return false;
  }

  /** The functions of each kind of thing that a script holds, by what such a thing is called. */
  default Map<String, List<String>> functions() {
    return Map.of();
  }
}
