package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/** A world of workers in which time goes on when it is told to. */
final class TrialStaff implements Staff.World {
  static final Reply DONE = new Reply.Done(TrialWorker.card("card"));

  private final PriorityQueue<Due> due =
      new PriorityQueue<>(Comparator.comparingLong(Due::at).thenComparingLong(Due::order));
  final Dispatcher dispatcher = new Dispatcher(Settings.USUAL, this);
  final List<Fake> workers = new ArrayList<>();
  long now;
  private long order;
  int ticks;
  long startTicks = 2000;
  private Job last;

  /** So many want the processor. */
  int load = 1;

  /** What a worker does that is asked for this file name. */
  static final String DEAF = "deaf.js";

  static final String LASTING = "lasting.js";

  private record Due(long at, long order, Runnable work) {}

  /** A worker that needs some ticks for each ask, or goes on until it is told to stop. */
  final class Fake implements Staff.Worker {
    boolean alive = true;
    boolean ready;
    boolean killed;
    long asked;
    int begun;

    private Fake() {
      in(
          startTicks,
          () -> {
            if (alive) {
              ready = true;
              dispatcher.heard(this, new Message.Ready());
            }
          });
    }

    @Override
    public void send(Message message) {
      switch (message) {
        case Message.Ask(long id, Request request) -> {
          assertThat(ready).as("asked only when it is ready").isTrue();
          assertThat(asked).as("one ask at a time").isZero();
          asked = id;
          begun++;
          if (!request.fileName().equals(DEAF) && !request.fileName().equals(LASTING)) {
            in(ticks, () -> answer(id, DONE));
          }
        }
        case Message.Cancel(long id) -> {
          // A deaf one goes on.
          in(400, () -> answer(stoppable ? id : -1, new Reply.Stopped()));
        }
        case Message.Ready _, Message.Tried _, Message.Answer _ -> throw new AssertionError();
      }
    }

    private void answer(long id, Reply reply) {
      if (alive && asked == id) {
        asked = 0;
        dispatcher.heard(this, new Message.Answer(id, reply, false));
      }
    }

    @Override
    public void kill() {
      killed = true;
      end();
    }

    private boolean isBusy() {
      return alive && (!ready || asked != 0);
    }

    void end() {
      if (alive) {
        alive = false;
        in(0, () -> dispatcher.gone(this));
      }
    }

    @Override
    public boolean isAlive() {
      return alive;
    }

    @Override
    public Duration spent() {
      return Duration.ofMillis(now / load);
    }
  }

  boolean stoppable = true;

  @Override
  public Staff.Worker launch() {
    Fake worker = new Fake();
    workers.add(worker);
    return worker;
  }

  @Override
  public Runnable after(Duration time, Runnable work) {
    return in(time.toMillis(), work);
  }

  private Runnable in(long millis, Runnable work) {
    Due event = new Due(now + millis, order++, work);
    due.add(event);
    return () -> due.remove(event);
  }

  /** Lets so many milliseconds of its own time go by. */
  void pass(long millis) {
    long end = now + millis;
    while (!due.isEmpty() && due.peek().at() <= end) {
      Due event = due.poll();
      now = event.at();
      event.work().run();
      assertThat(last == null || last.reply().isDone() || workers.stream().anyMatch(Fake::isBusy))
          .as("somebody works or starts while an ask waits")
          .isTrue();
    }
    now = end;
  }

  Job ask(String fileName) {
    return accept(new Request(fileName, "", Map.of()));
  }

  Job accept(Request request) {
    Job job = new Job(request, _ -> {});
    last = job;
    dispatcher.accept(job);
    return job;
  }

  long killed() {
    return workers.stream().filter(w -> w.killed).count();
  }
}
