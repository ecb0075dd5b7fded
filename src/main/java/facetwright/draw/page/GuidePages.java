package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.LabelSetting;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.draw.picture.LabelRows;
import facetwright.draw.picture.ScoreStripPicture;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.measure.Area;
import facetwright.measure.Length;
import facetwright.net.Net;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.guide.PunchGuide;
import facetwright.papers.guide.ScoreStrip;
import facetwright.papers.guide.TickStrip;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Rules;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.List;

/** A shopping list, and punch guides and tick strips at true size, with a check ruler. */
public final class GuidePages {
  private static final double GAP = 5;

  /** Room on a page for the words above a strip, in mm. */
  private static final double WORDS = 18;

  /** More guides than these take longer to cut out than the template takes to prick through. */
  private static final int MOST_GUIDES = 24;

  /** Common practice, no source. */
  private static String caution(boolean isPunched) {
    return isPunched
        ? "Caution: punch and knife are sharp. Work on a mat, keep fingers out of the punch, and"
            + " let children use them only with an adult beside them."
        : "Caution: knives are sharp. Work on a mat, and let children use one only with an adult"
            + " beside them.";
  }

  private final WorksText words;
  private final Telling tell;
  private final Flow flow;
  private final double width;

  private GuidePages(String title, Order order) {
    words = new WorksText(order);
    tell = order.telling();
    flow = new Flow(order.page(), title, Named.paper("guides", tell), tell);
    width = flow.width();
  }

  /**
   * @param title of the design
   * @param works what its pieces take
   */
  public static List<Drawing> of(String title, Order order, Net net, Works works) {
    GuidePages all = new GuidePages(title, order);
    int pieces = works.materials().pieces();
    all.flow.title(
        title, "Shopping list for " + (pieces == 1 ? "one piece" : pieces + " pieces") + ".");
    all.flow.heading("To buy");
    all.list(all.words.materials(works.materials(), Prices.NONE));
    all.list(
        List.of(
            "The net is %s wide and %s high."
                .formatted(
                    new Length(net.box().width()).read(order.unit()),
                    new Length(net.box().height()).read(order.unit()))));
    all.flow.heading("Rules of thumb");
    all.list(Rules.words(works.materials(), order.telling()));
    List<PunchGuide> places = PunchGuide.of(net);
    List<PunchGuide> guides = places.size() > MOST_GUIDES ? List.of() : places;
    if (guides.isEmpty() && !places.isEmpty()) {
      all.flow.heading("Punching");
      all.flow.words(
          "The holes would take "
              + places.size()
              + " different punch guides, more than are worth cutting out. Print the template, lay"
              + " it on the card and prick the middle of each hole through it.");
    }
    List<TickStrip> strips = new ArrayList<>();
    for (LayerPlan plan : works.plans()) {
      strips.addAll(TickStrip.of(plan));
    }
    List<ScoreStrip> wanted = ScoreStrip.of(ScoreChart.of(net, order.ruler()));
    List<ScoreStrip> scores = wanted.stream().filter(all::isHeld).toList();
    List<ScoreStrip> tooLong = wanted.stream().filter(s -> !all.isHeld(s)).toList();
    if (!guides.isEmpty() || !strips.isEmpty() || !scores.isEmpty()) {
      all.flow.heading("Guides at true size", 40);
      all.flow.words(
          CheckRuler.print(all.tell) + " Glue on card and cut out along the solid lines.");
      all.flow.words(caution(!guides.isEmpty()));
      all.flow.gap(2);
      all.flow.put(CheckRuler.both(LineKind.GUIDE));
      all.flow.gap(GAP);
    }
    guides.forEach(all::guide);
    strips.forEach(all::strip);
    all.scores(scores);
    all.tooLong(tooLong);
    all.labels(net, pieces);
    return all.flow.pages();
  }

  private void labels(Net net, int pieces) {
    List<LabelSetting> cut =
        LabelSetting.all(net).stream().filter(l -> l.label().asked().cut()).toList();
    if (cut.isEmpty()) {
      return;
    }
    flow.heading("Labels to cut", 40);
    flow.words("Print at 100 % on paper that takes glue, and cut out along the solid lines.");
    flow.gap(GAP);
    LabelRows.of(cut, pieces, width, GAP)
        .forEach(
            row -> {
              flow.put(row);
              flow.gap(GAP);
            });
  }

  private void list(List<String> lines) {
    lines.forEach(l -> flow.item("–", l));
  }

  private void guide(PunchGuide g) {
    String how =
        g.centred()
            ? "Lay the lower edge flush with the panel's edge, both ends flush with its ends."
            : "Lay the lower left corner flush with the panel's corner; turn the guide over for the"
                + " other end.";
    String text =
        "Punch guide, hole %s across, %s from the end and %s from the edge. %s It serves %s: %s."
            .formatted(
                words.measure(g.diameter()),
                words.measure(g.along()),
                words.measure(g.up()),
                how,
                Count.of(g.panels().size(), "hole"),
                names(g.panels()));
    if (g.width() > width) {
      flow.words(text + " It is longer than this page: measure it instead.");
      return;
    }
    List<Mark> lines = new ArrayList<>();
    Vec2 hole = new Vec2(g.along(), g.up());
    lines.add(Stroke.around(Polygon2.rectangle(0, 0, g.width(), g.height()), LineKind.CUT));
    lines.add(new Circle(hole, g.diameter() / 2, LineKind.CUT));
    lines.add(Stroke.line(new Vec2(hole.x(), 0), new Vec2(hole.x(), g.height()), LineKind.TICK));
    lines.add(Stroke.line(new Vec2(0, hole.y()), new Vec2(g.width(), hole.y()), LineKind.TICK));
    together(text, new Block(g.width(), g.height(), lines));
  }

  /** All side by side, as many as the page is wide. */
  private void scores(List<ScoreStrip> strips) {
    int abreast = (int) ((width + GAP) / (ScoreStripPicture.WIDE + GAP));
    for (int i = 0; i < strips.size(); i += abreast) {
      List<ScoreStrip> row = strips.subList(i, Math.min(i + abreast, strips.size()));
      double tall = row.stream().mapToDouble(ScoreStrip::length).max().orElse(0);
      List<Mark> marks = new ArrayList<>();
      List<String> told = new ArrayList<>();
      for (int k = 0; k < row.size(); k++) {
        Vec2 shift = new Vec2(k * (ScoreStripPicture.WIDE + GAP), tall - row.get(k).length());
        ScoreStripPicture.of(row.get(k)).marks().stream()
            .map(m -> m.moved(Motion2.shift(shift)))
            .forEach(marks::add);
        told.add(text(row.get(k)));
      }
      String intro =
          "Score strips, for marking many blanks alike: glue on card, lay along the edge of the"
              + " trimmed blank, tick the card at each mark and score there. From the left: "
              + String.join("; ", told)
              + ".";
      flow.room(flow.heightOf(intro) + 2 + tall);
      flow.words(intro);
      flow.gap(2);
      double beside = row.size() * (ScoreStripPicture.WIDE + GAP);
      Block ruler = CheckRuler.both(LineKind.GUIDE);
      if (beside + ruler.width() <= width) {
        Motion2 shift = Motion2.shift(new Vec2(beside, tall - ruler.height()));
        ruler.marks().forEach(m -> marks.add(m.moved(shift)));
      }
      flow.put(new Block(beside - GAP, tall, marks));
      flow.gap(GAP);
    }
  }

  private boolean isHeld(ScoreStrip strip) {
    return strip.length() <= flow.height() - WORDS;
  }

  /** Strips that no page holds are named: the chart serves in their place. */
  private void tooLong(List<ScoreStrip> strips) {
    for (ScoreStrip s : strips) {
      flow.words(
          "A score strip "
              + text(s)
              + ", is "
              + new Length(s.length()).read(words.order().unit())
              + " long, too long for this page: set its measures by the score chart, or print on"
              + " longer paper.");
    }
  }

  private static String text(ScoreStrip s) {
    String of = s.piece().isEmpty() ? "" : " of “" + s.piece() + "”";
    return s.isAcross()
        ? "along the top edge" + of + ", 0 at the left"
        : "along the left edge" + of + ", 0 at the top";
  }

  private void strip(TickStrip s) {
    double shown = Math.min(s.length(), width);
    String text =
        "Tick strip for %s, as high as the paper strip: a tick every %s on both edges, the upper ones shifted by %s. Mark both edges, cut from tick to tick in turn: points up and down, %s a strip, %s waste at its ends.%s"
            .formatted(
                s.name(),
                words.measure(s.base()),
                words.measure(Math.abs(s.above().getFirst() - s.below().getFirst())),
                Count.of(s.triangles(), "triangle"),
                new Area(s.waste()).text(words.order().unit(), 1),
                shown < s.length() ? " Move it on along the paper, first tick on last." : "");
    List<Mark> lines = new ArrayList<>();
    lines.add(Stroke.around(Polygon2.rectangle(0, 0, shown, s.height()), LineKind.CUT));
    double tick = Math.min(4, s.height() / 3);
    for (double x : s.below()) {
      if (x <= shown) {
        lines.add(Stroke.line(new Vec2(x, 0), new Vec2(x, tick), LineKind.TICK));
      }
    }
    for (double x : s.above()) {
      if (x <= shown) {
        lines.add(
            Stroke.line(new Vec2(x, s.height() - tick), new Vec2(x, s.height()), LineKind.TICK));
      }
    }
    together(text, new Block(shown, s.height(), lines));
  }

  /** Words and what they tell of stay on one page. */
  private void together(String text, Block drawn) {
    flow.room(drawn.height() + 20);
    flow.words(text);
    flow.gap(1);
    flow.put(drawn);
    flow.gap(GAP);
  }

  private static String names(List<String> panels) {
    int most = 8;
    String shown = String.join(", ", panels.subList(0, Math.min(most, panels.size())));
    return panels.size() > most ? shown + " and so on" : shown;
  }
}
