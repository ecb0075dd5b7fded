package facetwright.worker;

import facetwright.script.sandbox.ScriptException;
import facetwright.words.Site;
import java.time.Duration;

/**
 * Which ask is worked on: one is under way, and the newest of all others waits. What is under way
 * comes to its end, so that answers follow a hand that asks on and on as fast as they can be made,
 * and the newest ask is always answered. It knows no process and no clock but what it is given, and
 * is to be touched by one thread only.
 *
 * <p>An ask under way is told to stop for a newer one only where it takes far more than the last
 * did, or is a question, for which nobody waits any more. Its worker is ended only if it does not
 * answer even that. Both are measured in the worker's processor time, so that a busy machine costs
 * no worker its life. One that is still starting has been asked nothing, so no ask can cost it its
 * life either.
 */
final class Dispatcher {
  /** So many times as long as the last design may one take while another waits. */
  private static final int FAR_LONGER = 5;

  /**
   * A worker's first design is taken to need {@link Settings#overtaken} divided by this: much, for
   * nothing that it calls is loaded yet.
   */
  private static final int FIRST = 2;

  private static final Duration SOONEST = Duration.ofMillis(20);

  private static final Reply NOT_STARTED =
      Reply.Failed.ofProgram("the process that works on designs did not start");

  private static final Reply ENDED =
      Reply.Failed.ofProgram("the process that worked on the design ended unexpectedly");

  private static final Reply TOO_LONG =
      new Reply.Failed(
          ScriptException.Kind.TIME, "the design took too long", Site.NONE, "Make it smaller");

  private final Settings settings;
  private final Staff.World world;
  private final Staff staff;
  private Job running;
  private Job next;
  private long lastId;
  private boolean closed;

  Dispatcher(Settings settings, Staff.World world) {
    this.settings = settings;
    this.world = world;
    this.staff = new Staff(world, settings.longest(), settings.overtaken().dividedBy(FIRST));
  }

  /** Takes an ask; one that waits for its turn gives way to it. */
  void accept(Job job) {
    if (closed) {
      job.cancel();
      return;
    }
    giveWay();
    next = job;
    if (running != null) {
      overtake(running);
    }
    dispatch();
  }

  /** Answers whatever is asked with "stopped", and tells the worker. */
  void stop() {
    giveWay();
    if (running != null) {
      cancel(running);
    }
  }

  /** Ends all workers. */
  void close() {
    closed = true;
    giveWay();
    if (running != null) {
      running.end(new Reply.Stopped());
      running = null;
    }
    staff.close();
  }

  /** Takes what a worker says. */
  void heard(Staff.Worker worker, Message message) {
    switch (message) {
      case Message.Ready _ -> {
        staff.ready(worker);
        dispatch();
      }
      case Message.Tried(long id, int count) -> {
        if (isUnderWay(worker, id)) {
          running.sign(count);
        }
      }
      case Message.Answer(long id, Reply reply, boolean leaving) -> {
        if (isUnderWay(worker, id)) {
          finish(reply, leaving);
        }
      }
      case Message.Ask _, Message.Cancel _ -> {}
    }
  }

  private boolean isUnderWay(Staff.Worker worker, long id) {
    return staff.isAtBench(worker) && running != null && running.id() == id;
  }

  /** Takes word that a worker has ended. */
  void gone(Staff.Worker worker) {
    if (staff.isAtBench(worker) && running != null) {
      finish(ENDED, true);
    } else if (staff.gone(worker)) {
      dispatch();
    } else {
      refuseNext();
    }
  }

  private void giveWay() {
    if (next != null) {
      next.cancel();
      next = null;
    }
  }

  /** Another ask waits for this one to end. */
  private void overtake(Job job) {
    if (job.isQuestion()) {
      cancel(job);
    } else if (job.overtake()) {
      Duration far = staff.atBench().pace().multipliedBy(FAR_LONGER);
      Duration most = far.compareTo(settings.overtaken()) > 0 ? far : settings.overtaken();
      whenSpent(most, job.spentBefore(), job, () -> cancel(job));
    }
  }

  /** Does something when the worker has spent so much on a job that is still under way then. */
  private void whenSpent(Duration most, Duration before, Job job, Runnable work) {
    Duration left = most.minus(staff.atBench().spent().minus(before));
    if (left.isPositive()) {
      after(
          left.compareTo(SOONEST) > 0 ? left : SOONEST,
          job,
          () -> whenSpent(most, before, job, work));
    } else {
      work.run();
    }
  }

  private void cancel(Job job) {
    if (job.cancel()) {
      staff.atBench().send(new Message.Cancel(job.id()));
      whenSpent(
          settings.patience(),
          staff.atBench().spent(),
          job,
          () -> finish(new Reply.Stopped(), true));
    }
  }

  /** Does something after a while if the job is still under way then. */
  private void after(Duration time, Job job, Runnable work) {
    job.due(world.after(time, work));
  }

  /** Begins with the ask that waits, when the bench is free. */
  private void dispatch() {
    if (running != null || next == null) {
      return;
    }
    staff.hire();
    Staff.Post post = staff.atBench();
    if (post == null) {
      refuseNext();
    } else if (post.isReady()) {
      running = next;
      next = null;
      post.send(running.begin(++lastId));
      running.spentBefore(post.spent());
      await(running, 0);
    }
  }

  private void refuseNext() {
    if (next != null) {
      Job job = next;
      next = null;
      job.end(NOT_STARTED);
    }
  }

  /** Gives a job up when no sign of it has come for too long. */
  private void await(Job job, long signs) {
    after(
        settings.longest(),
        job,
        () -> {
          if (job.signs() > signs) {
            await(job, job.signs());
          } else {
            finish(TOO_LONG, true);
          }
        });
  }

  /**
   * The ask under way is over.
   *
   * @param leaving whether its worker has ended or is to end
   */
  private void finish(Reply reply, boolean leaving) {
    Job job = running;
    running = null;
    if (leaving) {
      staff.dismiss();
    }
    job.end(reply);
    Staff.Post post = staff.atBench();
    if (post != null && reply instanceof Reply.Done) {
      post.pace(post.spent().minus(job.spentBefore()));
    }
    staff.hire();
    dispatch();
    staff.hireSpareLater();
  }
}
