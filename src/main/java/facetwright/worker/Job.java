package facetwright.worker;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;

/** An ask, how it goes on, and its answer. Touched by its dispatcher's thread only. */
final class Job {
  private final Request request;
  private final IntConsumer tried;
  private final CompletableFuture<Reply> reply = new CompletableFuture<>();
  private final List<Runnable> appointments = new ArrayList<>();
  private long id;
  private Duration spentBefore = Duration.ZERO;
  private long signs;
  private boolean cancelled;
  private boolean overtaken;

  Job(Request request, IntConsumer tried) {
    this.request = request;
    this.tried = tried;
  }

  CompletableFuture<Reply> reply() {
    return reply;
  }

  boolean isQuestion() {
    return !request.questions().isEmpty();
  }

  /** What to send to the worker that begins with it now. */
  Message.Ask begin(long number) {
    id = number;
    return new Message.Ask(number, request);
  }

  long id() {
    return id;
  }

  /** What its worker had spent when it began with it. */
  Duration spentBefore() {
    return spentBefore;
  }

  void spentBefore(Duration spent) {
    spentBefore = spent;
  }

  /** Takes a sign that it goes on. */
  void sign(int count) {
    if (!cancelled) {
      signs++;
      tried.accept(count);
    }
  }

  /** How many signs came so far. */
  long signs() {
    return signs;
  }

  /** Says that it is to stop; false where that was said before. */
  boolean cancel() {
    boolean first = !cancelled;
    cancelled = true;
    reply.complete(new Reply.Stopped());
    return first;
  }

  /** Says that another waits for its end; false where that was said before. */
  boolean overtake() {
    boolean first = !overtaken;
    overtaken = true;
    return first;
  }

  /** Keeps what calls off work that is due while it is under way. */
  void due(Runnable callOff) {
    appointments.add(callOff);
  }

  /** It is over; one that was cancelled has had its answer. */
  void end(Reply came) {
    appointments.forEach(Runnable::run);
    reply.complete(came);
  }
}
