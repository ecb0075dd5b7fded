package facetwright.export;

import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Chromium without a window, driven over its own protocol: what a reader's pointer and keys do to a
 * page. Every order is awaited by its answer, never by the clock. Where the program is missing the
 * test fails and says its cure.
 */
final class Browser implements AutoCloseable {
  private static final long PATIENCE = 90;
  private static final Pattern LISTENING = Pattern.compile("DevTools listening on (ws://\\S+)");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process process;
  private final Path profile;
  private final WebSocket socket;
  private final HttpClient client = HttpClient.newHttpClient();
  private final AtomicInteger orders = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
  private final List<String> troubles = new CopyOnWriteArrayList<>();
  private final StringBuilder heard = new StringBuilder();
  private String session = "";
  private volatile CompletableFuture<Boolean> loaded = new CompletableFuture<>();

  Browser() throws Exception {
    profile = Files.createTempDirectory("browser");
    List<String> command =
        List.of(
            "chromium",
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--hide-scrollbars",
            "--user-data-dir=" + profile,
            "--remote-debugging-port=0",
            "about:blank");
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException e) {
      throw new AssertionError(
          "chromium is missing. Install it with: apt-get install -y chromium", e);
    }
    try {
      String address = CompletableFuture.supplyAsync(this::address).get(PATIENCE, TimeUnit.SECONDS);
      socket =
          client
              .newWebSocketBuilder()
              .buildAsync(URI.create(address), new Ear())
              .get(PATIENCE, TimeUnit.SECONDS);
      String target =
          order("Target.createTarget", "url", "about:blank").path("targetId").asString();
      session =
          order("Target.attachToTarget", "targetId", target, "flatten", true)
              .path("sessionId")
              .asString();
      for (String room : List.of("Page", "Runtime", "Log")) {
        order(room + ".enable");
      }
    } catch (Exception e) {
      end();
      throw e;
    }
  }

  private String address() {
    try {
      BufferedReader said = process.inputReader();
      StringBuilder all = new StringBuilder();
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        all.append(line).append('\n');
        Matcher m = LISTENING.matcher(line);
        if (m.find()) {
          return m.group(1);
        }
      }
      throw new IllegalStateException("chromium ended: " + all);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What comes over the wire. */
  private final class Ear implements WebSocket.Listener {
    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
      heard.append(part);
      if (last) {
        String whole = heard.toString();
        heard.setLength(0);
        hear(whole);
      }
      from.request(1);
      return null;
    }
  }

  private void hear(String text) {
    try {
      JsonNode said = JSON.readTree(text);
      if (said.has("id")) {
        CompletableFuture<JsonNode> answer = answers.remove(said.path("id").asInt());
        if (answer != null) {
          answer.complete(said);
        }
        return;
      }
      JsonNode what = said.path("params");
      switch (said.path("method").asString()) {
        case "Page.loadEventFired" -> loaded.complete(true);
        case "Runtime.exceptionThrown" -> troubles.add(what.path("exceptionDetails").toString());
        case "Log.entryAdded" -> troubles.add(what.path("entry").toString());
        case "Runtime.consoleAPICalled" -> troubles.add(what.toString());
        default -> {}
      }
    } catch (JacksonException e) {
      troubles.add(e.toString());
    }
  }

  /** Sends an order with names and values in turn, and gives its result. */
  JsonNode order(String method, Object... parameters) {
    ObjectNode all = JSON.createObjectNode();
    int id = orders.incrementAndGet();
    all.put("id", id).put("method", method);
    if (!session.isEmpty()) {
      all.put("sessionId", session);
    }
    ObjectNode params = all.putObject("params");
    for (int i = 0; i < parameters.length; i += 2) {
      params.set(String.valueOf(parameters[i]), JSON.valueToTree(parameters[i + 1]));
    }
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    answers.put(id, answer);
    await(socket.sendText(all.toString(), true), method);
    JsonNode said = await(answer, method);
    if (said.has("error")) {
      fail(method + ": " + said.path("error"));
    }
    return said.path("result");
  }

  private static <T> T await(CompletableFuture<T> answer, String what) {
    try {
      return answer.get(PATIENCE, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      throw new AssertionError("chromium gave no answer to " + what, e);
    } catch (ExecutionException e) {
      throw new AssertionError(what, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  /** Opens a page so many pixels wide and high. */
  void open(Path file, int width, int height) {
    order(
        "Emulation.setDeviceMetricsOverride",
        "width",
        width,
        "height",
        height,
        "deviceScaleFactor",
        1,
        "mobile",
        false);
    loaded = new CompletableFuture<>();
    order("Page.navigate", "url", file.toUri().toString());
    await(loaded, "the page to load");
  }

  /** The value of an expression on the page. */
  JsonNode ask(String expression) {
    JsonNode result = order("Runtime.evaluate", "expression", expression, "returnByValue", true);
    if (result.has("exceptionDetails")) {
      fail(expression + ": " + result.path("exceptionDetails"));
    }
    return result.path("result").path("value");
  }

  /** Presses a key and lets it go, such as "ArrowLeft". */
  void key(String name) {
    int code =
        switch (name) {
          case "Tab" -> 9;
          case "End" -> 35;
          case "Home" -> 36;
          case "ArrowLeft" -> 37;
          case "ArrowUp" -> 38;
          case "ArrowRight" -> 39;
          case "ArrowDown" -> 40;
          default -> throw new IllegalArgumentException(name);
        };
    for (String type : List.of("rawKeyDown", "keyUp")) {
      order(
          "Input.dispatchKeyEvent",
          "type",
          type,
          "key",
          name,
          "code",
          name,
          "windowsVirtualKeyCode",
          code);
    }
  }

  /** Presses the pointer at one place of the window, draws it to another and lets go. */
  void drag(double x1, double y1, double x2, double y2) {
    mouse("mouseMoved", x1, y1, 0);
    mouse("mousePressed", x1, y1, 1);
    for (int i = 1; i <= 4; i++) {
      mouse("mouseMoved", x1 + (x2 - x1) * i / 4, y1 + (y2 - y1) * i / 4, 1);
    }
    mouse("mouseReleased", x2, y2, 0);
  }

  private void mouse(String type, double x, double y, int buttons) {
    order(
        "Input.dispatchMouseEvent",
        "type",
        type,
        "x",
        x,
        "y",
        y,
        "button",
        type.equals("mouseMoved") && buttons == 0 ? "none" : "left",
        "buttons",
        buttons,
        "clickCount",
        type.equals("mouseMoved") ? 0 : 1);
  }

  /** The page as it prints by its own rules for paper. */
  byte[] print() {
    JsonNode result = order("Page.printToPDF", "preferCSSPageSize", true, "printBackground", true);
    return Base64.getDecoder().decode(result.path("data").asString());
  }

  /** What the page complained of since the browser started. */
  List<String> troubles() {
    return List.copyOf(troubles);
  }

  @Override
  public void close() throws IOException {
    socket.abort();
    end();
  }

  private void end() throws IOException {
    List<ProcessHandle> all = new ArrayList<>(process.descendants().toList());
    all.add(process.toHandle());
    all.forEach(ProcessHandle::destroyForcibly);
    all.forEach(one -> await(one.onExit(), "its end"));
    client.close();
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
