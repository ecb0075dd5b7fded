package facetwright.workbench.file;

import facetwright.workbench.desk.Work;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * One step of somebody's work, as it is written down.
 *
 * @param at milliseconds of the system's clock
 */
public record Worked(What what, long at, Work work) {
  /** What was done. */
  public enum What {
    MADE,
    SAVING,
    SAVED
  }

  /** Appends it. What the system has taken stays, even where the process is ended. */
  public void writeTo(FileChannel log) {
    byte[] json = new Kept(null, "", "", work).json().getBytes(StandardCharsets.UTF_8);
    String line = what + " " + at + " " + Base64.getEncoder().encodeToString(json) + "\n";
    ByteBuffer bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII));
    try {
      while (bytes.hasRemaining()) {
        log.write(bytes);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that is written down whole. */
  static List<Worked> read(Path log) throws IOException {
    String all = Files.readString(log, StandardCharsets.US_ASCII);
    List<Worked> steps = new ArrayList<>();
    for (String line : all.substring(0, all.lastIndexOf('\n') + 1).lines().toList()) {
      String[] words = line.split(" ", 3);
      String json = new String(Base64.getDecoder().decode(words[2]), StandardCharsets.UTF_8);
      steps.add(
          new Worked(
              What.valueOf(words[0]),
              Long.parseLong(words[1]),
              Kept.of(json).orElseThrow().work()));
    }
    return steps;
  }
}
