package facetwright.cli.desk;

import facetwright.aim.Grid;
import facetwright.measure.Unit;
import facetwright.message.Refused;
import picocli.CommandLine.Option;

/** The ruler that dials are set by, or none: an option shared by the commands that turn dials. */
public final class GridOption {
  @Option(
      names = {"--ruler", "--grid"},
      paramLabel = "1/16in|0.5mm|none",
      description = "the ruler they are set by (" + Rulers.USUAL + ")")
  private String ruler = "";

  /**
   * The marks that were asked for, or the usual ones where nothing was written.
   *
   * @throws Trouble.WrongCall when it is no ruler
   */
  public Grid of(Unit unit) {
    try {
      return ruler.isEmpty() ? Grid.usual(unit) : Grid.read(ruler, unit);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--ruler " + ruler + ": " + Refused.text(e, unit) + ".");
    }
  }
}
