package facetwright.papers.materials;

import facetwright.fold.making.Faces;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Polygon2;
import facetwright.measure.Mass;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Parts;
import facetwright.net.backing.Backings;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Stock;
import facetwright.papers.layers.LayerPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What so many pieces of a design take.
 *
 * @param pieces of the design
 * @param perSheet how many pieces one sheet of card gives; 0 where one takes more than a sheet
 * @param fits whether the net fits its sheet at all
 * @param needs exactly what it takes, in the order of a shopping list
 * @param glueArea of all tabs and laps, in mm²
 * @param layerArea of all layers to be glued on, in mm²
 * @param card what the card of one piece weighs
 * @param isPapered whether layers and what goes behind windows come on top of that
 * @param holes how many are punched
 * @param minutes of work, for one who has made it before
 * @param parts that the design is made of; none where its maker told none apart
 * @param hinges strips of card over joints that open, cut from what is left of a sheet
 */
public record Materials(
    int pieces,
    int perSheet,
    boolean fits,
    List<Need> needs,
    double glueArea,
    double layerArea,
    Mass card,
    boolean isPapered,
    int holes,
    double minutes,
    List<Made> parts,
    List<HingeStrip> hinges) {

  public Materials {
    needs = List.copyOf(needs);
    parts = List.copyOf(parts);
    hinges = List.copyOf(hinges);
  }

  /**
   * A part of the design, or several made alike.
   *
   * @param count how many for all pieces
   * @param imageOf the part whose mirror image it is; often none
   */
  public record Made(String name, int count, Optional<String> imageOf) {}

  private static List<Made> parts(Parts told, int pieces) {
    return told.kinds().stream()
        .map(
            i -> {
              int like = told.all().get(i).imageOf();
              return new Made(
                  told.called(i),
                  pieces * told.count(i),
                  like == Parts.Part.NO_IMAGE ? Optional.empty() : Optional.of(told.called(like)));
            })
        .toList();
  }

  /**
   * @param laid the net on its sheets
   * @param gluing how the same net is made up
   * @param layers how its layers are cut, for the same number of pieces
   * @param pieces 1 or more
   */
  static Materials of(Laid laid, GlueOrder gluing, List<LayerPlan> layers, int pieces) {
    Net net = laid.net();
    FoldedForm form = gluing.form();
    Stocking card = Stocking.of(laid, pieces);
    List<Need> needs = new ArrayList<>();
    if (laid.kinds().size() == 1) {
      needs.add(new Need("sheet", new Goods.Card(laid.stock()), card.sheets(), Need.Unit.SHEETS));
    } else {
      for (Stock kind : laid.kinds()) {
        int sheets = pieces * laid.sheetsOf(kind);
        needs.add(new Need("sheet", new Goods.Card(kind), sheets, Need.Unit.SHEETS));
      }
    }
    for (LayerPlan plan : layers) {
      sheets(plan, needs);
    }
    int holes = pieces * holes(net);
    List<HingeStrip> hinges = HingeStrip.of(form.together(), pieces);
    SortedSet<Integer> glued = glued(net, gluing);
    double tape = pieces * tape(net, glued) + HingeStrip.tape(hinges);
    if (tape > 0) {
      needs.add(new Need("tape", new Goods.Tape(), tape / 1000, Need.Unit.METRES));
    }
    List<Need> goesIn = Supplies.of(net, pieces);
    needs.addAll(goesIn);
    boolean isThreaded = goesIn.stream().anyMatch(n -> n.key().equals("ribbon"));
    if (!isThreaded && holes > 0 && form.closure() != Closure.NOT_SOLVED) {
      double ribbon = Rules.HEIGHTS * form.measures().height() + Rules.BOW;
      needs.add(new Need("ribbon", new Goods.Ribbon(0), pieces * ribbon / 1000, Need.Unit.METRES));
    }
    List<Backings.Piece> backings = Backings.of(net);
    double layerArea =
        pieces
            * (layers.stream()
                    .flatMap(p -> p.groups().stream())
                    .filter(g -> !g.isBehind())
                    .mapToDouble(g -> g.count() * g.shape().area())
                    .sum()
                + backings.stream().mapToDouble(Backings.Piece::glued).sum());
    int layered = pieces * (net.layers().size() + backings.size());
    int trims = layers.stream().mapToInt(p -> p.plan().cuts()).sum();
    double minutes =
        Rules.minutes(
            pieces * net.scores().size(),
            pieces * net.cuts() - holes,
            holes,
            layered,
            pieces * net.joins().size(),
            trims);
    return new Materials(
        pieces,
        card.perSheet(),
        laid.fits(),
        needs,
        pieces * glue(net, glued) + HingeStrip.glue(hinges),
        layerArea,
        laid.mass(),
        layered > 0,
        holes,
        minutes,
        parts(net.parts(), pieces),
        hinges);
  }

  private static void sheets(LayerPlan plan, List<Need> needs) {
    for (var size : plan.paper().sizes()) {
      int sheets =
          plan.plan().sheets().stream()
              .filter(s -> s.paper().equals(size))
              .mapToInt(s -> s.copies())
              .sum();
      if (sheets > 0) {
        needs.add(
            new Need(
                plan.paper().name().isEmpty() ? "layer" : plan.paper().name(),
                new Goods.Decorative(plan.paper().name(), size.name()),
                sheets,
                Need.Unit.SHEETS));
      }
    }
  }

  private static int holes(Net net) {
    return (int)
        net.panels().stream()
            .flatMap(p -> p.openings().stream())
            .filter(Opening.Hole.class::isInstance)
            .count();
  }

  /**
   * One run along all that is glued, in mm: a tab along the side it is glued under, a lap or a flap
   * that closes an opening along the score it hangs by, or its longest side where it hangs by none.
   */
  private static double tape(Net net, SortedSet<Integer> glued) {
    double sum = 0;
    Set<Integer> along = new TreeSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam seam
          && seam.tab() != Join.Seam.NO_TAB
          && seam.hold().isGlued()) {
        sum += Math.min(net.segment(seam.a()).length(), net.segment(seam.b()).length());
        along.add(seam.tab());
      }
    }
    for (int panel : glued) {
      if (!along.contains(panel)) {
        sum += run(net, panel);
      }
    }
    return sum;
  }

  private static double run(Net net, int panel) {
    Polygon2 outline = net.panels().get(panel).outline();
    return net.scores().stream()
        .filter(s -> s.isOf(panel))
        .mapToDouble(s -> net.segment(s.a()).length())
        .max()
        .orElseGet(
            () ->
                IntStream.range(0, outline.size())
                    .mapToDouble(i -> outline.side(i).length())
                    .max()
                    .orElse(0));
  }

  /** What takes glue: the first flap over an opening lies on nothing and takes none. */
  private static SortedSet<Integer> glued(Net net, GlueOrder gluing) {
    SortedSet<Integer> all = new TreeSet<>(Join.glued(net));
    all.removeIf(panel -> gluing.faces().get(panel) == Faces.Face.NONE);
    return all;
  }

  private static double glue(Net net, SortedSet<Integer> glued) {
    return glued.stream().mapToDouble(p -> net.panels().get(p).cardArea()).sum();
  }

  /** With spares, in whole units, priced where prices are known. */
  public List<Purchase> shopping(Prices prices) {
    return needs.stream()
        .map(
            n ->
                new Purchase(
                    n, n.withSpare(), prices.of(n.key()).map(price -> price * n.withSpare())))
        .toList();
  }

  /** What all priced lines of the list cost together; none where no line is priced. */
  public Optional<Double> cost(Prices prices) {
    List<Double> known = shopping(prices).stream().flatMap(p -> p.cost().stream()).toList();
    return known.isEmpty()
        ? Optional.empty()
        : Optional.of(known.stream().mapToDouble(Double::doubleValue).sum());
  }
}
