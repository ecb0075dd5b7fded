package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.BoardCards;
import facetwright.draw.page.ChartPages;
import java.util.List;

/** The score chart, step by step or as a card with all measures on one picture. */
public final class ChartWriter implements Exporter {
  private final boolean isCard;

  private ChartWriter(boolean isCard) {
    this.isCard = isCard;
  }

  public static ChartWriter ofSteps() {
    return new ChartWriter(false);
  }

  static ChartWriter ofCard() {
    return new ChartWriter(true);
  }

  @Override
  public String format() {
    return isCard ? "board-card" : "chart";
  }

  @Override
  public String ending() {
    return isCard ? "board-card.pdf" : "chart.pdf";
  }

  @Override
  public String name() {
    return isCard ? "Card for the board" : "Score chart";
  }

  @Override
  public String use() {
    return isCard
        ? "All measures of a piece on one picture, a quarter of a page, to prop beside the board."
        : "What to score, mark and cut, step by step, with measures for your ruler.";
  }

  @Override
  public String when() {
    return "where measures are few enough to be marked";
  }

  /** Not where all is pricked through the template. */
  @Override
  public boolean adds(Job job) {
    return job.chart().isOfUse();
  }

  /** The pages, for the ruler of the order. */
  @Override
  public List<Drawing> pages(Job job) {
    return isCard
        ? BoardCards.of(job.title(), job.order(), job.laid().net(), job.chart())
        : ChartPages.of(job.title(), job.order(), job.laid());
  }
}
