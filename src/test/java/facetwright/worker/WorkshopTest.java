package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.sandbox.ScriptException.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** With real processes. */
class WorkshopTest {
  private static final Duration SECOND = Duration.ofSeconds(1);

  private static Workshop workshop;

  @BeforeAll
  static void open() {
    workshop = open(Duration.ofSeconds(2), Duration.ofSeconds(60));
  }

  @AfterAll
  static void close() {
    workshop.close();
  }

  private static Workshop open(Duration patience, Duration longest) {
    return new Workshop(
        new Settings(TrialWorker.class.getName(), 512, patience, patience, longest));
  }

  private static Request script(String source) {
    return new Request("design.js", source, Map.of());
  }

  private static Reply answer(CompletableFuture<Reply> reply) throws Exception {
    return reply.get(90, TimeUnit.SECONDS);
  }

  private static void works(Workshop shop) throws Exception {
    assertThat(answer(shop.ask(script("title('Lantern');"))))
        .isEqualTo(new Reply.Done(TrialWorker.card("Lantern")));
  }

  @Test
  void sendsBackTheDesignAsEqualPlainData() throws Exception {
    works(workshop);
  }

  @Test
  void namesTheLineOfAnError() throws Exception {
    Reply reply = answer(workshop.ask(script("const a = 1;\n  titel('x');")));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Failed.class,
            failed -> {
              assertThat(failed.kind()).isEqualTo(Kind.UNKNOWN_NAME);
              assertThat(List.of(failed.line(), failed.site().column())).containsExactly(2, 3);
              assertThat(failed.remedy()).contains("title");
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "title('a');\nfunction f() { try { f(); } catch (e) { f(); } } f();",
        "title('a');\nfunction f() { try { f(); } finally { f(); } } f();",
        "title('a');\nfor (;;) { ('İ'.repeat(1999) + 'x').toLowerCase(); }",
        "title('a');\nwhile (true) {}",
      })
  void endsARunawayNamesItsLineAndWorksOn(String source) throws Exception {
    Reply reply = answer(workshop.ask(script(source)));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Failed.class,
            failed -> {
              assertThat(failed.kind()).isIn(Kind.TIME, Kind.RECURSION, Kind.MEMORY);
              assertThat(failed.line()).isEqualTo(2);
            });
    works(workshop);
  }

  @Test
  void theNewestAskTakesTheTurnOfThoseBeforeIt() throws Exception {
    CompletableFuture<Reply> first = workshop.ask(script("while (true) {}"));
    CompletableFuture<Reply> second = workshop.ask(script("while (true) {}"));
    CompletableFuture<Reply> third = workshop.ask(script("title('third');"));
    assertThat(answer(second)).isEqualTo(new Reply.Stopped());
    assertThat(answer(third)).isEqualTo(new Reply.Done(TrialWorker.card("third")));
    // It was under way, or gave way while the worker was starting.
    assertThat(answer(first)).isInstanceOfAny(Reply.Failed.class, Reply.Stopped.class);
  }

  /** Asks in bursts, runaways and faults among them: the last is answered, and nobody is ended. */
  @Test
  void aHandThatAsksOnAndOnCostsNoWorker() throws Exception {
    try (Workshop shop = open(Duration.ofSeconds(4), Duration.ofSeconds(60))) {
      Random random = new Random(20261130);
      List<CompletableFuture<Reply>> replies = new ArrayList<>();
      for (int i = 0; i < 400; i++) {
        String source =
            switch (random.nextInt(20)) {
              case 0 -> "while (true) {}";
              case 1 -> "titel('x');";
              default -> "title('" + i + "');";
            };
        CompletableFuture<Reply> reply = shop.ask(script(source));
        replies.add(reply);
        if (random.nextInt(15) == 0) {
          // The hand looks at what came.
          answer(reply);
        }
      }
      replies.add(shop.ask(script("title('last');")));
      assertThat(answer(replies.getLast())).isEqualTo(new Reply.Done(TrialWorker.card("last")));
      assertThat(replies).allMatch(CompletableFuture::isDone);
      assertThat(shop.started()).isLessThanOrEqualTo(2);
    }
  }

  /** As the system does when memory runs out: it is told at once, not at the next ask. */
  @Test
  void aWorkerKilledFromOutsideIsToldAtOnceAndReplaced() throws Exception {
    try (Workshop shop = open(Duration.ofSeconds(4), Duration.ofSeconds(60))) {
      Set<ProcessHandle> others = ProcessHandle.current().children().collect(Collectors.toSet());
      works(shop);
      ProcessHandle worker =
          ProcessHandle.current().children().filter(p -> !others.contains(p)).findFirst().get();
      CompletableFuture<Reply> reply = shop.ask(new Request(TrialWorker.DEAF, "", Map.of()));
      assertThat(worker.destroyForcibly()).isTrue();
      assertThat(answer(reply))
          .isInstanceOfSatisfying(
              Reply.Failed.class, failed -> assertThat(failed.kind()).isEqualTo(Kind.INTERNAL));
      works(shop);
    }
  }

  @Test
  void anAskCanBeCancelled() throws Exception {
    CompletableFuture<Reply> ask = workshop.ask(script("while (true) {}"));
    workshop.cancel();
    assertThat(answer(ask)).isEqualTo(new Reply.Stopped());
    works(workshop);
  }

  @Test
  void aWorkerThatDoesNotAnswerACancelIsReplaced() throws Exception {
    try (Workshop impatient = open(Duration.ofMillis(300), Duration.ofSeconds(60))) {
      CompletableFuture<Reply> deaf = impatient.ask(new Request(TrialWorker.DEAF, "", Map.of()));
      CompletableFuture<Reply> next = impatient.ask(script("title('next');"));
      assertThat(answer(deaf)).isEqualTo(new Reply.Stopped());
      assertThat(answer(next)).isEqualTo(new Reply.Done(TrialWorker.card("next")));
    }
  }

  @Test
  void aWorkerThatNeverAnswersIsReplaced() throws Exception {
    try (Workshop shop = open(SECOND, Duration.ofSeconds(10))) {
      Reply reply = answer(shop.ask(new Request(TrialWorker.DEAF, "", Map.of())));
      assertThat(reply)
          .isInstanceOfSatisfying(
              Reply.Failed.class, failed -> assertThat(failed.kind()).isEqualTo(Kind.TIME));
      works(shop);
    }
  }

  @Test
  void aWorkerThatDiesIsReplaced() throws Exception {
    Reply reply = answer(workshop.ask(new Request(TrialWorker.CRASH, "", Map.of())));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Failed.class, failed -> assertThat(failed.kind()).isEqualTo(Kind.INTERNAL));
    works(workshop);
  }

  @Test
  void strayPrintsDoNotReachTheStream() throws Exception {
    assertThat(answer(workshop.ask(new Request(TrialWorker.PRINT, "title('p')", Map.of()))))
        .isEqualTo(new Reply.Done(TrialWorker.card("p")));
  }

  @Test
  void tellsHowItGoesOn() throws Exception {
    List<Integer> counts = new java.util.concurrent.CopyOnWriteArrayList<>();
    Request request = new Request(TrialWorker.TRIES, "title('t')", Map.of());
    assertThat(answer(workshop.ask(request, counts::add)))
        .isEqualTo(new Reply.Done(TrialWorker.card("t")));
    assertThat(counts).containsExactly(1, 2, 3);
  }

  @Test
  void aDesignThatIsTooLargeIsRefusedWithAReason() throws Exception {
    Reply reply = answer(workshop.ask(new Request(TrialWorker.HUGE, "", Map.of())));
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Failed.class, failed -> assertThat(failed.message()).contains("too large"));
  }

  @Test
  void aProgramThatCannotStartIsToldNotWaitedFor() throws Exception {
    Settings wrong =
        new Settings("facetwright.NoSuchMain", 64, SECOND, SECOND, Duration.ofSeconds(60));
    try (Workshop shop = new Workshop(wrong)) {
      assertThat(answer(shop.ask(script("title('a')")))).isInstanceOf(Reply.Failed.class);
    }
  }

  @Test
  void aClosedWorkshopStopsEveryAsk() throws Exception {
    Workshop shop = open(SECOND, Duration.ofSeconds(60));
    CompletableFuture<Reply> ask = shop.ask(script("title('a')"));
    shop.close();
    assertThat(answer(ask)).isEqualTo(new Reply.Stopped());
    assertThat(answer(shop.ask(script("title('a')")))).isEqualTo(new Reply.Stopped());
  }
}
