package facetwright.worker;

import facetwright.net.Site;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;

/**
 * Evaluates scripts in a worker process, with a spare one ready. May be used from any thread; never
 * blocks its caller.
 */
public final class Workshop implements AutoCloseable {
  private static final Duration SPARE_AFTER = Duration.ofMillis(700);

  private final Settings settings;
  private final ScheduledExecutorService desk =
      Executors.newSingleThreadScheduledExecutor(
          Thread.ofPlatform().daemon().name("facetwright-workshop").factory());

  // All below is touched by the desk's thread only.
  private Child current;
  private Child spare;
  private Job running;
  private Job next;
  private long lastId;
  private boolean spareIsDue;
  private boolean closed;

  private static final class Job {
    final Request request;
    final IntConsumer tried;
    final CompletableFuture<Reply> reply = new CompletableFuture<>();
    long id;
    long signs;
    boolean cancelled;

    Job(Request request, IntConsumer tried) {
      this.request = request;
      this.tried = tried;
    }
  }

  public Workshop(Settings settings) {
    this.settings = settings;
  }

  /**
   * Asks for a design. An ask that is not yet answered is stopped, and comes to {@link
   * Reply.Stopped}.
   *
   * @return completed on a thread of the workshop, so do little there; never exceptionally
   */
  public CompletableFuture<Reply> ask(Request request) {
    return ask(request, _ -> {});
  }

  /**
   * The same with word of how it goes on.
   *
   * @param tried told, on a thread of the workshop, how many designs were made so far to answer
   */
  public CompletableFuture<Reply> ask(Request request, IntConsumer tried) {
    Job job = new Job(request, tried);
    if (!tell(() -> accept(job))) {
      job.reply.complete(new Reply.Stopped());
    }
    return job.reply;
  }

  /** Stops the ask under way, if there is one. */
  public void cancel() {
    tell(this::stop);
  }

  /** Ends all workers. */
  @Override
  public void close() {
    tell(
        () -> {
          closed = true;
          stop();
          kill(current);
          kill(spare);
          current = null;
          spare = null;
          desk.shutdown();
        });
  }

  private void accept(Job job) {
    if (closed) {
      job.reply.complete(new Reply.Stopped());
      return;
    }
    stop();
    if (running == null) {
      start(job);
    } else {
      next = job;
    }
  }

  /** Answers whatever is asked with "stopped", and tells the worker. */
  private void stop() {
    if (next != null) {
      next.reply.complete(new Reply.Stopped());
      next = null;
    }
    if (running != null && !running.cancelled) {
      Job job = running;
      job.cancelled = true;
      job.reply.complete(new Reply.Stopped());
      current.send(new Message.Cancel(job.id));
      after(settings.patience(), () -> giveUp(job, new Reply.Stopped()));
    }
  }

  private void start(Job job) {
    hire();
    if (current == null) {
      job.reply.complete(Reply.Failed.ofProgram("the process that works on designs did not start"));
      return;
    }
    job.id = ++lastId;
    running = job;
    current.send(new Message.Ask(job.id, job.request));
    await(job, 0);
  }

  /** Gives a job up when no sign of it has come for too long. */
  private void await(Job job, long signs) {
    after(
        settings.longest(),
        () -> {
          if (job.signs > signs) {
            await(job, job.signs);
          } else {
            giveUp(
                job,
                new Reply.Failed(
                    ScriptException.Kind.TIME,
                    "the design took too long",
                    Site.NONE,
                    "Make it smaller"));
          }
        });
  }

  private void after(Duration time, Runnable work) {
    if (!closed) {
      ScheduledFuture<?> _ = desk.schedule(work, time.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  /** No answer came: the worker is ended and the spare takes its place. */
  private void giveUp(Job job, Reply reply) {
    if (running == job) {
      finish(reply, true);
    }
  }

  private void finish(Reply reply, boolean leaving) {
    Job job = running;
    running = null;
    if (leaving) {
      kill(current);
      current = null;
    }
    job.reply.complete(reply);
    if (next != null) {
      Job following = next;
      next = null;
      start(following);
    } else {
      hire();
      hireSpareLater();
    }
  }

  /** Sees that there is a worker. */
  private void hire() {
    if (!closed && !isThere(current)) {
      current = isThere(spare) ? spare : launch();
      spare = null;
    }
  }

  /**
   * Sees that there is a spare soon: not now, when whoever asked is about to look at the answer.
   */
  private void hireSpareLater() {
    if (!isThere(spare) && !spareIsDue) {
      spareIsDue = true;
      after(
          SPARE_AFTER,
          () -> {
            spareIsDue = false;
            if (!closed && !isThere(spare)) {
              spare = launch();
            }
          });
    }
  }

  private static boolean isThere(Child child) {
    return child != null && child.isAlive();
  }

  private Child launch() {
    try {
      return Child.start(
          settings.command(),
          (child, message) -> tell(() -> heard(child, message)),
          child -> tell(() -> gone(child)));
    } catch (IOException e) {
      return null;
    }
  }

  /** False when the workshop has closed. */
  private boolean tell(Runnable work) {
    try {
      desk.execute(work);
      return true;
    } catch (RejectedExecutionException e) {
      return false;
    }
  }

  private void heard(Child child, Message message) {
    if (message instanceof Message.Tried(long id, int count)
        && child == current
        && running != null
        && running.id == id
        && !running.cancelled) {
      running.signs++;
      running.tried.accept(count);
    }
    if (message instanceof Message.Answer answer
        && child == current
        && running != null
        && running.id == answer.id()) {
      finish(answer.reply(), answer.leaving());
    }
  }

  private void gone(Child child) {
    if (child == current) {
      current = null;
      if (running != null) {
        finish(
            Reply.Failed.ofProgram("the process that worked on the design ended unexpectedly"),
            true);
      }
    } else if (child == spare) {
      spare = null;
    }
  }

  private static void kill(Child child) {
    if (child != null) {
      child.kill();
    }
  }
}
