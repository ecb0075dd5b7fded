package facetwright.workbench.desk;

import facetwright.script.design.Design;
import facetwright.words.Site;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * What was asked for and what came of it: the last good design, and what is wrong. Designs come
 * while newer ones are awaited, so that the net follows a hand that does not wait for it.
 */
final class Answers {
  private final Asking asking;
  private final Executor ui;
  private final ReadOnlyObjectWrapper<Design> design = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Fault> fault = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
  private final Supplier<String> script;
  private final Runnable reshaped;
  private final ReadOnlyLongWrapper heard = new ReadOnlyLongWrapper();
  private String made = "";
  private long asked;
  private long answered;

  /**
   * @param script the script as it stands now
   * @param reshaped told when a design of another number of panels comes, before it shows
   */
  Answers(Asking asking, Executor ui, Supplier<String> script, Runnable reshaped) {
    this.asking = asking;
    this.ui = ui;
    this.script = script;
    this.reshaped = reshaped;
  }

  ReadOnlyObjectProperty<Design> design() {
    return design.getReadOnlyProperty();
  }

  /** Counts what came, and changes when all of it stands. */
  ReadOnlyLongProperty heard() {
    return heard.getReadOnlyProperty();
  }

  /** The script that the design was made of; empty before there is one. */
  String made() {
    return made;
  }

  ReadOnlyObjectProperty<Fault> fault() {
    return fault.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty working() {
    return working.getReadOnlyProperty();
  }

  /** Other work begins: what came of the former counts no more, nor does what is on its way. */
  void forget() {
    answered = asked;
    fault.set(null);
    design.set(null);
    heard.set(heard.get() + 1);
  }

  /** Stops what is being worked on; the last good design stays. */
  void stop() {
    if (working.get()) {
      asking.stop();
    }
  }

  /**
   * @param own the script alone, without the files that it uses
   */
  void ask(Request request, String own) {
    long number = ++asked;
    working.set(true);
    var _ = asking.ask(request).thenAccept(reply -> ui.execute(() -> heard(number, own, reply)));
  }

  private void heard(long number, String source, Reply reply) {
    if (number <= answered) {
      return;
    }
    boolean isLast = number == asked;
    if (isLast) {
      working.set(false);
    }
    switch (reply) {
      case Reply.Done(Design came) -> {
        answered = number;
        fault.set(null);
        if (design.get() == null
            || came.net().panels().size() != design.get().net().panels().size()) {
          reshaped.run();
        }
        made = source;
        design.set(came);
      }
      case Reply.Failed failed -> {
        // Its place is one of the script that was asked about.
        if (isLast || source.equals(script.get())) {
          fault.set(Fault.of(source, failed));
        }
      }
      case Reply.Stopped _ -> {
        if (isLast) {
          fault.set(
              new Fault(
                  source,
                  "stopped before the net was made",
                  Site.NONE,
                  "Type on or turn a dial, and it is made",
                  List.of(),
                  List.of()));
        }
      }
      case Reply.Proposed _ -> {}
    }
    heard.set(heard.get() + 1);
  }
}
