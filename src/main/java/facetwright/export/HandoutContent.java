package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.HandoutPictures;
import facetwright.papers.handout.Handout;
import java.util.List;

/** The handout of a job, whatever it is written as. */
record HandoutContent(Handout handout, HandoutPictures pictures, List<Drawing> templates) {
  static HandoutContent of(Job job) {
    Handout handout =
        Handout.of(
            job.title(),
            job.author(),
            job.unit(),
            job.order().ruler(),
            job.laid(),
            job.form(),
            GuidesWriter.works(job));
    List<Drawing> templates = job.isTiled() ? job.tiles() : job.templates();
    return new HandoutContent(
        handout, new HandoutPictures(job.laid(), job.form(), handout), templates);
  }
}
