package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.geom.RoundOff;
import facetwright.geom.SteadyOrder;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.net.NetException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The nets found of a form, from which one is chosen for a sheet. They are looked for once, however
 * many sheets are asked about.
 */
public final class Nets {
  /** How many of the layouts found get tabs and are compared. */
  private static final int COMPARED = 6;

  /** The same where flaps have a shape of their own, for which there may be no room in most. */
  private static final int COMPARED_FOR_FLAPS = 40;

  /** The same of layouts that lie on themselves turned over. */
  private static final int EVEN_COMPARED = 2;

  private final Form form;
  private final Unfolding unfolding;
  private final FlatForm flat;
  private final int root;
  private List<Layout> found = List.of();

  /** Layouts that lie on themselves turned over. */
  private List<Search.Even> even = List.of();

  private int tried;
  private boolean instead;

  /** The tabs of each layout that was compared: they are the same on every sheet. */
  private final Map<Layout.Tree, TabPlan> planned = new HashMap<>();

  private final Map<Layout.Tree, Optional<EvenTabs>> plannedEvenly = new HashMap<>();

  /** Tabs that lie on each other as a layout does in a way in which it is turned over. */
  private record EvenTabs(Likeness likeness, TabPlan plan) {}

  private final Map<Sheet, UnfoldResult> chosen = new HashMap<>();

  /** A sheet that was asked about. */
  private record Sheet(double width, double height) {}

  /**
   * @throws FormException when the base names no facet
   */
  public Nets(Form form, Unfolding unfolding) {
    this.form = form;
    this.unfolding = unfolding;
    flat = new FlatForm(form);
    root = baseOf();
  }

  /**
   * The best of them for a sheet.
   *
   * @param width of the sheet in mm, 0 for none
   * @param height of the sheet in mm, 0 for none
   * @throws NetException never for a form that passed its checks, save where a facet that is flat
   *     to 0.001 mm only has sides so short that its neighbours can't meet it to 1e-6 mm
   */
  public UnfoldResult on(double width, double height) {
    return chosen.computeIfAbsent(new Sheet(width, height), _ -> chosen(width, height));
  }

  private UnfoldResult chosen(double width, double height) {
    look();
    List<UnfoldNote> notes = new ArrayList<>();
    if (instead) {
      notes.add(
          UnfoldNote.ofAll(
              Message.of(
                  "This form can't be laid flat as %s without overlap, so a searched tree is used"
                      + " instead.",
                  unfolding.style().text())));
    }
    Tabs tabs = unfolding.tabs();
    Candidate best = best(width, height).alike(tabs, width, height);
    SaidTabs.check(best, tabs, notes);
    UnfoldNotes.add(notes, best, tabs, tried, width > 0);
    return new UnfoldResult(
        NetMaker.net(best, root, !unfolding.base().isEmpty()),
        best.layout().pieces() > 1,
        tried,
        notes);
  }

  private void look() {
    if (!found.isEmpty()) {
      return;
    }
    found = drawn();
    tried = Math.max(1, found.size());
    if (found.isEmpty()) {
      Search search = new Search(flat, root, unfolding.tries(), unfolding.seed()).run();
      tried = search.tries();
      found = search.whole().isEmpty() ? List.of(search.fewest()) : search.whole();
      instead = unfolding.style() != UnfoldStyle.SEARCH;
      even = unfolding.style() == UnfoldStyle.SEARCH ? search.even() : List.of();
    }
  }

  private List<Layout> drawn() {
    return switch (unfolding.style()) {
      case STRIP -> Styles.strips(flat, axis());
      case PETALS -> Styles.petals(flat, root);
      case GORES -> Styles.gores(flat, axis());
      case SEARCH -> List.of();
    };
  }

  /**
   * The best for a sheet: one that lies on itself turned over, where it is worth its size.
   *
   * <p>Of the others only those get tabs that may be so much smaller that it is not.
   */
  private Candidate best(double sheetWidth, double sheetHeight) {
    List<Rough<Search.Even>> evens =
        smallest(even, Search.Even::layout, sheetWidth, sheetHeight, EVEN_COMPARED);
    Optional<Candidate> first =
        evens.stream().findFirst().flatMap(e -> evenly(e.one, sheetWidth, sheetHeight));
    int most = flat.isAnyCut() ? COMPARED_FOR_FLAPS : COMPARED;
    Candidate best = null;
    for (Rough<Layout> r : smallest(found, Function.identity(), sheetWidth, sheetHeight, most)) {
      if (best != null && first.filter(e -> e.isWorthBeside(r.packing)).isPresent()) {
        break;
      }
      TabPlan plan =
          planned.computeIfAbsent(r.one.way(), _ -> TabFitter.plan(r.one, unfolding.tabs()));
      Candidate next = Candidate.of(r.one, plan, sheetWidth, sheetHeight);
      if (best == null || next.betterThan(best)) {
        best = next;
      }
    }
    Candidate smallest = best;
    return evens.stream()
        .flatMap(e -> evenly(e.one, sheetWidth, sheetHeight).stream())
        .filter(e -> e.isWorth(smallest))
        .findFirst()
        .orElse(smallest);
  }

  /** A layout, or what has one, and how it packs without tabs. */
  private record Rough<T>(T one, Layout.Tree way, Packing packing) {}

  /**
   * The smallest of some layouts as they are without tabs, those that fit the sheet first.
   *
   * @param most how many; of those alike one is given
   */
  private <T> List<Rough<T>> smallest(
      List<T> some, Function<T, Layout> layout, double sheetWidth, double sheetHeight, int most) {
    Tabs tabs = unfolding.tabs();
    double margin = tabs.on() ? 2 * tabs.depth() : 0;
    double width = sheetWidth > 0 ? Math.max(1, sheetWidth - margin) : 0;
    double height = sheetWidth > 0 ? Math.max(1, sheetHeight - margin) : 0;
    List<Rough<T>> rough = new ArrayList<>();
    // The same layout is often found again: of a form with few facets more often than not.
    Map<Layout.Tree, Packing> packings = new HashMap<>();
    for (T one : some) {
      Layout.Tree way = layout.apply(one).way();
      Packing packing =
          packings.computeIfAbsent(
              way,
              _ -> {
                var panels = Candidate.panels(layout.apply(one), 0);
                return Packing.of(panels, panels, width, height);
              });
      rough.add(new Rough<>(one, way, packing));
    }
    double size = flat.size();
    Set<Layout.Tree> seen = new HashSet<>();
    return SteadyOrder.by(rough, RoundOff.PART * size * size, r -> r.packing.area()).stream()
        .sorted(Comparator.comparing(r -> !r.packing.fits()))
        .limit(most)
        .filter(r -> seen.add(r.way))
        .toList();
  }

  private Optional<Candidate> evenly(Search.Even one, double sheetWidth, double sheetHeight) {
    return plannedEvenly
        .computeIfAbsent(one.layout().way(), _ -> evenly(one))
        .map(
            tabs ->
                Candidate.of(
                    one.layout(),
                    tabs.plan(),
                    sheetWidth,
                    sheetHeight,
                    Optional.of(tabs.likeness())));
  }

  private Optional<EvenTabs> evenly(Search.Even one) {
    return Likeness.in(one.layout(), one.mirror())
        .flatMap(
            like ->
                TabFitter.nearlyAlike(one.layout(), unfolding.tabs(), List.of(like))
                    .map(plan -> new EvenTabs(like, plan)));
  }

  private int baseOf() {
    String base = unfolding.base();
    if (!base.isEmpty()) {
      return form.facet(base);
    }
    if (form.hasFacet("base")) {
      return form.facet("base");
    }
    int lowest = facing(-1);
    // Where nothing looks straight down, as of a lid, petals spread from what looks straight up.
    double level = 1 - RoundOff.SOLVED;
    int highest = facing(1);
    return unfolding.style() == UnfoldStyle.PETALS
            && form.frame(lowest).normal().z() > -level
            && form.frame(highest).normal().z() > level
        ? highest
        : lowest;
  }

  /** The facet that looks most up, or where {@code way} is −1 down; of those alike the first. */
  private int facing(int way) {
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
  private Vec3 axis() {
    Vec3 up = form.frame(root).normal().times(-1);
    boolean named = !unfolding.base().isEmpty() || form.hasFacet("base");
    return named || up.z() > 1 - RoundOff.SOLVED ? up : Vec3.Z;
  }
}
