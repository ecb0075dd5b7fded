package facetwright.draw.page;

import facetwright.draw.FreeSpace;
import facetwright.draw.FreeSpace.Corner;
import facetwright.draw.Mark;
import facetwright.draw.picture.Block;
import facetwright.geom.Box2;
import java.util.List;
import java.util.Optional;

/** Puts words and keys where nothing lies on a page. */
final class FreePlaces {
  /** Kept free along the edge of a page, in mm: more where that goes. */
  private static final double[] EDGES = {Tiling.MARGIN, 5};

  private static final double BETWEEN = 3;

  /** Room left beside the panels where the page has it. */
  private static final double ROOMY = 2;

  private FreePlaces() {}

  /** Takes what words cover. */
  static void take(FreeSpace free, Mark mark, double clearance) {
    if (mark instanceof Mark.Text text) {
      free.take(
          new Box2(
              text.at().x() - text.width() / 2,
              text.at().y() - text.size(),
              text.at().x() + text.width() / 2,
              text.at().y() + text.size()),
          clearance);
    }
  }

  /** Puts the first of these that fits, level before upright, and takes its place. */
  static boolean place(FreeSpace free, List<Mark> words, List<Block> variants, Corner corner) {
    for (boolean upright : new boolean[] {false, true}) {
      for (double edge : EDGES) {
        for (double room : new double[] {ROOMY, 0}) {
          for (Block block : variants) {
            double width = upright ? block.height() : block.width();
            double height = upright ? block.width() : block.height();
            Optional<Box2> place =
                free.find(width + 2 * room, height + 2 * room, edge - room, corner)
                    .map(p -> p.grown(-room));
            if (place.isPresent()) {
              free.take(place.get(), BETWEEN);
              words.addAll(block.at(place.get(), upright));
              return true;
            }
          }
        }
      }
    }
    return false;
  }
}
