package facetwright.cli.desk;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import picocli.CommandLine.Option;

/** The ruler that a maker owns: an option shared by all commands that tell measures to set. */
public final class RulerOption {
  @Option(
      names = "--ruler",
      paramLabel = "1/16in|0.5mm",
      description = "the ruler you own: every measure to set is told by it (" + Rulers.USUAL + ")")
  private String ruler = "";

  /**
   * The ruler that was asked for, or the usual one where nothing was written.
   *
   * @throws Trouble.WrongCall when it is no ruler
   */
  public Ruler of(Unit unit) {
    return Rulers.asked(ruler, unit);
  }
}
