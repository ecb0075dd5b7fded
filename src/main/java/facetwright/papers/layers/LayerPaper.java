package facetwright.papers.layers;

import facetwright.papers.cutting.Paper;
import java.util.List;

/**
 * A decorative paper at hand.
 *
 * @param name as layers name it; empty for layers that name none
 * @param sizes its sheets; the pattern, where it has a direction, runs up their height
 * @param faced whether only one of its sides is to be seen
 * @param directed whether its pattern has an upright
 */
public record LayerPaper(String name, List<Paper> sizes, boolean faced, boolean directed) {
  /**
   * @throws IllegalArgumentException when it has no sheet
   */
  public LayerPaper {
    sizes = List.copyOf(sizes);
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("the paper \"" + name + "\" needs the size of its sheet");
    }
  }
}
