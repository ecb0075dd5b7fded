package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.export.file.ExportException;
import facetwright.pace.Pace;
import facetwright.script.LibraryDesigns;
import facetwright.workbench.Places.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.scene.control.Button;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers that take long or come to nothing: seen, stopped, and told in words. */
class LongPapersTest {
  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    Files.writeString(folder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Path mine = Files.copy(LibraryDesigns.file("harbour-lantern"), folder.resolve("lantern.js"));
    visit = Visit.start(folder, Path.of("").toAbsolutePath(), mine);
    Fx.until("the design is made", () -> visit.house.desk().design().get() != null);
    Fx.run(() -> visit.house.places().now().set(Place.PAPERS));
    Fx.until("the first page shows", () -> says("Page 1 of 1"));
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private boolean says(String words) {
    return Fx.says(visit.house.papers(), words);
  }

  private boolean isGoing() {
    return visit.house.papers().work().going().get();
  }

  /** Steps that count nothing never come to a bound: only Stop ends this. */
  private static void forEver(CountDownLatch begun, AtomicBoolean ended) {
    Pace.doing("laying copies on the sheet");
    begun.countDown();
    try {
      while (true) {
        Pace.step(0);
      }
    } finally {
      ended.set(true);
    }
  }

  @Test
  void whatTakesLongIsSeenAndStopped() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicBoolean ended = new AtomicBoolean();
    Fx.run(() -> visit.house.papers().work().execute(() -> forEver(begun, ended)));
    assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
    Fx.until("it says what it does", () -> says("Laying copies on the sheet …"));
    Fx.run(() -> ((Button) Fx.button(visit.house.papers(), "Stop")).fire());
    assertThat(Fx.get(visit.house.papers()::told)).isEqualTo("✕ Stopped.");
    assertThat(Fx.get(this::isGoing)).isFalse();
    Fx.until("the work has ended", ended::get);
    assertThat(Fx.get(() -> says("Page 1 of 1"))).as("what was drawn stays").isTrue();
  }

  /** The table, the lens and what keeps unsaved work have threads of their own. */
  @Test
  void nothingElseWaitsForPapers() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicBoolean ended = new AtomicBoolean();
    Fx.run(() -> visit.house.papers().work().execute(() -> forEver(begun, ended)));
    assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
    CountDownLatch beside = new CountDownLatch(1);
    visit.house.tools().aside().execute(beside::countDown);
    assertThat(beside.await(60, TimeUnit.SECONDS)).isTrue();
    assertThat(ended.get()).isFalse();
    Fx.run(() -> visit.house.papers().work().stop());
  }

  @Test
  void whatFailsIsTold() throws Exception {
    told(() -> raise(new ExportException("A disk is full.")), "A disk is full.");
    told(() -> raise(new OutOfMemoryError()), "takes more memory than there is");
    told(() -> raise(new StackOverflowError()), "takes more memory than there is");
    told(() -> raise(new IllegalArgumentException("no direction")), "This paper can't be drawn");
    told(
        () -> {
          Pace.doing("laying copies on the sheet");
          Pace.step(Pace.MOST);
        },
        "Laying copies on the sheet is more work than one paper may take.");
  }

  private void told(Runnable work, String words) throws Exception {
    Fx.run(() -> visit.house.papers().work().execute(work));
    Fx.until("it is told", () -> visit.house.papers().told().contains(words));
    Fx.until("it has ended", () -> !isGoing());
  }

  private static void raise(Throwable fault) {
    switch (fault) {
      case RuntimeException e -> throw e;
      case Error e -> throw e;
      default -> throw new AssertionError(fault);
    }
  }
}
