package facetwright.draw;

import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.List;

/**
 * What a line means, and with it how it looks. This is the one place that fixes widths, dashes and
 * inks. Dashed for valley and dash-dot for mountain: from memory, the habit of folding diagrams.
 */
// The fields are unmodifiable; the checker cannot see it of a list and of a record without its
// mark.
@SuppressWarnings("ImmutableEnumChecker")
public enum LineKind {
  SHEET("sheet", "edge of the sheet", Ink.GREY, 0.18, List.of(12.0, 2.5)),
  GLUE("glue", "glued area", Ink.OCHRE, 0.13, List.of()),
  GLUE_INSIDE("glue-inside", "glued on the other face", Ink.OCHRE, 0.35, List.of(0.5, 1.1)),
  LAYER("layer", "edge of a layer", Ink.RUST, 0.2, List.of(8.0, 0.8)),
  BACKING("backing", "edge of a backing, behind the card", Ink.RUST, 0.18, List.of(1.6, 1.2)),
  GUIDE("guide", "ruler and guide", Ink.BLACK, 0.2, List.of()),
  TICK("tick", "tick: starts or ends a line", Ink.OCHRE, 0.2, List.of()),
  DONE("done", "scored or cut before", Ink.GREY, 0.18, List.of()),
  FOLDED("folded", "edge of the folded form", Ink.BLACK, 0.2, List.of()),
  VALLEY("valley", "valley: the crest points away from you", Ink.PLUM, 0.35, List.of(3.0, 1.6)),
  MOUNTAIN(
      "mountain", "mountain: the crest points at you", Ink.TEAL, 0.35, List.of(5.0, 1.3, 0.5, 1.3)),
  PERFORATION("perforation", "perforation", Ink.BLACK, 0.45, List.of(0.45, 1.15)),
  CUT("cut", "cut", Ink.BLACK, 0.35, List.of()),
  NOW("now", "to do in this step", Ink.BLACK, 0.7, List.of());

  private final String id;
  private final String label;
  private final Ink ink;
  private final double width;
  private final List<Double> dashes;

  LineKind(String id, String label, Ink ink, double width, List<Double> dashes) {
    this.id = id;
    this.label = label;
    this.ink = ink;
    this.width = width;
    this.dashes = dashes;
  }

  /** How a score is drawn, seen from outside. */
  public static LineKind of(Score score) {
    return score.perforated() ? PERFORATION : score.sense() == Sense.MOUNTAIN ? MOUNTAIN : VALLEY;
  }

  /** What it is on the other face of the card. */
  LineKind turnedOver() {
    return switch (this) {
      case MOUNTAIN -> VALLEY;
      case VALLEY -> MOUNTAIN;
      default -> this;
    };
  }

  /** A short name without blanks, for layers and groups of a file. */
  public String id() {
    return id;
  }

  /** What a legend says. */
  public String label() {
    return label;
  }

  public Ink ink() {
    return ink;
  }

  /** In mm. */
  public double width() {
    return width;
  }

  /** Lengths of dash and gap in turn, in mm; empty for a solid line. */
  public List<Double> dashes() {
    return dashes;
  }
}
