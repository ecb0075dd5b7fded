package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.workbench.findings.FindingsList;
import facetwright.worker.Reply;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would put a script right is offered in that script alone. */
class StaleMendsTest {
  private static final String HOLE =
      """
      design("Two holes", { units: "mm" });
      const foot = panel("foot", { width: 64, height: 50 });
      const front = foot.attach("top", "front", { depth: 50, fold: 90 });
      front.hole({ across: 4, at: [0, 21] });
      """;

  @TempDir private Path folder;
  private Visit visit;

  @AfterEach
  void leave() throws Exception {
    if (visit != null) {
      visit.close();
    }
  }

  private boolean says(String words) throws Exception {
    return Fx.get(() -> Fx.says(visit.house.room(), words));
  }

  private void write(String script) throws Exception {
    Fx.run(() -> visit.house.desk().text().set(script));
  }

  /** A slip breaks the script: the notes of the one before offer nothing till it is mended. */
  @Test
  void aNoteOffersNothingWhileTheScriptHasAFault() throws Exception {
    visit = Visit.at(folder, "hole.js", HOLE);
    Fx.until("a mend is offered", () -> Fx.says(visit.house.room(), "Write 20 in place of 21"));
    write(HOLE + "nothing;\n");
    Fx.until("it has a fault", () -> visit.house.desk().fault().get() != null);
    assertThat(says("Write 20 in place of 21")).isFalse();
    write(HOLE);
    Fx.until("it is offered again", () -> Fx.says(visit.house.room(), "Write 20 in place of 21"));
  }

  /**
   * A design that comes late is of an older script: it is shown, and mends nothing in the newer.
   */
  @Test
  void aLateAnswerMendsNothing() throws Exception {
    Fx.start();
    Design made = Facetwright.evaluate("hole.js", HOLE, Map.of(), Budget.USUAL);
    List<CompletableFuture<Reply>> asked = new ArrayList<>();
    Asking slow =
        _ -> {
          asked.add(new CompletableFuture<>());
          return asked.getLast();
        };
    Fx.run(
        () -> {
          Desk desk = new Desk(slow, Runnable::run);
          FindingsList notes = new FindingsList(desk);
          desk.lay(null, Work.of(HOLE), Work.of(HOLE));
          desk.text().set(HOLE.replace("front.hole({ across: 4, at: [0, 21] });", ""));
          asked.getFirst().complete(new Reply.Done(made));
          assertThat(notes.getChildren()).as("the older one's notes").isNotEmpty();
          assertThat(Fx.says(notes, "Write 20 in place of 21")).isFalse();
          desk.text().set(HOLE);
          asked.getLast().complete(new Reply.Done(made));
          assertThat(Fx.says(notes, "Write 20 in place of 21")).isTrue();
        });
  }
}
