package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.HandoutPictures;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import java.util.ArrayList;
import java.util.List;

/** A handout on the printer's pages. Its steps are numbered through. */
public final class HandoutPages {
  private static final double TALL = 52;
  private static final double GLUED = 100;
  private static final int ABREAST = 3;

  private final HandoutPictures pictures;
  private final Flow flow;
  private int number;

  private HandoutPages(HandoutPictures pictures, Flow flow) {
    this.pictures = pictures;
    this.flow = flow;
  }

  /**
   * The pages, without the templates.
   *
   * @param page what the printer takes
   * @param templates how many pages follow with templates, counted with these
   */
  public static List<Drawing> of(
      Handout handout, HandoutPictures pictures, SheetSize page, int templates) {
    Flow flow = new Flow(page, handout.title(), "handout");
    flow.title(handout.title(), handout.author().isBlank() ? "" : "by " + handout.author().strip());
    HandoutPages pages = new HandoutPages(pictures, flow);
    handout.sections().forEach(pages::section);
    return flow.pages(templates);
  }

  private String next() {
    number++;
    return number + ".";
  }

  private void section(Section section) {
    switch (section) {
      case Section.Facts facts -> {
        flow.heading(facts.heading());
        facts.lines().forEach(l -> flow.item("–", l));
      }
      case Section.Ordered ordered -> {
        List<Block> shown =
            ordered.pictures().stream().map(p -> pictures.block(p, flow.width(), GLUED)).toList();
        flow.heading(ordered.heading(), shown.isEmpty() ? 20 : shown.getFirst().height() + 12);
        for (int i = 0; i < shown.size(); i++) {
          flow.putCentred(shown.get(i));
          flow.gap(2);
        }
        ordered.pictures().stream().findFirst().ifPresent(p -> flow.words(p.words()));
        flow.gap(1);
        ordered.lines().forEach(l -> flow.item(next(), l));
      }
      case Section.Steps steps -> {
        double column = ChartPages.PICTURE;
        List<Block> shown =
            steps.pictures().stream().map(p -> pictures.block(p, column, TALL)).toList();
        double notes = steps.notes().stream().mapToDouble(flow::heightOf).sum();
        double first = shown.isEmpty() ? 0 : Math.max(15, shown.getFirst().height());
        flow.heading(steps.heading(), notes + 2 + first);
        steps.notes().forEach(flow::words);
        flow.gap(1.5);
        for (int i = 0; i < shown.size(); i++) {
          flow.beside(shown.get(i), column, next(), steps.pictures().get(i).words());
        }
      }
      case Section.Pictures shown -> row(shown);
    }
  }

  private void row(Section.Pictures shown) {
    flow.heading(shown.heading(), TALL + 12);
    double wide = (flow.width() - 12) / ABREAST;
    for (int i = 0; i < shown.pictures().size(); i += ABREAST) {
      List<Picture> row =
          shown.pictures().subList(i, Math.min(i + ABREAST, shown.pictures().size()));
      List<String> leads = new ArrayList<>();
      row.forEach(_ -> leads.add(next()));
      flow.row(
          row.stream().map(p -> pictures.block(p, wide, TALL)).toList(),
          leads,
          row.stream().map(Picture::words).toList(),
          ABREAST);
    }
  }
}
