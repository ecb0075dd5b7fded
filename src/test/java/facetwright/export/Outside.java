package facetwright.export;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs of other people that read our files; a missing one fails the test and says its cure. */
final class Outside {
  private Outside() {}

  static String pdfinfo(Path file) {
    return run(
        "apt-get install -y poppler-utils",
        List.of("pdfinfo", "-box", "-l", "99", file.toString()));
  }

  /** Renders each page to PREFIX-N.png (or -0N). */
  static void render(Path pdf, int dpi, Path prefix) {
    run(
        "apt-get install -y poppler-utils",
        List.of(
            "pdftoppm",
            "-r",
            String.valueOf(dpi),
            "-gray",
            "-png",
            pdf.toString(),
            prefix.toString()));
  }

  static String pdftotext(Path file) {
    return run(
        "apt-get install -y poppler-utils", List.of("pdftotext", "-layout", file.toString(), "-"));
  }

  static String pdffonts(Path file) {
    return run("apt-get install -y poppler-utils", List.of("pdffonts", file.toString()));
  }

  /** Runs a script of the system's Python, which finds Debian's packages. */
  static String ezdxf(String script, Path file) {
    return run(
        "apt-get install -y python3-ezdxf",
        List.of("/usr/bin/python3", "-c", script, file.toString()));
  }

  private static String run(String cure, List<String> command) {
    try {
      Path out = Files.createTempFile("outside", ".txt");
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(out.toFile())
              .start();
      if (!process.waitFor(120, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return fail(command + " did not end");
      }
      String said = Files.readString(out, StandardCharsets.UTF_8);
      Files.delete(out);
      if (process.exitValue() != 0) {
        String missing = said.contains("ModuleNotFoundError") ? "\nInstall it with: " + cure : "";
        return fail(command.getFirst() + " failed: " + said + missing);
      }
      return said;
    } catch (IOException e) {
      return fail(command.getFirst() + " is missing. Install it with: " + cure, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return fail("interrupted", e);
    }
  }
}
