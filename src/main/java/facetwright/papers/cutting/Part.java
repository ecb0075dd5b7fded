package facetwright.papers.cutting;

import java.util.function.Consumer;

/** A rectangle of paper and what becomes of it. */
public sealed interface Part {
  /** In mm. */
  double width();

  /** In mm. */
  double height();

  /**
   * Cut edge to edge in two.
   *
   * @param at how far from the edge, in mm
   * @param first the part between that edge and the cut
   * @param second what lies beyond the cut; nothing of it is left where the blade takes all
   */
  record Cut(double width, double height, FromEdge way, double at, Part first, Part second)
      implements Part {}

  /**
   * One that was wanted.
   *
   * @param kind its index among the wanted
   * @param turned whether it lies turned a quarter
   */
  record Piece(double width, double height, int kind, boolean turned) implements Part {}

  /** Left over. */
  record Waste(double width, double height) implements Part {}

  /** In mm². */
  default double area() {
    return width() * height();
  }

  /** This part and all that come of it, each cut before its parts. */
  default void each(Consumer<Part> visit) {
    visit.accept(this);
    if (this instanceof Cut cut) {
      cut.first().each(visit);
      cut.second().each(visit);
    }
  }

  /** How often the blade comes down. */
  default int cuts() {
    return this instanceof Cut c ? 1 + c.first().cuts() + c.second().cuts() : 0;
  }
}
