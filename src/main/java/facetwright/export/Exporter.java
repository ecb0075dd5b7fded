package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.language.Telling;
import facetwright.papers.order.Named;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/**
 * One thing that is written of a design, a paper or a model. All that is told of it anywhere, in
 * the window's list, in help and in the docs, it says itself.
 */
public interface Exporter {
  /** The short name by which it is asked for, such as "pdf". */
  String format();

  /** How the file's name ends, after the design's, such as "template.pdf". */
  String ending();

  /** The name of the (first) file, such as "harbour-lantern-template.pdf". */
  default String fileName(Job job) {
    return job.named().file(ending());
  }

  /** What the file says it is to its reader, such as "Harbour lantern: template". */
  default String title(Job job) {
    return job.named().title(paper(job), reader(job));
  }

  /** What its reader calls it within a sentence, such as "template". */
  default String paper(Job job) {
    return Named.paper(format(), reader(job));
  }

  /** How whoever opens the file is told: as the order says. */
  default Telling reader(Job job) {
    return job.order().telling();
  }

  /** What a maker calls it, such as "Template". */
  String name();

  /** What a maker calls it where it is made for this job. */
  default String name(Job job) {
    return name();
  }

  /** What it is good for, in a sentence. */
  String use();

  /** When it tells more than others do, such as "where the design has layers"; "" for always. */
  default String when() {
    return "";
  }

  /** Whether it is a picture, as wide as the order says. */
  default boolean isPicture() {
    return false;
  }

  /** Whether it is made without being asked for by name, where it adds something. */
  default boolean isUsual() {
    return true;
  }

  /**
   * Whether it tells more of this job than other formats do; asked for by name it is made anyway.
   */
  default boolean adds(Job job) {
    return true;
  }

  /**
   * The pages to look at and to print; empty where it is only a file.
   *
   * @throws facetwright.export.file.ExportException when it can't be made of this job
   */
  default List<Drawing> pages(Job job) {
    return List.of();
  }

  /**
   * The bytes of the (first) file; the same job gives the same bytes. What has pages is a document
   * of them.
   *
   * @throws facetwright.export.file.ExportException when it can't be made of this job
   */
  default byte[] write(Job job) {
    return PdfWriter.write(title(job), job.author(), job.order().language(), pages(job));
  }

  /** Every file of the format by name; more than one only where a format holds one page a file. */
  default SequencedMap<String, byte[]> files(Job job) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(fileName(job), write(job));
    return files;
  }
}
