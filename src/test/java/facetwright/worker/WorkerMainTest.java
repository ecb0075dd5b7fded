package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.propose.Question;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSizes;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.sandbox.Budget;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worker that the window stands on: whole designs come back as they are made in one process.
 */
class WorkerMainTest {
  private static final Workshop WORKSHOP = new Workshop(Settings.USUAL);

  @AfterAll
  static void close() {
    WORKSHOP.close();
  }

  static List<Path> library() throws IOException {
    return LibraryDesigns.files();
  }

  private static Reply ask(Request request) throws Exception {
    return WORKSHOP.ask(request).get(90, TimeUnit.SECONDS);
  }

  @ParameterizedTest
  @MethodSource("library")
  void sendsTheSameDesign(Path script) throws Exception {
    String name = script.getFileName().toString();
    String source = LibraryDesigns.text(script);
    assertThat(ask(new Request(name, source, Map.of())))
        .isEqualTo(new Reply.Done(Facetwright.evaluate(name, source, Map.of(), Budget.USUAL)));
  }

  static Stream<Question> questions() {
    return Stream.of(
        new Question.Round(Ruler.EIGHTHS, 1),
        new Question.Fit(SheetSizes.named("Letter"), 1, Grid.usual(Unit.MM)),
        new Question.Aim(
            List.of(GoalReader.read("height=120", Unit.MM)), List.of(), Grid.usual(Unit.MM)));
  }

  @ParameterizedTest
  @MethodSource("questions")
  void answersQuestionsAsOneProcessDoes(Question question) throws Exception {
    Path script = LibraryDesigns.file("harbour-lantern");
    Request request =
        new Request("harbour-lantern.js", LibraryDesigns.text(script), Map.of("side", "26"));
    List<Integer> counts = new CopyOnWriteArrayList<>();
    Reply reply = WORKSHOP.ask(request.asking(question), counts::add).get(90, TimeUnit.SECONDS);
    assertThat(reply).isEqualTo(request.asking(question).answer(Budget.USUAL, () -> {}));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Proposed.class, p -> assertThat(p.proposal().ways()).isNotEmpty());
    assertThat(counts).isNotEmpty().isSorted();
  }

  /** At the table a value that a dial can't take gives way: the design is there all the same. */
  @Test
  void aDialTakesTheNearestItCan() throws Exception {
    String source = LibraryDesigns.text("harbour-lantern");
    Reply reply = ask(new Request("harbour-lantern.js", source, Map.of("sides", "7.5")));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Done.class,
            done -> assertThat(done.design().dials().getFirst().value()).isEqualTo(8));
  }
}
