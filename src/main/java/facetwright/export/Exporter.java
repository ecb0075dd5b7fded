package facetwright.export;

import java.util.LinkedHashMap;
import java.util.SequencedMap;

/** Writes one file format. */
public interface Exporter {
  /** The short name of the format, such as "pdf". */
  String format();

  /** The usual name of the file, such as "template.pdf". */
  String fileName();

  /**
   * Whether it tells more of this job than other formats do; asked for by name it is made anyway.
   */
  default boolean adds(Job job) {
    return true;
  }

  /** The bytes of the (first) file; the same job gives the same bytes. */
  byte[] write(Job job);

  /** Every file of the format by name; more than one only where a format holds one page a file. */
  default SequencedMap<String, byte[]> files(Job job) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(fileName(), write(job));
    return files;
  }
}
