package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other programs do to a file is told by the system. */
class FileWatchTest {
  @TempDir private Path folder;

  private static void told(Semaphore told, String what) throws InterruptedException {
    assertThat(told.tryAcquire(30, TimeUnit.SECONDS)).as(what).isTrue();
    told.drainPermits();
  }

  @Test
  void tellsOfTheFileThatIsWatchedLast() throws Exception {
    Path one = Files.writeString(folder.resolve("one.js"), "1");
    Path two = folder.resolve("two.js");
    Semaphore told = new Semaphore(0);
    try (FileWatch watch = new FileWatch(told::release)) {
      watch.watch(one);
      Files.writeString(one, "2");
      told(told, "written");
      Files.delete(one);
      told(told, "deleted");
      watch.watch(two);
      told.drainPermits();
      Files.writeString(two, "1");
      told(told, "made");
      Files.writeString(folder.resolve("used.js"), "1");
      told(told, "a script beside it written");
      watch.watch(null);
      watch.watch(folder.resolve("none").resolve("such.js"));
    }
  }

  /** The files that every script may use lie in a folder of their own. */
  @Test
  void tellsOfWhatEveryScriptMayUse() throws Exception {
    Path shared = Files.createDirectories(folder.resolve("library").resolve("use"));
    Path own = Files.createDirectories(folder.resolve("own"));
    Semaphore told = new Semaphore(0);
    try (FileWatch watch = new FileWatch(told::release, shared, folder.resolve("gone"))) {
      watch.watch(null);
      Files.writeString(shared.resolve("golden.js"), "1");
      told(told, "written while no file is open");
      watch.watch(own.resolve("one.js"));
      Files.writeString(shared.resolve("golden.js"), "2");
      told(told, "written beside an open file");
      watch.watch(own.resolve("two.js"));
      Files.writeString(shared.resolve("golden.js"), "3");
      told(told, "written beside another");
    }
  }
}
