package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.HandoutPictures;
import facetwright.draw.TemplatePages;
import facetwright.draw.TiledPages;
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
    List<Drawing> templates =
        TiledPages.isLarger(job.laid(), job.order().paper())
            ? TiledPages.of(job.title(), job.laid(), job.order().paper())
            : TemplatePages.of(job.title(), job.unit(), job.laid());
    return new HandoutContent(
        handout, new HandoutPictures(job.laid(), job.form(), handout), templates);
  }
}
