package facetwright.workbench.desk;

import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.util.concurrent.CompletableFuture;

/** Whoever turns a script into a design; the newest ask wins. */
@FunctionalInterface
public interface Asking {
  /**
   * Asks for a design.
   *
   * @return completed on any thread, never exceptionally; {@link Reply.Stopped} where a newer ask
   *     came
   */
  CompletableFuture<Reply> ask(Request request);
}
