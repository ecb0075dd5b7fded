package facetwright.workbench.desk;

import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;

/**
 * Whoever turns a script into a design. Asks are answered in the order they came; the newest is
 * always answered, others only as far as there is time.
 */
@FunctionalInterface
public interface Asking {
  /**
   * Asks for a design.
   *
   * @return completed on any thread, never exceptionally; {@link Reply.Stopped} where a newer ask
   *     took its turn
   */
  CompletableFuture<Reply> ask(Request request);

  /**
   * The same with word of how it goes on.
   *
   * @param tried told, on any thread, how many designs were made so far to answer; perhaps never
   */
  default CompletableFuture<Reply> ask(Request request, IntConsumer tried) {
    return ask(request);
  }

  /** Stops what is under way: it comes to {@link Reply.Stopped}. */
  default void stop() {}
}
