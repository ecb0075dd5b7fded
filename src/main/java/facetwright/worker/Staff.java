package facetwright.worker;

import java.io.IOException;
import java.time.Duration;

/**
 * One worker at the bench and a spare one beside it. To be touched by one thread only. A worker
 * that is still starting is never ended but for taking far too long to start.
 */
final class Staff {
  /** One worker process, or what a test takes for one. */
  interface Worker {
    void send(Message message);

    /** Ends it at once. */
    void kill();

    boolean isAlive();

    /** Processor time it has used so far, which does not run while others hold the processor. */
    Duration spent();
  }

  /** What is needed of the world. */
  interface World {
    /** Starts a worker; later, on the same thread, it tells what it says and that it has ended. */
    Worker launch() throws IOException;

    /**
     * Runs work on the same thread after a while.
     *
     * @return calls it off
     */
    Runnable after(Duration time, Runnable work);
  }

  /** A spare is started that long after an answer, when its receiver has looked at it. */
  private static final Duration SPARE_AFTER = Duration.ofMillis(700);

  private final World world;
  private final Duration longestStart;
  private final Duration firstPace;
  private Post current;
  private Post spare;
  private boolean spareIsDue;
  private boolean closed;

  /** A worker and what is known of it. */
  static final class Post {
    private final Worker worker;
    private boolean ready;
    private Duration pace;

    private Post(Worker worker, Duration pace) {
      this.worker = worker;
      this.pace = pace;
    }

    void send(Message message) {
      worker.send(message);
    }

    boolean isReady() {
      return ready;
    }

    /** What it has spent so far, as processor time. */
    Duration spent() {
      return worker.spent();
    }

    /** What its last design took, as processor time. */
    Duration pace() {
      return pace;
    }

    void pace(Duration last) {
      pace = last;
    }

    @SuppressWarnings("ReferenceEquality") // A worker is no other.
    private boolean isOf(Worker other) {
      return worker == other;
    }
  }

  /**
   * @param longestStart how long a worker may take to start
   * @param firstPace what its first design is taken to need
   */
  Staff(World world, Duration longestStart, Duration firstPace) {
    this.world = world;
    this.longestStart = longestStart;
    this.firstPace = firstPace;
  }

  /** Who is at the bench; null where nobody is. */
  Post atBench() {
    return current;
  }

  boolean isAtBench(Worker worker) {
    return current != null && current.isOf(worker);
  }

  /** Sees that there is somebody at the bench; there is nobody then only where none can start. */
  void hire() {
    if (closed || isThere(current)) {
      return;
    }
    current = isThere(spare) ? spare : launch();
    spare = null;
  }

  /** Sees that there is a spare soon: not now, when somebody is about to look at an answer. */
  void hireSpareLater() {
    if (!closed && !isThere(spare) && !spareIsDue) {
      spareIsDue = true;
      Runnable _ =
          world.after(
              SPARE_AFTER,
              () -> {
                spareIsDue = false;
                if (!closed && !isThere(spare)) {
                  spare = launch();
                }
              });
    }
  }

  /** Takes word that a worker can be asked. */
  void ready(Worker worker) {
    for (Post post : new Post[] {current, spare}) {
      if (post != null && post.isOf(worker)) {
        post.ready = true;
      }
    }
  }

  /**
   * Takes word that a worker has ended, and gives its place to the spare.
   *
   * @return whether somebody is at the bench or can be: not where one ended before it was ready,
   *     without a spare, for so would others
   */
  boolean gone(Worker worker) {
    if (spare != null && spare.isOf(worker)) {
      spare = null;
    }
    if (!isAtBench(worker)) {
      return true;
    }
    boolean starts = current.ready || isThere(spare);
    current = null;
    if (starts) {
      hire();
      hireSpareLater();
    }
    return starts;
  }

  /** Ends the worker at the bench, if there is one. */
  void dismiss() {
    kill(current);
    current = null;
  }

  void close() {
    closed = true;
    dismiss();
    kill(spare);
    spare = null;
  }

  private static boolean isThere(Post post) {
    return post != null && post.worker.isAlive();
  }

  private Post launch() {
    try {
      Post post = new Post(world.launch(), firstPace);
      Runnable _ =
          world.after(
              longestStart,
              () -> {
                if (!post.ready) {
                  // Its end is told as any other's.
                  kill(post);
                }
              });
      return post;
    } catch (IOException e) {
      return null;
    }
  }

  private static void kill(Post post) {
    if (post != null) {
      post.worker.kill();
    }
  }
}
