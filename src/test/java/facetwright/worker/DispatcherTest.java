package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.propose.Question;
import facetwright.measure.Ruler;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
  private static boolean isDone(Job job) {
    return job.reply().isDone() && job.reply().join().equals(TrialStaff.DONE);
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
    TrialStaff trial = new TrialStaff();
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
                    if (reply.equals(TrialStaff.DONE)) {
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
    TrialStaff trial = new TrialStaff();
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
    TrialStaff trial = new TrialStaff();
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
    TrialStaff trial = new TrialStaff();
    trial.ticks = 100;
    trial.ask("design.js");
    trial.pass(5000);
    Job lasting = trial.ask(TrialStaff.LASTING);
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
    TrialStaff trial = new TrialStaff();
    trial.ticks = 100;
    trial.ask("design.js");
    trial.pass(5000);
    trial.stoppable = false;
    Job deaf = trial.ask(TrialStaff.DEAF);
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
    TrialStaff trial = new TrialStaff();
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
    TrialStaff trial = new TrialStaff();
    trial.ticks = 1500;
    Job job = trial.ask("design.js");
    trial.pass(moment);
    boolean wasUnderWay = !job.reply().isDone();
    if (which < trial.workers.size()) {
      TrialStaff.Fake victim = trial.workers.get(which);
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
    assertThat(trial.workers.stream().filter(TrialStaff.Fake::isAlive)).hasSize(2);
  }

  @Test
  void aWorkerThatCannotStartIsToldAndTriedAgainAtTheNextAsk() {
    TrialStaff trial = new TrialStaff();
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
    TrialStaff trial = new TrialStaff();
    trial.ticks = 1000;
    trial.ask("design.js");
    trial.pass(9000);
    Job underWay = trial.ask("design.js");
    Job waiting = trial.ask("design.js");
    trial.dispatcher.close();
    Job late = trial.ask("design.js");
    trial.pass(100_000);
    assertThat(List.of(underWay, waiting, late)).allMatch(DispatcherTest::isStopped);
    assertThat(trial.workers).hasSize(2).noneMatch(TrialStaff.Fake::isAlive);
  }
}
