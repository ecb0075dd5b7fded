package facetwright.cli.desk;

import facetwright.pace.Pace;
import facetwright.words.Decimals;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Long work of a command, each piece with its bound. Once it has taken longer than a moment, a
 * terminal's error stream says in one line, rewritten, what is being done; what is no terminal is
 * left alone.
 */
public final class Progress {
  private static final long MOMENT = 1000;
  private static final String CLEAR = "\r\u001b[K";

  private final PrintWriter err;
  private final boolean isSeen;
  private final long moment;
  private final long most;

  public Progress(PrintWriter err) {
    this(isTerminal() ? terminal() : err, isTerminal(), MOMENT, Pace.MOST);
  }

  /**
   * @param isSeen whether somebody watches the stream
   * @param moment until it is told, and from then on between two times, in ms
   * @param most steps that a piece of work may take
   */
  public Progress(PrintWriter err, boolean isSeen, long moment, long most) {
    this.moment = moment;
    this.err = err;
    this.isSeen = isSeen;
    this.most = most;
  }

  /** The terminal itself: the commands' stream shows control codes as marks, ours among them. */
  private static PrintWriter terminal() {
    return new PrintWriter(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8);
  }

  /**
   * Does a piece of work.
   *
   * @param what is being done, such as "Drawing layout.pdf"
   * @throws facetwright.pace.TooMuch where it came to its bound
   */
  public <T, X extends Throwable> T during(String what, ScopedValue.CallableOp<T, X> work)
      throws X {
    Pace pace = new Pace(most);
    Thread teller =
        Thread.ofPlatform().daemon().name("facetwright-progress").unstarted(() -> tell(what, pace));
    if (isSeen) {
      teller.start();
    }
    try {
      return pace.<T, X>of(work);
    } finally {
      teller.interrupt();
      join(teller);
    }
  }

  private static void join(Thread teller) {
    try {
      teller.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void tell(String what, Pace pace) {
    boolean told = false;
    try {
      for (long times = 1; ; times++) {
        Thread.sleep(moment);
        told = true;
        err.print(CLEAR + line(what, pace, times * moment / 1000));
        err.flush();
      }
    } catch (InterruptedException e) {
      if (told) {
        err.print(CLEAR);
        err.flush();
      }
    }
  }

  /** Such as "Drawing layout.pdf: laying copies on the sheet … 3 s, 4 % of what it may take". */
  public static String line(String what, Pace pace, long seconds) {
    return what
        + (pace.doing().isEmpty() ? "" : ": " + pace.doing())
        + " … "
        + seconds
        + " s, "
        + Decimals.places(100 * pace.part(), pace.part() < 0.1 ? 1 : 0)
        + " % of what it may take";
  }

  /** Whether the error stream is a terminal; where the system does not say, whether all are. */
  private static boolean isTerminal() {
    Path own = Path.of("/proc/self/fd/2");
    try {
      if (Files.exists(own)) {
        String leads = Files.readSymbolicLink(own).toString();
        return leads.startsWith("/dev/pts/") || leads.startsWith("/dev/tty");
      }
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
    return Optional.ofNullable(System.console()).filter(Console::isTerminal).isPresent();
  }
}
