package facetwright.script.sandbox;

import java.util.function.Supplier;

/** Keeps host work apart from the script's own, in time, memory and errors. */
public interface HostClock {
  /**
   * Does host work on the host's time. {@link CallException} and {@link
   * facetwright.net.NetException} turn into JavaScript errors at the call; any other throwable is
   * held to be a fault of this program, and fails the run even if the script catches it.
   */
  <R> R run(Supplier<R> work);
}
