package facetwright.workbench.look;

import facetwright.draw.Ink;
import javafx.scene.paint.Color;

/**
 * The colours of the room that drawings on it need, and how large their lettering is; style sheets
 * hold the rest.
 *
 * @param ground of the table
 * @param paper of the sheet
 * @param edge of the sheet
 * @param shadow under the sheet
 * @param words on the ground
 * @param quiet lesser words and ruler marks on the ground
 * @param selection what is pointed out
 * @param type how large lettering is against the usual, over 0
 */
public record Shade(
    Color ground,
    Color paper,
    Color edge,
    Color shadow,
    Color words,
    Color quiet,
    Color selection,
    double type) {
  public static final Shade LIGHT =
      new Shade(
          Color.web("#EFEAE0"),
          Pen.colour(Ink.CARD),
          Color.web("#B9B2A4"),
          Pen.colour(Ink.BLACK, 0.10),
          Pen.colour(Ink.BLACK),
          Color.web("#6B6559"),
          Pen.colour(Ink.RUST),
          1);
  public static final Shade DARK =
      new Shade(
          Color.web("#23211E"),
          Color.web("#F2EEE4"),
          Color.web("#8F887B"),
          Color.web("#000000", 0.35),
          Color.web("#ECE7DC"),
          Color.web("#A79F90"),
          Pen.colour(Ink.RUST),
          1);

  /** Whether words on the ground are lighter than it. */
  public boolean isDark() {
    return words.getBrightness() > ground.getBrightness();
  }

  public static Shade of(boolean dark) {
    return dark ? DARK : LIGHT;
  }

  /** The same with lettering so many times as large as usual. */
  public Shade lettered(double times) {
    return new Shade(ground, paper, edge, shadow, words, quiet, selection, times);
  }
}
