package facetwright.papers.handout;

import facetwright.check.Verdict;
import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.fold.Measures;
import facetwright.geom.Length;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;

/**
 * What a student needs to make a piece, and a teacher to prepare for a class.
 *
 * @param title of the design
 * @param author who made it, blank where not said
 * @param sections in the order to be read
 */
public record Handout(String title, String author, List<Section> sections) {
  /** How far open the pictures on the way show it. */
  private static final double[] ON_THE_WAY = {0.3, 0.65};

  public Handout {
    sections = List.copyOf(sections);
  }

  /**
   * @param unit lengths are told in it
   * @param laid the net on its sheets
   * @param form the folded form of the same net
   * @param copies how many are to be made
   */
  public static Handout of(
      String title, String author, Unit unit, Laid laid, FoldedForm form, int copies) {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section.Facts("Finished size", size(unit, laid, form)));
    sections.add(
        new Section.Facts(
            copies == 1 ? "You need" : "You need, for " + copies + " pieces",
            Needs.lines(laid, copies)));
    sections.add(new Section.Facts("Take care", Cautions.of(laid.net())));
    sections.add(new Section.Ordered("Prepare the card", prepare(laid)));
    sections.add(new Section.Pictures("Step by step", pictures(laid, form)));
    List<String> glue = glue(laid.net(), form);
    if (!glue.isEmpty()) {
      sections.add(new Section.Ordered("Glue in this order", glue));
    }
    return new Handout(title, author, sections);
  }

  private static boolean isSolved(FoldedForm form) {
    return form.closure() != Closure.NOT_SOLVED;
  }

  private static List<String> size(Unit unit, Laid laid, FoldedForm form) {
    List<String> lines = new ArrayList<>();
    if (isSolved(form)) {
      Measures m = form.measures();
      lines.add(
          shown(m.height(), unit)
              + " tall, "
              + shown(m.width(), unit)
              + " wide, "
              + shown(m.depth(), unit)
              + " deep.");
    }
    lines.add(Verdict.of(laid, form));
    return lines;
  }

  private static String shown(double mm, Unit unit) {
    return Ruler.usual(unit).read(new Length(mm)).text();
  }

  private static List<String> prepare(Laid laid) {
    Net net = laid.net();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Print the template at 100 %, without fitting to the page, and lay a ruler on the check"
            + " ruler. The outside of the piece faces up.");
    long perforated = net.scores().stream().filter(s -> s.perforated()).count();
    long mountains =
        net.scores().stream().filter(s -> !s.perforated() && s.sense() == Sense.MOUNTAIN).count();
    long valleys = net.scores().size() - perforated - mountains;
    lines.add(
        "Score before you cut, while the sheet is still square: "
            + count(mountains, "mountain")
            + " (dash and dot) and "
            + count(valleys, "valley")
            + " (dashed)."
            + (perforated == 0 ? "" : " Perforate " + count(perforated, "line") + " (dotted)."));
    long holes = openings(net, true);
    long windows = openings(net, false);
    if (holes + windows > 0) {
      lines.add(
          "Before the outline, "
              + (windows > 0 ? "cut out " + count(windows, "window") : "")
              + (windows > 0 && holes > 0 ? " and " : "")
              + (holes > 0 ? "punch " + count(holes, "hole") : "")
              + ".");
    }
    lines.add(
        "Cut along the solid lines"
            + (net.slits().isEmpty()
                ? "."
                : ", and the " + count(net.slits().size(), "slit") + " up to where they stop."));
    lines.add(
        "Fold every score once, sharply, and open it again: mountains with the crest toward you,"
            + " valleys with the crest away.");
    if (!net.layers().isEmpty()) {
      lines.add("Glue on the decorative papers while the piece is flat, each with an even border.");
    }
    return lines;
  }

  static long openings(Net net, boolean holes) {
    return net.panels().stream()
        .flatMap(p -> p.openings().stream())
        .filter(o -> o instanceof Opening.Hole == holes)
        .count();
  }

  static String count(long n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }

  private static List<Picture> pictures(Laid laid, FoldedForm form) {
    List<Picture> pictures = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      String sheet = laid.sheets() == 1 ? "" : " " + (i + 1);
      pictures.add(
          new Picture.Flat(
              i,
              "Sheet" + sheet + ", outside up: scored, cut and flat.",
              "The net on its sheet"
                  + sheet
                  + ": cuts solid, mountains dash and dot, valleys"
                  + " dashed, glued areas hatched."));
    }
    if (!isSolved(form)) {
      return pictures;
    }
    String[] words = {
      "Lift all panels along their scores, a little everywhere.",
      "Go on evenly; tabs and gussets go inward."
    };
    for (int i = 0; i < ON_THE_WAY.length; i++) {
      long part = Math.round(100 * ON_THE_WAY[i]);
      pictures.add(
          new Picture.Folded(
              ON_THE_WAY[i],
              words[i],
              "The piece folded " + part + " % of the way, from the side."));
    }
    pictures.add(
        new Picture.Folded(
            1,
            laid.net().joins().isEmpty() ? "Made." : "Glued in the order below, and made.",
            "The finished piece from the side."));
    return pictures;
  }

  private static List<String> glue(Net net, FoldedForm form) {
    if (net.joins().isEmpty() || !isSolved(form)) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("Fit everything dry once. Glue thinly; hold each place until it grips.");
    lines.addAll(AssemblyText.lines(net, Assembly.of(net, form)));
    return lines;
  }
}
