package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.picture.HandoutPictures;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.order.Named;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A handout on the printer's pages. Its steps are numbered through. */
public final class HandoutPages {
  /** How high pictures of steps are, in mm; lower ones only where they save a page. */
  private static final double[] TALL = {44, 38, 32};

  /** A last page on which less stands is worth being saved, as part of it. */
  private static final double WELL_FILLED = 0.6;

  private static final double MADE = 68;

  /** How much higher pictures of gluing are, where that takes no page more. */
  private static final double GLUED = 1.25;

  /** A picture that needs more lines under it is given more columns. */
  private static final int MOST_LINES = 10;

  /** Notes of no more characters stand under a picture. */
  private static final int SHORT = 200;

  /** So many pictures stand side by side. */
  private static final int WIDEST = 3;

  /** Headings of further sections over the row that the first one begins, in mm. */
  private static final double HEADS = 14;

  private final HandoutPictures pictures;
  private final Flow flow;
  private final Grid grid;
  private final double tall;
  private final double glued;
  private final Set<String> noted = new HashSet<>();
  private int number;

  private HandoutPages(HandoutPictures pictures, Flow flow, double tall, double glued) {
    this.pictures = pictures;
    this.flow = flow;
    this.grid = new Grid(flow, WIDEST);
    this.tall = tall;
    this.glued = glued;
  }

  /**
   * The pages, without the templates.
   *
   * @param page what the printer takes
   * @param templates how many pages follow with templates, counted with these
   */
  public static List<Drawing> of(
      Handout handout, HandoutPictures pictures, SheetSize page, int templates) {
    Flow best = null;
    double high = TALL[0];
    for (double tall : TALL) {
      Flow flow = flow(handout, pictures, page, tall, tall);
      if (best == null || flow.count() < best.count()) {
        best = flow;
        high = tall;
      }
      if (best.lastPart() > WELL_FILLED) {
        break;
      }
    }
    if (!handout.makings().isEmpty()) {
      Flow larger = flow(handout, pictures, page, high, GLUED * high);
      best = larger.count() == best.count() ? larger : best;
    }
    return best.pages(templates);
  }

  private static Flow flow(
      Handout handout, HandoutPictures pictures, SheetSize page, double tall, double glued) {
    Flow flow =
        new Flow(
            page, handout.title(), Named.paper("handout", pictures.telling()), pictures.telling());
    String author = handout.author().strip();
    flow.title(
        handout.title(),
        author.isEmpty() ? "" : pictures.telling().say("handout.author", "author", author));
    HandoutPages pages = new HandoutPages(pictures, flow, tall, glued);
    handout.sections().forEach(pages::section);
    pages.grid.end();
    return flow;
  }

  private String next() {
    number++;
    return number + ".";
  }

  private void section(Section section) {
    switch (section) {
      case Section.Facts facts -> {
        grid.end();
        facts.picture().ifPresent(p -> flow.aside(pictures.block(p, MADE, MADE)));
        flow.heading(facts.heading());
        facts.lines().forEach(l -> flow.item("–", l));
      }
      case Section.Ordered ordered -> {
        grid.end();
        ordered(ordered);
      }
      case Section.Steps steps -> cells(steps.heading(), steps.notes(), steps.pictures());
      case Section.Pictures shown -> cells(shown.heading(), List.of(), shown.pictures());
    }
  }

  private void ordered(Section.Ordered ordered) {
    flow.clear();
    flow.heading(ordered.heading(), 20);
    ordered.lines().forEach(l -> flow.item(next(), l));
    flow.clear();
    flow.gap(3);
  }

  /** What was noted before is not noted again; what is short stands in the first cell. */
  private void cells(String heading, List<String> all, List<Picture> shown) {
    List<String> notes = new ArrayList<>(all);
    notes.removeAll(noted);
    noted.addAll(notes);
    String told = String.join(" ", notes);
    boolean isApart = told.length() > SHORT || (!told.isEmpty() && !grid.isWithin());
    List<Grid.Cell> cells = new ArrayList<>();
    for (Picture picture : shown) {
      boolean isFirst = cells.isEmpty() && !isApart;
      cells.add(cell(isFirst ? heading : "", isFirst ? told : "", picture));
    }
    if (isApart) {
      grid.lead(heading, told, HEADS + grid.first(cells));
    }
    cells.forEach(grid::add);
  }

  private Grid.Cell cell(String head, String note, Picture picture) {
    int span = 1;
    double high = picture instanceof Picture.Midway ? glued : tall;
    HandoutPictures.Told told = pictures.told(picture, grid.width(span), high);
    if (!told.isWhole()) {
      HandoutPictures.Told wide = pictures.told(picture, grid.width(2), tall);
      if (wide.isWhole()) {
        told = wide;
        span = 2;
      }
    }
    String words = told.words() + (note.isEmpty() ? "" : "\n" + note);
    while (span < WIDEST && grid.lines(words, span) > MOST_LINES) {
      span++;
    }
    return new Grid.Cell(head, told.block(), span, next(), words);
  }
}
