package facetwright.draw.page;

import facetwright.draw.Lettering;
import facetwright.draw.picture.Block;
import java.util.List;

/** One picture with its words, which stay together. */
final class Beside {
  private Beside() {}

  /**
   * A picture at the left and words beside it; words that run on far below it stand under it.
   *
   * @param column how much of the width pictures take
   */
  static void set(Flow flow, Block picture, double column, String lead, String words) {
    double x = column + Flow.BESIDE;
    List<String> lines = Lettering.broken(words, Flow.BODY, flow.width() - x - Flow.INDENT);
    double tall = lines.size() * Flow.BODY * Flow.LINE;
    if (tall > 1.5 * picture.height() + 12) {
      under(flow, picture, lead, words);
      return;
    }
    flow.row(
        Math.max(picture.height(), tall),
        top -> {
          flow.print(picture, (column - picture.width()) / 2, top - picture.height());
          flow.print(x, top, lead, lines);
        });
    flow.gap(3);
  }

  /** A picture in the middle and its words below it. */
  static void under(Flow flow, Block picture, String lead, String words) {
    flow.room(picture.height() + 2 + 2 * Flow.BODY * Flow.LINE);
    flow.putCentred(picture);
    flow.gap(2);
    flow.item(lead, words);
    flow.gap(2);
  }
}
