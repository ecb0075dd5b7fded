package facetwright.worker;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** One worker process, as its workshop sees it. */
final class Child implements Staff.Worker {
  private final Process process;
  private final LinkedBlockingQueue<Message> outbox = new LinkedBlockingQueue<>();
  private final Thread writer;
  private final long start = System.nanoTime();

  private Child(Process process) {
    this.process = process;
    this.writer = Thread.ofPlatform().daemon().name("facetwright-to-worker").unstarted(this::write);
  }

  /**
   * Starts a process.
   *
   * @param heard told every message it sends
   * @param gone told once, when it says no more
   */
  static Child start(ProcessBuilder builder, BiConsumer<Child, Message> heard, Consumer<Child> gone)
      throws IOException {
    Child child = new Child(builder.start());
    child.writer.start();
    Thread.ofPlatform()
        .daemon()
        .name("facetwright-from-worker")
        .start(() -> child.read(heard, gone));
    return child;
  }

  @Override
  public void send(Message message) {
    outbox.add(message);
  }

  /** Ends the process at once. */
  @Override
  public void kill() {
    process.destroyForcibly();
    writer.interrupt();
  }

  @Override
  public boolean isAlive() {
    return process.isAlive();
  }

  @Override
  public Duration spent() {
    // Where the system does not tell, all time since it started.
    return process
        .info()
        .totalCpuDuration()
        .orElseGet(() -> Duration.ofNanos(System.nanoTime() - start));
  }

  private void read(BiConsumer<Child, Message> heard, Consumer<Child> gone) {
    try (var in = new BufferedInputStream(process.getInputStream())) {
      while (true) {
        heard.accept(this, Frames.read(in));
      }
    } catch (IOException e) {
      kill();
      gone.accept(this);
    }
  }

  private void write() {
    try {
      while (true) {
        Frames.write(process.getOutputStream(), outbox.take());
      }
    } catch (IOException | InterruptedException e) {
      // It is gone, or will be found silent.
      kill();
    }
  }
}
