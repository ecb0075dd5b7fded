package facetwright.workbench.picture;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import facetwright.workbench.desk.Helpers;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Makes pictures of folded forms, one after another, with workers that are there only while there
 * is something to do. For the window's thread.
 */
public final class Pictures {
  private final Path folder;
  private final Supplier<Helpers> hire;
  private final Executor aside;
  private final Executor ui;
  private final Deque<Wish> wishes = new ArrayDeque<>();
  private final Map<String, Picture> made = new LinkedHashMap<>();
  private Helpers helpers;
  private volatile boolean closed;
  private boolean busy;

  private record Wish(Wall wall, Request request, String key, Consumer<Picture> show) {}

  /** Where pictures hang: one view's wishes, apart from those of others. */
  public final class Wall {
    private Wall() {}

    /** Wishes for a picture. */
    public void of(Request request, Consumer<Picture> show) {
      String key = key(request);
      Picture known = made.get(key);
      if (known != null) {
        show.accept(known);
        return;
      }
      wishes.add(new Wish(this, request, key, show));
      next();
    }

    /** Forgets what was wished for here and is not made yet. */
    public void forget() {
      wishes.removeIf(w -> w.wall.equals(this));
    }

    /** Whether nothing is wished for here that is not made yet. Tests watch by it. */
    public boolean isAtRest() {
      return !busy && wishes.stream().noneMatch(w -> w.wall.equals(this));
    }
  }

  /**
   * @param folder where pictures are kept
   * @param hire starts workers
   * @param aside runs work beside the window, and may be slow
   * @param ui runs work on the window's thread
   */
  public Pictures(Path folder, Supplier<Helpers> hire, Executor aside, Executor ui) {
    this.folder = folder;
    this.hire = hire;
    this.aside = aside;
    this.ui = ui;
  }

  /** A wall for one more view. */
  public Wall wall() {
    return new Wall();
  }

  /** Lets all workers go; what still comes in is let go, too. */
  public void close() {
    closed = true;
    wishes.clear();
    letGo();
  }

  private void letGo() {
    if (helpers != null) {
      helpers.close();
      helpers = null;
    }
  }

  private void next() {
    if (busy) {
      return;
    }
    Wish wish = wishes.poll();
    if (wish == null) {
      letGo();
      return;
    }
    busy = true;
    aside.execute(
        () -> {
          Optional<Picture> kept = kept(wish.key);
          ui.execute(() -> kept.ifPresentOrElse(p -> done(wish, p), () -> ask(wish)));
        });
  }

  private void ask(Wish wish) {
    if (helpers == null) {
      helpers = hire.get();
    }
    var _ = helpers.ask(wish.request).thenAcceptAsync(reply -> picture(wish, reply), aside);
  }

  private void picture(Wish wish, Reply reply) {
    Picture picture =
        switch (reply) {
          case Reply.Done(var design) -> {
            Picture seen = Picture.of(design);
            if (!closed) {
              keep(wish.key, seen);
            }
            yield seen;
          }
          case Reply.Failed failed when failed.line() > 0 ->
              new Picture("The script has a fault in line " + failed.line(), List.of());
          case Reply.Failed failed -> new Picture(failed.message(), List.of());
          case Reply.Proposed _, Reply.Stopped _ -> null;
        };
    ui.execute(() -> done(wish, picture));
  }

  private void done(Wish wish, Picture picture) {
    busy = false;
    if (picture != null) {
      made.put(wish.key, picture);
      wish.show.accept(picture);
    }
    next();
  }

  private Optional<Picture> kept(String key) {
    Path file = folder.resolve(key);
    try {
      return Files.isRegularFile(file)
          ? Optional.of(Picture.read(Files.readAllBytes(file)))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private void keep(String key, Picture picture) {
    LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(key, picture.bytes());
    try {
      WholeFiles.write(folder, files);
    } catch (ExportException e) {
      // It is made anew the next time.
      return;
    }
  }

  private static String key(Request request) {
    StringBuilder all = new StringBuilder(request.source());
    new TreeMap<>(request.settings())
        .forEach((dial, value) -> all.append('\0').append(dial).append('=').append(value));
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(all.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, 40) + ".picture";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
