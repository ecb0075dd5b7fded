package facetwright.papers.cutting;

/**
 * How a sheet is cut.
 *
 * @param paper the sheet
 * @param copies how many sheets are cut alike, at least 1
 * @param whole the sheet as the first part
 */
public record SheetPlan(Paper paper, int copies, Part whole) {

  /** How many of each wanted one sheet gives. */
  public int[] pieces(int kinds) {
    int[] counts = new int[kinds];
    whole.each(
        part -> {
          if (part instanceof Part.Piece piece) {
            counts[piece.kind()]++;
          }
        });
    return counts;
  }

  /** Area of all pieces of one sheet, in mm². */
  double used() {
    double[] sum = {0};
    whole.each(part -> sum[0] += part instanceof Part.Piece ? part.area() : 0);
    return sum[0];
  }

  /** How much of a sheet becomes pieces, 0 to 1. */
  public double part() {
    return used() / paper.area();
  }
}
