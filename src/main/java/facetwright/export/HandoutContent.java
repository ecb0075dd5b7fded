package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.Template;
import facetwright.draw.page.TiledPages;
import facetwright.draw.picture.HandoutPictures;
import facetwright.papers.handout.Handout;
import java.util.List;

/** The handout of a job, whatever it is written as. */
record HandoutContent(Handout handout, HandoutPictures pictures, List<Drawing> templates) {
  /** A handout with more pages of template would be a template with a handout. */
  private static final int MOST_TILES = 24;

  static HandoutContent of(Job job) {
    Handout handout =
        Handout.of(
            job.title(),
            job.author(),
            job.order(),
            job.laid(),
            job.making(),
            job.judgement(),
            GuidesWriter.works(job));
    List<Drawing> templates =
        !job.isTiled()
            ? job.templates()
            : job.tiles().size() <= MOST_TILES
                ? job.tiles()
                : TiledPages.keys(
                    job.title(),
                    job.order().telling(),
                    job.laid(),
                    job.order().page(),
                    Template.outside(job.gluing()));
    return new HandoutContent(
        handout, new HandoutPictures(job.laid(), handout, job.order().telling()), templates);
  }
}
