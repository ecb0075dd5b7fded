package facetwright.papers.materials;

import facetwright.language.Telling;
import facetwright.papers.cutting.Cut;
import facetwright.papers.cutting.CutPlan;
import facetwright.papers.cutting.Cuts;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.layers.LayerPaper;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.layers.Strip;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Layers and how they are cut, in words.
 *
 * @param order measures are told by its ruler, areas in its unit
 */
public record LayersText(Order order) {
  /** Common practice, no source. */
  public String caution() {
    return tell().say("materials.caution");
  }

  private Telling tell() {
    return order.telling();
  }

  /** What a paper for layers is called. */
  public String paper(LayerPaper paper) {
    return Goods.paper(paper.name(), tell());
  }

  /** A measure that is set, as {@link Order#measure} tells it. */
  public String measure(double mm) {
    return order.measure(mm);
  }

  private String measures(double width, double height) {
    return measure(width) + " × " + measure(height);
  }

  /** What is cut, a line a group. */
  public List<String> groups(LayerPlan plan) {
    List<String> lines = new ArrayList<>();
    for (LayerGroup g : plan.groups()) {
      lines.add(
          tell()
              .say(
                  "materials.group",
                  "letter",
                  g.letter(),
                  "kind",
                  g.kind().name().toLowerCase(Locale.ROOT),
                  "size",
                  measures(g.width(), g.height()),
                  "each",
                  g.count(),
                  "pieces",
                  plan.pieces(),
                  "all",
                  g.count() * plan.pieces(),
                  "behind",
                  String.valueOf(g.isBehind()),
                  "openings",
                  g.shape().windows().size(),
                  "mirrored",
                  String.valueOf(g.mirrorOf().isPresent()),
                  "image",
                  g.mirrorOf().orElse("")));
    }
    return lines;
  }

  /** The pieces that go behind windows, with their sizes and counts, a line a paper. */
  public List<String> backings(Works works) {
    List<String> lines = new ArrayList<>();
    for (LayerPlan plan : works.plans()) {
      List<String> sizes =
          plan.groups().stream()
              .filter(LayerGroup::isBehind)
              .map(
                  g ->
                      tell()
                          .say(
                              "materials.backing",
                              "count",
                              g.count() * plan.pieces(),
                              "size",
                              measures(g.width(), g.height())))
              .toList();
      if (!sizes.isEmpty()) {
        lines.add(
            tell()
                .say(
                    "materials.behind",
                    "paper",
                    paper(plan.paper()),
                    "pieces",
                    tell().apart(sizes)));
      }
    }
    return lines;
  }

  /** How the ticks of a strip are set. */
  private String ticks(LayerPlan.NamedStrip named, LayerPlan plan) {
    Strip s = named.strip();
    return tell()
        .say(
            "materials.ticks",
            "strip",
            plan.called(named.name(), tell()),
            "below",
            String.valueOf(s.startsBelow()),
            "base",
            measure(s.base()),
            "lead",
            measure(s.lead()),
            "triangles",
            s.triangles(),
            "waste",
            tell().area(s.waste(), 1));
  }

  /** Sheets, yield and waste, and how good the plan is, as far as it is known. */
  public String summary(LayerPlan plan) {
    CutPlan cuts = plan.plan();
    double share = 1 - plan.waste() / cuts.paperArea();
    return tell()
        .say(
            "materials.summary",
            "sheets",
            cuts.sheetCount(),
            "paper",
            paper(plan.paper()),
            "used",
            tell().number(100 * share, 1),
            "waste",
            tell().rough(plan.waste()),
            "cuts",
            cuts.cuts(),
            "measures",
            cuts.measures().size(),
            "fewer",
            cuts.sheetCount() - (int) cuts.bound(),
            "bound",
            (int) cuts.bound());
  }

  /** The numbered cuts of one sheet. */
  public List<String> steps(SheetPlan sheet, LayerPlan plan) {
    List<String> lines = new ArrayList<>();
    for (Cut step : Cuts.of(sheet, plan.plan().wanted())) {
      lines.add(step.text(measure(step.at()), n -> plan.called(n, tell()), tell()));
    }
    int[] pieces = sheet.pieces(plan.plan().wanted().size());
    for (LayerPlan.NamedStrip strip : plan.strips()) {
      boolean here = false;
      for (int k = 0; k < pieces.length; k++) {
        here |= pieces[k] > 0 && plan.plan().wanted().get(k).name().equals(strip.name());
      }
      if (!here) {
        continue;
      }
      lines.add(ticks(strip, plan));
    }
    return lines;
  }

  /** Name, size and number of a sheet. */
  public String sheet(SheetPlan sheet) {
    return "%d × %s, %s"
        .formatted(
            sheet.copies(),
            Goods.sheet(sheet.paper().name(), tell()),
            sold(sheet.paper().width()) + " × " + sold(sheet.paper().height()));
  }

  /** A side of a sheet as it is bought: nobody sets it. */
  private String sold(double mm) {
    return tell().read(mm);
  }

  /** What one such sheet gives. */
  public String given(SheetPlan sheet, LayerPlan plan) {
    int[] pieces = sheet.pieces(plan.plan().wanted().size());
    List<String> kinds = new ArrayList<>();
    for (int k = 0; k < pieces.length; k++) {
      if (pieces[k] > 0) {
        kinds.add(
            pieces[k]
                + " × "
                + tell().quoted(plan.called(plan.plan().wanted().get(k).name(), tell())));
      }
    }
    return tell()
        .say(
            "materials.given",
            "copies",
            sheet.copies(),
            "pieces",
            String.join(", ", kinds),
            "used",
            tell().number(100 * sheet.part(), 1));
  }

  /** Panels without a layer because the reveal takes all that could be cut. */
  public Optional<String> lost(Works works) {
    return works.layers().lost().isEmpty()
        ? Optional.empty()
        : Optional.of(
            tell().say("materials.lost", "panels", String.join(", ", works.layers().lost())));
  }
}
