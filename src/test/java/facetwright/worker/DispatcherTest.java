package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.propose.Question;
import facetwright.measure.Ruler;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * On a clock of its own that goes on by steps, with workers that need so many ticks for what they
 * are asked: nothing here waits.
 */
class DispatcherTest {
  private static final Reply DONE = new Reply.Done(TrialWorker.card("card"));

  /** A world in which time goes on when it is told to. */
  private static final class Trial implements Staff.World {
    private final PriorityQueue<Due> due =
        new PriorityQueue<>(Comparator.comparingLong(Due::at).thenComparingLong(Due::order));
    private final Dispatcher dispatcher = new Dispatcher(Settings.USUAL, this);
    private final List<Fake> workers = new ArrayList<>();
    private long now;
    private long order;
    private int ticks;
    private long startTicks = 2000;
    private Job last;

    /** So many want the processor. */
    private int load = 1;

    /** What a worker does that is asked for this file name. */
    private static final String DEAF = "deaf.js";

    private static final String LASTING = "lasting.js";

    private record Due(long at, long order, Runnable work) {}

    /** A worker that needs some ticks for each ask, or goes on until it is told to stop. */
    private final class Fake implements Staff.Worker {
      private boolean alive = true;
      private boolean ready;
      private boolean killed;
      private long asked;
      private int begun;

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

      private void end() {
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

    private boolean stoppable = true;

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

  private static boolean isDone(Job job) {
    return job.reply().isDone() && job.reply().join().equals(DONE);
  }

  private static boolean isStopped(Job job) {
    return job.reply().isDone() && job.reply().join() instanceof Reply.Stopped;
  }

  /**
   * However asks follow one another and however long they take: nobody is killed, two are started
   * at most, every ask has one answer, in order, the bench is never idle while one waits, and the
   * last is answered.
   */
  @Property(tries = 300, seed = "20261130")
  void picturesFollowAndNobodyIsKilled(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 1, max = 3000) int ticks,
      @ForAll @IntRange(min = 1, max = 300) int asks,
      @ForAll @IntRange(min = 0, max = 400) int between) {
    Random random = new Random(seed);
    Trial trial = new Trial();
    trial.load = 1 + random.nextInt(20);
    trial.ticks = ticks * trial.load;
    trial.startTicks = random.nextInt(8000);
    List<Job> jobs = new ArrayList<>();
    List<Integer> answered = new ArrayList<>();
    for (int i = 0; i < asks; i++) {
      int number = i;
      Job job = trial.ask("design.js");
      var _ =
          job.reply()
              .thenAccept(
                  reply -> {
                    if (reply.equals(DONE)) {
                      answered.add(number);
                    }
                  });
      jobs.add(job);
      trial.pass(random.nextInt(between + 1));
      // Work comes in bursts, as a hand's.
      if (random.nextInt(40) == 0) {
        trial.pass(random.nextInt(5000));
      }
    }
    trial.pass(trial.startTicks + 2L * trial.ticks);
    assertThat(trial.killed()).isZero();
    assertThat(trial.workers).hasSizeLessThanOrEqualTo(2);
    assertThat(jobs).allMatch(j -> isDone(j) || isStopped(j));
    assertThat(isDone(jobs.getLast())).isTrue();
    assertThat(answered).isSorted().doesNotHaveDuplicates();
    assertThat(trial.workers.getFirst().begun).isEqualTo(answered.size());
  }

  /** Fifty turns a second for five seconds, each design a fifth of a second: five nets a second. */
  @Test
  void aDragIsFollowedAtTheRateDesignsCanBeMade() {
    Trial trial = new Trial();
    trial.ticks = 200;
    trial.ask("design.js");
    trial.pass(5000);
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 250; i++) {
      jobs.add(trial.ask("design.js"));
      trial.pass(20);
    }
    trial.pass(400);
    assertThat(jobs.stream().filter(DispatcherTest::isDone)).hasSizeBetween(25, 27);
    assertThat(isDone(jobs.getLast())).isTrue();
    assertThat(trial.workers).hasSize(2);
    assertThat(trial.killed()).isZero();
  }

  /** As on a machine that is busy with other things: all takes twenty times as long. */
  @Test
  void aSlowDesignIsFollowedToo() {
    Trial trial = new Trial();
    trial.load = 20;
    trial.ticks = 300 * trial.load;
    trial.startTicks = 30_000;
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 6000; i++) {
      jobs.add(trial.ask("design.js"));
      trial.pass(10);
    }
    trial.pass(12_000);
    assertThat(jobs.stream().filter(DispatcherTest::isDone)).hasSize(6);
    assertThat(isDone(jobs.getLast())).isTrue();
    assertThat(trial.killed()).isZero();
  }

  @Test
  void whatTakesFarLongerThanUsualIsStoppedForANewerAskButKeepsItsWorker() {
    Trial trial = new Trial();
    trial.ticks = 100;
    trial.ask("design.js");
    trial.pass(5000);
    Job lasting = trial.ask(Trial.LASTING);
    trial.pass(30_000);
    assertThat(lasting.reply()).as("nobody else waits").isNotDone();
    Job newer = trial.ask("design.js");
    trial.pass(600);
    assertThat(isStopped(lasting)).isTrue();
    assertThat(isDone(newer)).isTrue();
    assertThat(trial.killed()).isZero();
    assertThat(trial.workers).hasSize(2);
  }

  @Test
  void aWorkerThatDoesNotEvenStopIsEndedAndTheSpareAnswers() {
    Trial trial = new Trial();
    trial.ticks = 100;
    trial.ask("design.js");
    trial.pass(5000);
    trial.stoppable = false;
    Job deaf = trial.ask(Trial.DEAF);
    Job newer = trial.ask("design.js");
    long patience = Settings.USUAL.overtaken().plus(Settings.USUAL.patience()).toMillis();
    trial.pass(patience - 1);
    assertThat(trial.killed()).isZero();
    trial.pass(1 + 100);
    assertThat(isStopped(deaf)).isTrue();
    assertThat(isDone(newer)).isTrue();
    assertThat(trial.killed()).isEqualTo(1);
    trial.pass(10_000);
    assertThat(trial.workers).as("another spare").hasSize(3);
  }

  @Test
  void aQuestionMakesRoomAtOnce() {
    Trial trial = new Trial();
    trial.ticks = 1000;
    Request design = new Request("design.js", "", Map.of());
    trial.accept(design);
    trial.pass(5000);
    Job question = trial.accept(design.asking(new Question.Round(Ruler.EIGHTHS, 1)));
    Job newer = trial.accept(design.asking(new Question.Round(Ruler.EIGHTHS, 2)));
    assertThat(isStopped(question)).isTrue();
    trial.pass(400 + 1000);
    assertThat(isDone(newer)).isTrue();
    assertThat(trial.killed()).isZero();
  }

  /** Killed from outside, at any moment: it is told at once, and the spare answers the next ask. */
  @Property(tries = 200, seed = "20261130")
  void aDeathIsToldAtOnceAndTheNextAskIsAnswered(
      @ForAll @IntRange(min = 0, max = 9000) int moment, @ForAll @IntRange(max = 1) int which) {
    Trial trial = new Trial();
    trial.ticks = 1500;
    Job job = trial.ask("design.js");
    trial.pass(moment);
    boolean wasUnderWay = !job.reply().isDone();
    if (which < trial.workers.size()) {
      Trial.Fake victim = trial.workers.get(which);
      victim.end();
      trial.pass(0);
      if (wasUnderWay && which == 0) {
        assertThat(job.reply()).isDone();
        assertThat(job.reply().join()).isInstanceOf(Reply.Failed.class);
      }
    }
    Job newer = trial.ask("design.js");
    boolean spareIsReady = trial.workers.size() > 1 && trial.workers.get(1 - which).ready;
    trial.pass(spareIsReady && !wasUnderWay ? 1500 : 8000);
    assertThat(isDone(newer)).isTrue();
    trial.pass(10_000);
    assertThat(trial.workers.stream().filter(Trial.Fake::isAlive)).hasSize(2);
  }

  @Test
  void aWorkerThatCannotStartIsToldAndTriedAgainAtTheNextAsk() {
    Trial trial = new Trial();
    Job first = trial.ask("design.js");
    trial.workers.getFirst().end();
    trial.pass(0);
    assertThat(first.reply().join()).isInstanceOf(Reply.Failed.class);
    trial.pass(100_000);
    assertThat(trial.workers).as("not again and again").hasSize(1);
    Job second = trial.ask("design.js");
    trial.pass(5000);
    assertThat(isDone(second)).isTrue();
  }

  @Test
  void aClosedOneEndsAllAndStopsAllAsks() {
    Trial trial = new Trial();
    trial.ticks = 1000;
    trial.ask("design.js");
    trial.pass(9000);
    Job underWay = trial.ask("design.js");
    Job waiting = trial.ask("design.js");
    trial.dispatcher.close();
    Job late = trial.ask("design.js");
    trial.pass(100_000);
    assertThat(List.of(underWay, waiting, late)).allMatch(DispatcherTest::isStopped);
    assertThat(trial.workers).hasSize(2).noneMatch(Trial.Fake::isAlive);
  }
}
