package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class KeeperTest {
  private final List<String> done = new CopyOnWriteArrayList<>();
  private final List<Thread> threads = new CopyOnWriteArrayList<>();

  private Runnable work(String name) {
    return () -> {
      done.add(name);
      threads.add(Thread.currentThread());
    };
  }

  @Test
  void oneThingIsDoneAfterAnotherBesideAllOthers() throws Exception {
    Keeper keeper = Keeper.onItsOwnThread();
    CountDownLatch third = new CountDownLatch(1);
    keeper.now(work("first"));
    keeper.now(work("second"));
    keeper.after(Duration.ofMillis(1), work("third"));
    keeper.after(Duration.ofMillis(2), third::countDown);
    third.await();
    keeper.end();
    assertThat(done).containsExactly("first", "second", "third");
    assertThat(threads).doesNotContain(Thread.currentThread());
    assertThat(threads.stream().distinct())
        .singleElement()
        .satisfies(t -> assertThat(t.isDaemon()).isTrue());
  }

  /** What is being written at the end is written whole; what was only due some time is not. */
  @Test
  void atTheEndWhatIsDueIsDone() {
    Keeper keeper = Keeper.onItsOwnThread();
    keeper.after(Duration.ofHours(1), work("some time"));
    for (int i = 0; i < 50; i++) {
      keeper.now(work("now " + i));
    }
    keeper.end();
    assertThat(done).hasSize(50).doesNotContain("some time");
  }

  /** A keeping that fails inside does not end the keeping. */
  @Test
  void afterAFaultItGoesOn() {
    Keeper keeper = Keeper.onItsOwnThread();
    keeper.now(
        () -> {
          throw new IllegalStateException("a fault");
        });
    keeper.now(work("next"));
    keeper.end();
    assertThat(done).containsExactly("next");
  }
}
