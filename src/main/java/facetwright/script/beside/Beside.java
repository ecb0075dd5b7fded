package facetwright.script.beside;

import facetwright.script.sandbox.ScriptLength;
import facetwright.script.text.FileNames;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.words.NearName;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;

/**
 * The files that a script may use: those of its own folder, then those of the library. Each is read
 * once and remembered until {@link #forget}.
 */
public final class Beside {
  /** The folder in the library's folder whose files scripts use. */
  private static final String IN_LIBRARY = "use";

  private final Optional<Path> folder;
  private final Path library;
  private final Map<String, Piece> read = new HashMap<>();

  /**
   * @param folder the script's own; empty for one that lies in none
   * @param library the folder of the designs that come with the program
   */
  public Beside(Optional<Path> folder, Path library) {
    this.folder = folder;
    this.library = ofLibrary(library);
  }

  /** The folder in the library whose files every script may use. */
  public static Path ofLibrary(Path library) {
    return library.resolve(IN_LIBRARY);
  }

  /** For a script that lies in a file. */
  public static Beside of(Path script, Path library) {
    return new Beside(Optional.ofNullable(script.toAbsolutePath().getParent()), library);
  }

  /** Reads anew what is asked for next. */
  public void forget() {
    read.clear();
  }

  /**
   * A script with all that it uses below it, and what these files use. Why one can't be had stands
   * in its place, and is told when the script comes to use it.
   */
  public String whole(String script) {
    Gathered own = Gathered.of(Gathered.own(script));
    Set<String> seen = new LinkedHashSet<>();
    own.pieces().forEach(p -> seen.add(p.name()));
    Queue<String> wanted = new ArrayDeque<>(Gathered.used(own.main()));
    own.pieces().forEach(p -> wanted.addAll(Gathered.used(p.text())));
    List<Piece> more = new ArrayList<>();
    int letters = own.text().length();
    while (!wanted.isEmpty()) {
      String name = wanted.remove();
      if (FileNames.fault(name).isEmpty() && seen.add(name)) {
        Piece piece = bounded(piece(name), seen.size(), letters);
        letters += piece.text().length();
        more.add(piece);
        if (piece.state() == Piece.State.READ) {
          wanted.addAll(Gathered.used(piece.text()));
        }
      }
      if (seen.size() > Gathered.MOST) {
        break;
      }
    }
    return own.with(more).text();
  }

  /** What the files are called that it may use: those of its folder first. */
  public List<String> names() {
    return places().stream().flatMap(p -> OneFile.names(p).stream()).distinct().toList();
  }

  /** The files of the script's own folder that it uses, and that these use. */
  public List<String> ofFolder(String script) {
    Set<String> held = new LinkedHashSet<>();
    Gathered.of(Gathered.own(script)).pieces().forEach(p -> held.add(p.name()));
    return Gathered.of(whole(script)).pieces().stream()
        .filter(p -> p.state() == Piece.State.READ && !held.contains(p.name()))
        .map(Piece::name)
        .filter(name -> folder.isPresent() && OneFile.in(folder.get(), name).isPresent())
        .toList();
  }

  private static Piece bounded(Piece piece, int count, int letters) {
    if (count > Gathered.MOST) {
      return lacking(
          piece.name(),
          "a script may use up to " + Gathered.MOST + " files, with those that they use");
    }
    return letters + piece.text().length() > ScriptLength.MOST
        ? lacking(
            piece.name(),
            "with " + piece.name() + " the script" + ScriptLength.WRONG + ", with all that it uses")
        : piece;
  }

  private Piece piece(String name) {
    return read.computeIfAbsent(name, this::find);
  }

  private Piece find(String name) {
    for (Path place : places()) {
      Optional<Piece> found = OneFile.in(place, name);
      if (found.isPresent()) {
        return found.get();
      }
    }
    String meant = NearName.nearest(name, names()).map(n -> "; did you mean " + n + "?").orElse("");
    return lacking(
        name,
        folder.isPresent()
            ? "there is no " + name + " in the script's folder, nor in the library" + meant
            : "the library has no "
                + name
                + meant
                + ", and the script has no folder before it is saved");
  }

  private List<Path> places() {
    List<Path> places = new ArrayList<>();
    folder.ifPresent(places::add);
    places.add(library);
    return places;
  }

  static Piece lacking(String name, String why) {
    return new Piece(name, Piece.State.LACKING, why);
  }
}
