package facetwright.workbench.file;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.List;

/**
 * Tells when other programs touch one file, or a script that it may use: one beside it, or of a
 * folder that every script uses. It sleeps till the system wakes it. Where a file system tells of
 * no changes, as some over a network don't, nothing is told.
 */
public final class FileWatch implements AutoCloseable {
  private final Runnable told;
  private final List<Path> always;
  private WatchService service;
  private WatchKey key;
  private volatile Path name;

  /**
   * @param told run on a thread of its own whenever one was made, written or deleted
   * @param always folders whose scripts are watched, too, whatever file is; those that are not
   *     there are left out
   */
  public FileWatch(Runnable told, Path... always) {
    this.told = told;
    this.always = List.of(always);
  }

  /**
   * Watches a file, in place of the one before.
   *
   * @param file null for none
   */
  public synchronized void watch(Path file) {
    if (key != null) {
      key.cancel();
      key = null;
    }
    name = file == null ? null : file.getFileName();
    Path folder = file == null ? null : file.toAbsolutePath().getParent();
    try {
      if (service == null) {
        service = FileSystems.getDefault().newWatchService();
        WatchService opened = service;
        Thread.ofPlatform().daemon().name("facetwright-watch").start(() -> listen(opened));
        always.forEach(this::register);
      }
      key = folder == null ? null : register(folder);
    } catch (IOException | UnsupportedOperationException e) {
      // It is looked at when the window gets the focus.
      key = null;
    }
  }

  /** Null where the folder can't be watched. */
  private WatchKey register(Path folder) {
    try {
      return folder.register(
          service,
          StandardWatchEventKinds.ENTRY_CREATE,
          StandardWatchEventKinds.ENTRY_MODIFY,
          StandardWatchEventKinds.ENTRY_DELETE);
    } catch (IOException | UnsupportedOperationException e) {
      // It is looked at when the window gets the focus.
      return null;
    }
  }

  private void listen(WatchService opened) {
    try {
      while (true) {
        WatchKey woken = opened.take();
        boolean isOurs = woken.pollEvents().stream().anyMatch(this::isOurs);
        woken.reset();
        if (isOurs) {
          told.run();
        }
      }
    } catch (InterruptedException | ClosedWatchServiceException e) {
      // Nobody listens any more.
    }
  }

  private boolean isOurs(WatchEvent<?> event) {
    return event.kind().equals(StandardWatchEventKinds.OVERFLOW)
        || event.context().equals(name)
        || (event.context() instanceof Path file && file.toString().endsWith(".js"));
  }

  @Override
  public synchronized void close() {
    try {
      if (service != null) {
        service.close();
      }
    } catch (IOException e) {
      // It goes with the program.
      service = null;
    }
  }
}
