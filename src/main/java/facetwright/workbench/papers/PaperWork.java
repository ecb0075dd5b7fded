package facetwright.workbench.papers;

import facetwright.export.file.ExportException;
import facetwright.pace.Pace;
import facetwright.pace.Stopped;
import facetwright.pace.TooMuch;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/**
 * Work on papers, on a thread of its own, one piece after another. Each has its bound and can be
 * stopped; whatever ends it before it is done is told in words, so that nobody waits for what does
 * not come.
 */
public final class PaperWork implements Executor {
  private final Executor thread;
  private final Executor ui;
  private final Consumer<String> failed;
  private final List<Piece> pieces = new ArrayList<>();
  private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper();

  /** One piece of work; it may be of use only as long as nothing newer is asked for. */
  private record Piece(Pace pace, boolean isPassing) {}

  /**
   * @param thread runs work beside the window, in its order
   * @param ui runs work on the window's thread
   * @param failed told on the window's thread why a piece of work came to nothing
   */
  PaperWork(Executor thread, Executor ui, Consumer<String> failed) {
    this.thread = thread;
    this.ui = ui;
    this.failed = failed;
  }

  /** Whether something is being done; for the window's thread. */
  public ReadOnlyBooleanProperty going() {
    return going.getReadOnlyProperty();
  }

  /** Does work that is to be done to its end, such as saving. For the window's thread. */
  @Override
  public void execute(Runnable work) {
    begin(work, false);
  }

  /** The same for work that is of no use any more once something newer is to be shown. */
  void show(Runnable work) {
    begin(work, true);
  }

  /** Ends, without a word, what was to be shown. */
  void pass() {
    pieces.stream().filter(Piece::isPassing).toList().forEach(this::end);
  }

  /** Ends all that is being done and all that waits. */
  public void stop() {
    boolean any = !pieces.isEmpty();
    List.copyOf(pieces).forEach(this::end);
    if (any) {
      failed.accept("Stopped.");
    }
  }

  /** What is being done, and how much of its bound it has used, 0 to 1. */
  String doing() {
    return pieces.isEmpty() ? "" : pieces.getFirst().pace.doing();
  }

  double part() {
    return pieces.isEmpty() ? 0 : pieces.getFirst().pace.part();
  }

  private void end(Piece piece) {
    piece.pace.stop();
    done(piece);
  }

  private void begin(Runnable work, boolean isPassing) {
    Piece piece = new Piece(new Pace(), isPassing);
    pieces.add(piece);
    going.set(true);
    thread.execute(() -> run(piece, work));
  }

  private void run(Piece piece, Runnable work) {
    String why = "";
    try {
      piece.pace.of(
          () -> {
            Pace.step();
            work.run();
            return true;
          });
    } catch (Stopped e) {
      why = "";
    } catch (RuntimeException e) {
      why = text(e);
    }
    String words = why;
    ui.execute(
        () -> {
          boolean isWanted = pieces.contains(piece);
          done(piece);
          if (isWanted && !words.isEmpty()) {
            failed.accept(words);
          }
        });
  }

  private void done(Piece piece) {
    pieces.remove(piece);
    going.set(!pieces.isEmpty());
  }

  /** Why it can't be had, and what to do. */
  static String text(RuntimeException fault) {
    return switch (fault) {
      case ExportException e -> e.getMessage();
      case TooMuch e -> e.getMessage();
      default ->
          "This paper can't be drawn: something went wrong inside the program, not in your design ("
              + fault.getClass().getSimpleName()
              + "). The other papers and your script are not touched by it.";
    };
  }
}
