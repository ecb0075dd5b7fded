package facetwright.workbench;

import facetwright.workbench.desk.Work;
import facetwright.workbench.file.Worked;
import facetwright.workbench.file.Worked.What;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.fxmisc.richtext.CodeArea;

/**
 * The whole program on no screen, worked in by a seeded hand until somebody ends it: letters typed,
 * dials turned and dragged, slips made and mended, steps undone, and now and then a saving. What
 * stands at the desk after each step is written down with its time.
 */
public final class WindowToKill {
  private static final long DEADLINE = TimeUnit.MINUTES.toNanos(2);
  private static final String LETTERS = "abc xyz. (12)\n";

  private final House house;
  private final FileChannel log;
  private final Random random;
  private Work last;

  private WindowToKill(House house, FileChannel log, long seed) {
    this.house = house;
    this.log = log;
    this.random = new Random(seed);
  }

  /**
   * Opens the window and works on; a line is said for each step.
   *
   * @param words the script, what is written down, the seed
   */
  public static void main(String[] words) throws Exception {
    System.setProperty("glass.platform", "Headless");
    System.setProperty("prism.order", "sw");
    Thread.ofPlatform().daemon().start(() -> Workbench.open("open", words[0]));
    House house = house();
    try (FileChannel log =
        FileChannel.open(Path.of(words[1]), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      WindowToKill work = new WindowToKill(house, log, Long.parseLong(words[2]));
      Fx.run(() -> work.note(What.MADE));
      while (house.getScene() != null) {
        work.step();
      }
    }
  }

  /** Waits for the toolkit and the window. */
  private static House house() throws Exception {
    long end = System.nanoTime() + DEADLINE;
    while (System.nanoTime() < end) {
      try {
        House found =
            Fx.get(
                () ->
                    Window.getWindows().stream()
                        .filter(w -> w.getScene() != null)
                        .map(w -> w.getScene().getRoot())
                        .filter(House.class::isInstance)
                        .map(House.class::cast)
                        .findFirst()
                        .orElse(null));
        if (found != null) {
          return found;
        }
      } catch (IllegalStateException e) {
        // The toolkit has not begun yet.
        Thread.onSpinWait();
      }
    }
    throw new AssertionError("no window came");
  }

  private void step() throws Exception {
    int dice = random.nextInt(100);
    if (dice < 50) {
      type();
    } else if (dice < 65) {
      Fx.run(this::turn);
    } else if (dice < 70) {
      drag();
    } else if (dice < 76) {
      Fx.run(this::slip);
    } else if (dice < 84) {
      Fx.run(this::mend);
    } else if (dice < 91) {
      Fx.run(house.desk()::undo);
    } else {
      Fx.run(this::save);
    }
    Fx.run(() -> note(What.MADE));
    for (int pulses = random.nextInt(4); pulses > 0; pulses--) {
      Fx.pulse();
    }
  }

  private CodeArea area() {
    return house.room().card().area();
  }

  /** Some letters at the end, mostly of a comment. */
  private void type() throws Exception {
    int letters = 1 + random.nextInt(8);
    boolean comment = random.nextInt(10) > 0;
    Fx.run(() -> area().moveTo(area().getLength()));
    for (int i = 0; i < letters; i++) {
      String letter =
          i == 0 && comment
              ? "\n// "
              : String.valueOf(LETTERS.charAt(random.nextInt(LETTERS.length())));
      Fx.run(
          () -> {
            area().replaceSelection(letter);
            note(What.MADE);
          });
    }
  }

  private void turn() {
    String dial = random.nextBoolean() ? "tall" : "side";
    house.desk().turn(dial, String.valueOf(20 + random.nextInt(40)));
  }

  private void drag() throws Exception {
    Fx.run(() -> house.desk().hold(true));
    for (int i = 0; i < 6; i++) {
      Fx.run(
          () -> {
            turn();
            note(What.MADE);
          });
      Fx.pulse();
    }
    Fx.run(() -> house.desk().hold(false));
  }

  /** A slip at a word that the program knows how to mend; or, made already, it is left. */
  private void slip() {
    int at = area().getText().indexOf("prism(");
    if (at >= 0) {
      area().replaceText(at, at + 5, "prysm");
    }
  }

  /** The key that mends what is found wrong, where something is. */
  private void mend() {
    Event.fireEvent(
        area(),
        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, true, false));
  }

  private void save() {
    write(What.SAVING);
    house.filing().save();
    write(house.desk().changed().get() ? What.MADE : What.SAVED);
  }

  /** Writes down what stands there, where it is another than before. */
  private void note(What what) {
    if (!house.desk().work().equals(last)) {
      write(what);
    }
  }

  private void write(What what) {
    last = house.desk().work();
    new Worked(what, System.currentTimeMillis(), last).writeTo(log);
    System.out.println(what);
  }
}
