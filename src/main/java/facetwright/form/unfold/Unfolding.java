package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormException;
import facetwright.geom.RoundOff;
import facetwright.geom.SteadyOrder;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How to unfold a form to a net. A net is chosen that does not overlap, where all tabs fit, that
 * fits the sheet where one is named, and that packs small, in this order. Its tabs are as symmetric
 * as its panels where that costs nothing. Where no net in one piece is found it is split into the
 * fewest pieces found, and a note says so; a style that can't be drawn without overlap gives way to
 * a searched tree, and a note says so. The same form and settings give the same net; of nets as
 * good as each other it is the one found first, so that a form changed by a hair keeps its net.
 *
 * <p>What is not promised: that a net in one piece is found wherever there is one, or that the
 * smallest is.
 *
 * @param style how it is laid flat
 * @param base name of the facet it stands on and spreads from; empty for the facet named "base", or
 *     else the one that faces down most
 * @param tabs how tabs are made
 * @param sheetWidth width in mm of a sheet it should fit, 0 for none
 * @param sheetHeight height of that sheet, 0 for none
 * @param tries how many trees of scores a search may try, 1 to 100 000
 * @param seed where the search's chance starts
 */
public record Unfolding(
    UnfoldStyle style,
    String base,
    Tabs tabs,
    double sheetWidth,
    double sheetHeight,
    int tries,
    long seed)
    implements Serializable {
  /** How many of the layouts found get tabs and are compared. */
  private static final int COMPARED = 6;

  /** The same where flaps have a shape of their own, for which there may be no room in most. */
  private static final int COMPARED_FOR_FLAPS = 40;

  public Unfolding {
    FormCheck.require(
        sheetWidth >= 0 && sheetHeight >= 0 && sheetWidth < 1e5 && sheetHeight < 1e5,
        () -> Message.of("a sheet to fit is 0 to %s wide and high", Value.given(100_000)));
    FormCheck.require(
        tries >= 1 && tries <= 100_000, "a search tries 1 to 100 000 trees, not " + tries);
  }

  /** This style with the usual tabs and no sheet. */
  public static Unfolding as(UnfoldStyle style) {
    return new Unfolding(style, "", Tabs.USUAL, 0, 0, 120, 1);
  }

  public Unfolding on(String baseFacet) {
    return new Unfolding(style, baseFacet, tabs, sheetWidth, sheetHeight, tries, seed);
  }

  public Unfolding with(Tabs newTabs) {
    return new Unfolding(style, base, newTabs, sheetWidth, sheetHeight, tries, seed);
  }

  /** Prefers nets that fit this sheet, turned as may be. */
  public Unfolding fitting(double width, double height) {
    return new Unfolding(style, base, tabs, width, height, tries, seed);
  }

  /**
   * Unfolds a form.
   *
   * @throws FormException when the base names no facet
   * @throws NetException never for a form that passed its checks, save where a facet that is flat
   *     to 0.001 mm only has sides so short that its neighbours can't meet it to 1e-6 mm
   */
  public UnfoldResult unfold(Form form) {
    FlatForm flat = new FlatForm(form);
    int root = baseOf(form);
    List<UnfoldNote> notes = new ArrayList<>();
    List<Layout> found = drawn(flat, root);
    int tried = Math.max(1, found.size());
    if (found.isEmpty()) {
      Search search = new Search(flat, root, tries, seed).run();
      tried = search.tries();
      found = search.whole().isEmpty() ? List.of(search.fewest()) : search.whole();
      if (style != UnfoldStyle.SEARCH) {
        notes.add(
            UnfoldNote.ofAll(
                Message.of(
                    "This form can't be laid flat as %s without overlap, so a searched tree is used"
                        + " instead.",
                    style.text())));
      }
    }
    Candidate chosen = best(found).alike(tabs, sheetWidth, sheetHeight);
    SaidTabs.check(chosen, tabs, notes);
    UnfoldNotes.add(notes, chosen, tabs, tried, sheetWidth > 0);
    return new UnfoldResult(
        NetMaker.net(chosen, root, !base.isEmpty()), chosen.layout().pieces() > 1, tried, notes);
  }

  private List<Layout> drawn(FlatForm flat, int root) {
    return switch (style) {
      case STRIP -> Styles.strips(flat, axis(flat.form(), root));
      case PETALS -> Styles.petals(flat, root);
      case GORES -> Styles.gores(flat, axis(flat.form(), root));
      case SEARCH -> List.of();
    };
  }

  private Candidate best(List<Layout> found) {
    record Rough(Layout layout, Packing packing) {}
    double margin = tabs.on() ? 2 * tabs.depth() : 0;
    double width = sheetWidth > 0 ? Math.max(1, sheetWidth - margin) : 0;
    double height = sheetWidth > 0 ? Math.max(1, sheetHeight - margin) : 0;
    List<Rough> rough = new ArrayList<>();
    // The same layout is often found again: of a form with few facets more often than not.
    Map<Layout.Tree, Packing> packings = new HashMap<>();
    for (Layout layout : found) {
      Packing packing =
          packings.computeIfAbsent(
              layout.way(),
              _ -> {
                var panels = Candidate.panels(layout, 0);
                return Packing.of(panels, panels, width, height);
              });
      rough.add(new Rough(layout, packing));
    }
    double size = found.getFirst().flat().size();
    List<Rough> small = SteadyOrder.by(rough, RoundOff.PART * size * size, r -> r.packing.area());
    List<Rough> first =
        small.stream()
            .sorted(Comparator.comparing(r -> !r.packing.fits()))
            .limit(found.getFirst().flat().isAnyCut() ? COMPARED_FOR_FLAPS : COMPARED)
            .toList();
    Candidate best = null;
    Set<Layout.Tree> compared = new HashSet<>();
    for (Rough r : first) {
      if (compared.add(r.layout.way())) {
        Candidate next = Candidate.of(r.layout, tabs, sheetWidth, sheetHeight);
        if (best == null || next.betterThan(best)) {
          best = next;
        }
      }
    }
    return best;
  }

  private int baseOf(Form form) {
    if (!base.isEmpty()) {
      return form.facet(base);
    }
    if (form.hasFacet("base")) {
      return form.facet("base");
    }
    int lowest = facing(form, -1);
    // Where nothing looks straight down, as of a lid, petals spread from what looks straight up.
    double level = 1 - RoundOff.SOLVED;
    int highest = facing(form, 1);
    return style == UnfoldStyle.PETALS
            && form.frame(lowest).normal().z() > -level
            && form.frame(highest).normal().z() > level
        ? highest
        : lowest;
  }

  /** The facet that looks most up, or where {@code way} is −1 down; of those alike the first. */
  private static int facing(Form form, int way) {
    int most = 0;
    double best = Double.NEGATIVE_INFINITY;
    for (int f = 0; f < form.facets().size(); f++) {
      double z = way * form.frame(f).normal().z();
      if (z > best + RoundOff.PART) {
        best = z;
        most = f;
      }
    }
    return most;
  }

  /** Square to the base where one is named or lies level, else straight up. */
  private Vec3 axis(Form form, int root) {
    Vec3 up = form.frame(root).normal().times(-1);
    boolean named = !base.isEmpty() || form.hasFacet("base");
    return named || up.z() > 1 - RoundOff.SOLVED ? up : Vec3.Z;
  }
}
