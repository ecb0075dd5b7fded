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
import facetwright.net.Net;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.guide.PunchGuide;
import facetwright.papers.guide.ScoreStrip;
import facetwright.papers.guide.TickStrip;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Rules;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;

/** A shopping list, and punch guides and tick strips at true size, with a check ruler. */
public final class GuidePages {
  private static final double GAP = 5;

  /** Room on a page for the words above a strip, in mm. */
  private static final double WORDS = 18;

  /** More guides than these take longer to cut out than the template takes to prick through. */
  private static final int MOST_GUIDES = 24;

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
    Telling tell = all.tell;
    all.flow.title(title, tell.say("guide.title", "pieces", pieces));
    all.flow.heading(tell.say("guide.buy"));
    all.list(all.words.materials(works.materials(), Prices.NONE));
    all.list(
        List.of(
            tell.say(
                "guide.net",
                "width",
                tell.read(net.box().width()),
                "height",
                tell.read(net.box().height()))));
    all.flow.heading(tell.say("guide.rules"));
    all.list(Rules.words(works.materials(), tell));
    List<PunchGuide> places = PunchGuide.of(net);
    List<PunchGuide> guides = places.size() > MOST_GUIDES ? List.of() : places;
    if (guides.isEmpty() && !places.isEmpty()) {
      all.flow.heading(tell.say("guide.punching"));
      all.flow.words(tell.say("guide.too-many", "count", places.size()));
    }
    List<TickStrip> strips = new ArrayList<>();
    for (LayerPlan plan : works.plans()) {
      strips.addAll(TickStrip.of(plan));
    }
    List<ScoreStrip> wanted = ScoreStrip.of(ScoreChart.of(net, order.ruler()));
    List<ScoreStrip> scores = wanted.stream().filter(all::isHeld).toList();
    List<ScoreStrip> tooLong = wanted.stream().filter(s -> !all.isHeld(s)).toList();
    if (!guides.isEmpty() || !strips.isEmpty() || !scores.isEmpty()) {
      all.flow.heading(tell.say("guide.guides"), 40);
      all.flow.words(CheckRuler.print(tell) + " " + tell.say("guide.glue"));
      all.flow.words(tell.say("guide.caution", "punched", String.valueOf(!guides.isEmpty())));
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
    flow.heading(tell.say("guide.labels"), 40);
    flow.words(tell.say("guide.print-labels"));
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
    String text =
        tell.say(
            "guide.punch",
            "diameter",
            words.measure(g.diameter()),
            "along",
            words.measure(g.along()),
            "up",
            words.measure(g.up()),
            "centred",
            String.valueOf(g.centred()),
            "count",
            g.panels().size(),
            "panels",
            names(g.panels()));
    if (g.width() > width) {
      flow.words(text + " " + tell.say("guide.longer"));
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
      String intro = tell.say("guide.scores", "strips", tell.apart(told));
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
      flow.words(tell.say("guide.too-long", "strip", text(s), "length", tell.read(s.length())));
    }
  }

  private String text(ScoreStrip s) {
    return tell.say(
        "guide.score-strip",
        "across",
        String.valueOf(s.isAcross()),
        "named",
        String.valueOf(!s.piece().isEmpty()),
        "piece",
        s.piece());
  }

  private void strip(TickStrip s) {
    double shown = Math.min(s.length(), width);
    String text =
        tell.say(
            "guide.ticks",
            "letter",
            s.letter(),
            "paper",
            new LayersText(words.order()).paper(s.paper()),
            "base",
            words.measure(s.base()),
            "lead",
            words.measure(Math.abs(s.above().getFirst() - s.below().getFirst())),
            "triangles",
            s.triangles(),
            "waste",
            tell.area(s.waste(), 1),
            "moved",
            String.valueOf(shown < s.length()));
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

  private String names(List<String> panels) {
    int most = 8;
    String shown = String.join(", ", panels.subList(0, Math.min(most, panels.size())));
    return panels.size() > most ? tell.say("guide.and-so-on", "panels", shown) : shown;
  }
}
