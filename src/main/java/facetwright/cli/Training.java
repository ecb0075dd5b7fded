package facetwright.cli;

import facetwright.cli.desk.Library;
import facetwright.script.beside.Shipped;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A run over the whole library, from which the start-up cache learns what is used. */
public final class Training {
  private Training() {}

  /** Checks and makes every library design, writing into a folder that is removed again. */
  public static void main(String[] words) throws Exception {
    System.setProperty(
        "facetwright.home", Path.of(words[0]).toAbsolutePath().getParent().toString());
    PrintWriter nowhere =
        new PrintWriter(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    Path folder = Files.createTempDirectory("facetwright");
    for (Path script : Library.scripts()) {
      Main.run(new String[] {"check", "--json", script.toString()}, nowhere, nowhere);
      Main.run(
          new String[] {"make", script.toString(), "--out", folder.toString()}, nowhere, nowhere);
    }
    String demo = Library.folder().resolve(Shipped.DEMO).toString();
    Main.run(new String[] {"dials", demo}, nowhere, nowhere);
    Main.run(new String[] {"aim", demo, "height=115", "--turn", "wall"}, nowhere, nowhere);
    Main.run(new String[] {"--help"}, nowhere, nowhere);
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
