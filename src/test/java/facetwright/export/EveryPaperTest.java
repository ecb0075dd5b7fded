package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Checks;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.form.make.OverOutline;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Sense;
import facetwright.net.blank.Blank;
import facetwright.net.blank.LineFold;
import facetwright.net.blank.LineKind;
import facetwright.net.outline.Outline;
import facetwright.net.outline.RandomOutlines;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.FlapShape;
import facetwright.net.panel.Hinge;
import facetwright.net.panel.PanelBuild;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/** What can be made at all can be drawn, laid, written and seated: every paper and every model. */
class EveryPaperTest {
  private static final Site AT = new Site(3, 1);
  private static final FoldAngle SQUARE = FoldAngle.degrees(90);

  /** From a fiftieth of a millimetre to half a metre, often a whole number. */
  private static double size(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> 0.02 + random.nextDouble();
      case 1 -> 200 + random.nextInt(300);
      case 2 -> 20;
      default -> 5 + random.nextInt(60);
    };
  }

  private static Net form(Random random) {
    int sides = 3 + random.nextInt(6);
    Form form =
        switch (random.nextInt(4)) {
          case 0 -> Solids.box(size(random), size(random), size(random));
          case 1 -> Solids.prismBySide(sides, size(random), size(random));
          case 2 -> Solids.pyramidBySide(sides, size(random), size(random));
          default -> Solids.antiprismBySide(sides, size(random), size(random));
        };
    String facet = form.facets().getFirst().name();
    if (random.nextBoolean()) {
      form = form.withHole(facet, Vec2.ZERO, 0.3 * size(random), AT);
    }
    if (random.nextBoolean()) {
      form = form.withLayer(form.facets().getLast().name(), size(random) / 8, "wave", AT);
    }
    UnfoldStyle[] styles = UnfoldStyle.values();
    return new Nets(form, Unfolding.as(styles[random.nextInt(styles.length)])).on(0, 0).net();
  }

  private static Net wrap(Random random) {
    int columns = 3 + random.nextInt(6);
    double rim = size(random) / 2;
    List<WrapRow> rows =
        List.of(
            new WrapRow("rim", rim), new WrapRow("wall", size(random)), new WrapRow("rim", rim));
    WrapDraft wrap =
        WrapDraft.of(Collections.nCopies(columns, size(random)), rows, AT)
            .seam(random.nextInt(15), AT);
    if (random.nextBoolean()) {
      wrap.all().rows("rim", AT).tabs(random.nextInt(60), AT);
    } else if (columns % 2 == 0) {
      wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
      wrap.all().columns("even", AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    }
    if (random.nextBoolean()) {
      wrap.all().rows("wall", AT).layer(size(random) / 6, "wave", AT);
    }
    return wrap.build();
  }

  /** A tray with usual tabs, its floor full of holes or with a window. */
  private static Net panels(Random random) {
    PanelBuild build = new PanelBuild();
    double width = size(random);
    double height = size(random);
    double depth = random.nextBoolean() ? 20 : size(random);
    CardPanel floor = build.rectangle("floor", width, height, AT);
    List<CardPanel> walls = new ArrayList<>();
    Hinge hinge = Hinge.whole(Sense.MOUNTAIN, SQUARE);
    for (String side : List.of("bottom", "right", "top", "left")) {
      walls.add(floor.attach(side, side, new FlapShape.Tapered(depth, 0), hinge, AT));
    }
    for (int i = 0; i < 4; i++) {
      build.join(
          walls.get(i),
          "left",
          walls.get((i + 1) % 4).edge("right", AT),
          new FlapShape.Tapered(depth / 2, 45),
          AT);
    }
    int rows = random.nextInt(8);
    for (int i = 0; i < rows * rows; i++) {
      Vec2 at =
          new Vec2(
              ((i % rows + 0.5) / rows - 0.5) * width,
              ((Math.floorDiv(i, rows) + 0.5) / rows - 0.5) * height);
      floor.hole(0.3 * Math.min(width, height) / rows, at, AT);
    }
    if (rows == 0) {
      floor.window(Math.min(width, height) * (0.5 - Math.pow(10, -1 - random.nextInt(9))), AT);
    }
    floor.layer(size(random) / 4, "wave", AT);
    floor.tick(new Vec2(-size(random), 1), new Vec2(size(random), 2), AT);
    return build.build();
  }

  private static Net free(Random random) {
    List<Vec2> corners = new ArrayList<>();
    double radius = size(random);
    int count = 3 + random.nextInt(9);
    for (int i = 0; i < count; i++) {
      double r = radius * (0.4 + random.nextDouble());
      corners.add(Vec2.polar(r, 2 * Math.PI * i / count));
    }
    int twice = random.nextInt(count);
    corners.add(twice, corners.get(twice));
    PanelBuild build = new PanelBuild();
    CardPanel panel = build.polygon("free", corners, AT);
    panel.attach(
        "flap",
        "1",
        new FlapShape.Tapered(size(random) / 4, random.nextInt(60)),
        Hinge.whole(Sense.VALLEY, SQUARE),
        AT);
    return build.build();
  }

  private static Net sheet(Random random) {
    double width = size(random);
    double height = size(random);
    Blank blank = Blank.of(width, height, AT);
    double x = width * random.nextInt(9) / 8;
    double y = height * random.nextInt(9) / 8;
    blank.score(
        blank.fromLeft(x, AT), LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, SQUARE)), AT);
    if (random.nextBoolean()) {
      blank.score(
          blank.fromBottom(y, AT), LineKind.SCORE, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT);
    }
    if (random.nextBoolean()) {
      Segment2 cut = blank.fromBottom(y, AT);
      blank.cut(List.of(cut.from(), cut.to()), AT);
    }
    if (random.nextBoolean()) {
      blank.hole(new Vec2(width / 16, height / 16), Math.min(width, height) / 20, AT);
    }
    return blank.build();
  }

  /** A prism over any outline, or a card of one with round corners, round windows and a paper. */
  private static Net outlined(Random random) {
    Outline outline = RandomOutlines.of(3 + random.nextInt(9), random.nextLong());
    if (random.nextBoolean()) {
      Form form = OverOutline.prism(outline.folded("prism", AT), size(random));
      UnfoldStyle[] styles = UnfoldStyle.values();
      return new Nets(form, Unfolding.as(styles[random.nextInt(styles.length)])).on(0, 0).net();
    }
    PanelBuild build = new PanelBuild();
    Outline round = outline.rounded(0.2 + random.nextInt(4), List.of(), AT);
    CardPanel card = build.outline("card", round.polygon(), AT);
    card.layer(random.nextInt(4), "wave", AT);
    Polygon2 light = Outline.circle(2 + random.nextInt(9), AT).polygon();
    if (random.nextBoolean()) {
      card.window(light, AT);
    } else {
      card.window(1 + random.nextInt(5), AT);
    }
    return build.build();
  }

  /** A random net by one of six ways in. */
  static Net net(int way, Random random) {
    return switch (way) {
      case 0 -> form(random);
      case 1 -> wrap(random);
      case 2 -> panels(random);
      case 3 -> free(random);
      case 4 -> sheet(random);
      default -> outlined(random);
    };
  }

  private static void everyPaper(Net net) {
    Laid laid = SheetLayout.lay(net, Papers.A4, new Room(0, SheetLayout.USUAL_GAP));
    FoldedForm folded = Folding.fold(laid);
    assertThat(Checks.all(laid, GlueOrder.of(laid.net(), folded))).isNotNull();
    Job job = Jobs.of("Any", "", laid, folded, Order.usual(Unit.MM));
    for (Exporter exporter : Exporters.all().values()) {
      if (!exporter.isUsual() && !exporter.adds(job)) {
        continue;
      }
      assertThat(exporter.files(job)).isNotEmpty().allSatisfy((_, f) -> assertThat(f).isNotEmpty());
    }
  }

  /** A design is refused in words, or all its papers are made. */
  @Property(tries = 6, seed = "20261130", shrinking = ShrinkingMode.OFF)
  void whatIsMadeIsDrawn(@ForAll @IntRange(max = 1_000_000) int seed) {
    for (int way = 0; way < 6; way++) {
      Net net;
      try {
        net = net(way, new Random(seed));
      } catch (NetException | FormException refused) {
        assertThat(refused).hasMessageMatching("(?s).{15,}");
        continue;
      }
      try {
        everyPaper(net);
      } catch (RuntimeException e) {
        throw new AssertionError("way " + way + " of seed " + seed, e);
      }
    }
  }

  /** Five hundred holes in one panel. */
  @Property(tries = 1, seed = "1")
  void aPanelFullOfHolesIsDrawn() {
    PanelBuild build = new PanelBuild();
    CardPanel panel = build.rectangle("sieve", 180, 180, AT);
    IntStream.range(0, 500)
        .forEach(
            i -> panel.hole(1.5, new Vec2(i % 23 * 7.5 - 83, Math.floorDiv(i, 23) * 7.5 - 83), AT));
    everyPaper(build.build());
  }
}
