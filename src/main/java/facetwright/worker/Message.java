package facetwright.worker;

import java.io.Serializable;

/** What a workshop and its worker say to each other. */
sealed interface Message extends Serializable {
  /** To the worker: evaluate this. */
  record Ask(long id, Request request) implements Message {}

  /** To the worker: stop evaluating this. */
  record Cancel(long id) implements Message {}

  /** From the worker: the engine is loaded. */
  record Ready() implements Message {}

  /**
   * From the worker: it goes on with an ask.
   *
   * @param count how many designs it has made for it
   */
  record Tried(long id, int count) implements Message {}

  /**
   * From the worker: what an ask came to.
   *
   * @param leaving whether the worker ends itself now
   */
  record Answer(long id, Reply reply, boolean leaving) implements Message {}
}
