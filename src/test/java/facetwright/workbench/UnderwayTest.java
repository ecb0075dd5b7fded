package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Long work is spoken of and can be stopped; the net stays. */
class UnderwayTest {
  private static final String BOX =
      "design(\"Box\");\nprism({ sides: 4, side: 30, height: 30 }).unfold();\n";

  private final List<CompletableFuture<Reply>> asked = new ArrayList<>();
  private final Deque<Runnable> due = new ArrayDeque<>();
  private Design made;

  /** Answers when it is told to; what is stopped says so at once. */
  private final Asking held =
      new Asking() {
        @Override
        public CompletableFuture<Reply> ask(Request request) {
          asked.add(new CompletableFuture<>());
          return asked.getLast();
        }

        @Override
        public void stop() {
          asked.getLast().complete(new Reply.Stopped());
        }
      };

  @BeforeEach
  void make() throws Exception {
    Fx.start();
    made = Facetwright.evaluate("box.js", BOX, Map.of(), Budget.USUAL);
  }

  private void pass() {
    List<Runnable> now = new ArrayList<>(due);
    due.clear();
    now.forEach(Runnable::run);
  }

  @Test
  void isToldOnceItTakesLongAndCountsOn() throws Exception {
    Fx.run(
        () -> {
          Desk desk = new Desk(held, Runnable::run);
          Underway bar = new Underway(desk, (_, work) -> due.add(work));
          desk.lay(null, Work.of(BOX), Work.of(BOX));
          assertThat(bar.isVisible()).as("at once").isFalse();
          pass();
          assertThat(Fx.says(bar, "Making the net of an untitled design …")).isTrue();
          pass();
          assertThat(Fx.says(bar, "1 second")).isTrue();
          asked.getLast().complete(new Reply.Done(made));
          assertThat(bar.isVisible()).as("made").isFalse();
          pass();
          assertThat(bar.isVisible()).as("a late tick").isFalse();
        });
  }

  /** What is quick is never spoken of, however many letters are typed. */
  @Test
  void isNotToldWhilePicturesCome() throws Exception {
    Fx.run(
        () -> {
          Desk desk = new Desk(held, Runnable::run);
          Underway bar = new Underway(desk, (_, work) -> due.add(work));
          desk.lay(null, Work.of(BOX), Work.of(BOX));
          for (int i = 0; i < 9; i++) {
            desk.text().set(BOX + "//" + i);
            asked.get(i).complete(new Reply.Done(made));
          }
          Runnable late = due.peekLast();
          due.clear();
          asked.getLast().complete(new Reply.Done(made));
          late.run();
          assertThat(bar.isVisible()).isFalse();
        });
  }

  @Test
  void isStoppedAndTheNetStays() throws Exception {
    Fx.run(
        () -> {
          Desk desk = new Desk(held, Runnable::run);
          Underway bar = new Underway(desk, (_, work) -> due.add(work));
          desk.lay(null, Work.of(BOX), Work.of(BOX));
          asked.getLast().complete(new Reply.Done(made));
          desk.text().set(BOX + "// more");
          pass();
          Fx.button(bar, "Stop").fire();
          assertThat(bar.isVisible()).isFalse();
          assertThat(desk.working().get()).isFalse();
          assertThat(desk.design().get()).isEqualTo(made);
          assertThat(desk.fault().get().message()).isEqualTo("stopped before the net was made");
          desk.text().set(BOX);
          asked.getLast().complete(new Reply.Done(made));
          assertThat(desk.fault().get()).isNull();
        });
  }
}
