package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
    try (Stream<Path> files = Files.list(Path.of("library"))) {
      return files.filter(f -> f.toString().endsWith(".js")).sorted().toList();
    }
  }

  private static Reply ask(Request request) throws Exception {
    return WORKSHOP.ask(request).get(90, TimeUnit.SECONDS);
  }

  @ParameterizedTest
  @MethodSource("library")
  void sendsTheSameDesign(Path script) throws Exception {
    String name = script.getFileName().toString();
    String source = Files.readString(script);
    assertThat(ask(new Request(name, source, Map.of())))
        .isEqualTo(new Reply.Done(Facetwright.evaluate(name, source, Map.of(), Budget.USUAL)));
  }

  @Test
  void namesTheRangeOfADial() throws Exception {
    String source = Files.readString(Path.of("library/harbour-lantern.js"));
    Reply reply = ask(new Request("harbour-lantern.js", source, Map.of("sides", "7")));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Failed.class,
            failed -> {
              assertThat(failed.kind()).isEqualTo(Kind.BAD_VALUE);
              assertThat(failed.line()).isPositive();
              assertThat(failed.message()).contains("sides", "steps of 2");
            });
  }
}
