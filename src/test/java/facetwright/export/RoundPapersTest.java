package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Arc;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.outline.Outline;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.Notch;
import facetwright.net.panel.NotchShape;
import facetwright.net.panel.PanelBuild;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Arcs of outer edges and windows are true ones in every file, and told by their radius. */
class RoundPapersTest {
  private static final Telling TELL = Order.usual(Unit.MM).telling();

  private static final Site AT = new Site(3, 1);

  /** As ezdxf, made by others, reads bulges: centre and radius of each. */
  private static final String BULGES =
      """
      import sys, json, ezdxf
      from ezdxf.math import bulge_to_arc
      doc = ezdxf.readfile(sys.argv[1])
      out = {"errors": [e.message for e in doc.audit().errors], "arcs": [], "circles": []}
      for e in doc.modelspace():
          if e.dxftype() == "CIRCLE":
              out["circles"].append([e.dxf.center.x, e.dxf.center.y, e.dxf.radius])
          if e.dxftype() == "LWPOLYLINE" and e.dxf.layer.startswith("CUT"):
              points = list(e.get_points("xyb"))
              for i, (x, y, b) in enumerate(points):
                  if b:
                      end = points[(i + 1) % len(points)]
                      c, a, z, r = bulge_to_arc((x, y), end[:2], b)
                      out["arcs"].append([c.x, c.y, r])
      print(json.dumps(out))
      """;

  @TempDir Path folder;

  /** A card with round corners, a round window, and one with a hollow corner rounded. */
  private static Net card() {
    PanelBuild build = new PanelBuild();
    CardPanel card =
        build.outline(
            "card", Outline.rectangle(90, 55, AT).rounded(6, List.of(), AT).polygon(), AT);
    card.window(Outline.circle(28, AT).polygon().taken(c -> c.plus(new Vec2(-20, 0))), AT);
    List<Vec2> corner =
        List.of(
            new Vec2(6, -16),
            new Vec2(36, -16),
            new Vec2(36, -4),
            new Vec2(18, -4),
            new Vec2(18, 16),
            new Vec2(6, 16));
    card.window(Outline.through(corner, AT).rounded(3, List.of(4), AT).polygon(), AT);
    return build.build();
  }

  private static Job job() {
    return Papers.job("Card", card(), Papers.A4);
  }

  /** Where the arcs lie on the sheet: those of the panel, then the hollow one. */
  private static List<Vec2> centres(Job job) {
    List<Vec2> all = new ArrayList<>();
    var panel = job.laid().net().panels().getFirst();
    panel.outline().arcs().forEach(a -> all.add(a.centre()));
    panel.openings().stream()
        .map(Opening::outline)
        .filter(o -> o.arcs().size() == 1)
        .forEach(o -> all.add(o.arcs().getFirst().centre()));
    return all;
  }

  private static void isOneOf(double x, double y, double radius, List<Vec2> centres) {
    int nearest = -1;
    for (int i = 0; i < centres.size(); i++) {
      if (centres.get(i).distance(new Vec2(x, y)) < 1e-3) {
        nearest = i;
      }
    }
    assertThat(nearest).as(x + ", " + y).isNotNegative();
    assertThat(radius).isEqualTo(nearest < 4 ? 6 : 3, within(1e-4));
  }

  @Test
  void theCuttingFileHasBulgesAndACircle() throws IOException {
    Job job = job();
    Path file = Files.write(folder.resolve("template.dxf"), new DxfWriter().write(job));
    JsonNode found = new ObjectMapper().readTree(Outside.ezdxf(BULGES, file));
    assertThat(found.get("errors")).isEmpty();
    assertThat(found.get("circles")).hasSize(1);
    assertThat(found.get("circles").get(0).get(2).asDouble()).isEqualTo(14, within(1e-6));
    assertThat(found.get("arcs")).hasSize(5);
    for (JsonNode arc : found.get("arcs")) {
      isOneOf(arc.get(0).asDouble(), arc.get(1).asDouble(), arc.get(2).asDouble(), centres(job));
    }
  }

  /** Centre from ends, radius and flags: SVG 1.1 (W3C 2011), appendix F.6.5. */
  @Test
  void thePictureHasArcsAndACircle() {
    Job job = job();
    String svg = new String(new SvgWriter().write(job), StandardCharsets.UTF_8);
    assertThat(svg).containsPattern("<circle [^>]*r=\"14\"");
    Matcher arc =
        Pattern.compile(
                "([-0-9.]+),([-0-9.]+) A([0-9.]+),[0-9.]+ 0 ([01]),([01]) ([-0-9.]+),([-0-9.]+)")
            .matcher(svg);
    double height = job.laid().sheet(0).height();
    int arcs = 0;
    int from = 0;
    while (arc.find(from)) {
      from = arc.start(6);
      double x1 = Double.parseDouble(arc.group(1));
      double y1 = Double.parseDouble(arc.group(2));
      double r = Double.parseDouble(arc.group(3));
      double x2 = Double.parseDouble(arc.group(6));
      double y2 = Double.parseDouble(arc.group(7));
      double hx = (x1 - x2) / 2;
      double hy = (y1 - y2) / 2;
      double k = Math.sqrt(Math.max(0, r * r / (hx * hx + hy * hy) - 1));
      double sign = arc.group(4).equals(arc.group(5)) ? -1 : 1;
      double cx = sign * k * hy + (x1 + x2) / 2;
      double cy = -sign * k * hx + (y1 + y2) / 2;
      isOneOf(cx, height - cy, r, centres(job));
      arcs++;
    }
    assertThat(arcs).isEqualTo(5);
  }

  /**
   * Every place of every curve lies on its arc, to 0.0005 % of the radius and the file's digits.
   */
  @Test
  void theTemplateHasCurvesThatKeepToTheirArcs() throws IOException {
    Job job = job();
    List<Vec2> centres = centres(job);
    centres.add(circleCentre(job));
    int curves = 0;
    try (PDDocument document = Loader.loadPDF(new PdfWriter().write(job))) {
      List<Object> tokens = new PDFStreamParser(document.getPage(0)).parse();
      List<Double> numbers = new ArrayList<>();
      Vec2 at = Vec2.ZERO;
      for (Object token : tokens) {
        if (token instanceof COSNumber n) {
          numbers.add((double) n.floatValue());
        } else if (token instanceof Operator o) {
          if (o.getName().equals("c")) {
            curves++;
            liesOnAnArc(at, numbers, centres);
          }
          if (numbers.size() >= 2) {
            at = new Vec2(numbers.get(numbers.size() - 2), numbers.getLast());
          }
          numbers.clear();
        }
      }
    }
    // Two an arc of a quarter, eight a circle.
    assertThat(curves).isEqualTo(5 * 2 + 8);
  }

  private static Vec2 circleCentre(Job job) {
    return job.laid()
        .net()
        .panels()
        .getFirst()
        .openings()
        .getFirst()
        .outline()
        .arcs()
        .getFirst()
        .centre();
  }

  private static void liesOnAnArc(Vec2 at, List<Double> c, List<Vec2> centres) {
    Vec2 a = new Vec2(c.get(0), c.get(1));
    Vec2 b = new Vec2(c.get(2), c.get(3));
    Vec2 end = new Vec2(c.get(4), c.get(5));
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < centres.size(); i++) {
      double radius = i < 4 ? 6 : i == 4 ? 3 : 14;
      double worst = 0;
      for (int k = 0; k <= 16; k++) {
        double t = k / 16.0;
        double s = 1 - t;
        Vec2 p =
            at.times(s * s * s)
                .plus(a.times(3 * s * s * t))
                .plus(b.times(3 * s * t * t))
                .plus(end.times(t * t * t));
        worst = Math.max(worst, Math.abs(p.distance(centres.get(i)) - radius));
      }
      best = Math.min(best, worst);
    }
    assertThat(best).isLessThan(14 * 5e-6 + 1e-4);
  }

  @Test
  void theChartTellsRadiiAndFewPoints() {
    ScoreChart chart = ScoreChart.of(job().laid().net(), Ruler.MM);
    String told = String.join("\n", StepWords.texts(StepText.of(chart.pieces().getFirst(), TELL)));
    assertThat(told)
        .contains("a circle of 14 mm from its middle")
        .contains("–arc of 3 mm radius, bulging to the bottom left–");
    assertThat(told.split("arc of 6 mm radius", -1)).hasSize(1 + 4);
    assertThat(told.length()).isLessThan(1600);
  }

  /** Even borders of a round panel, and papers on it, keep its arcs about the same middles. */
  @Test
  void bordersKeepTheirArcs() {
    PanelBuild build = new PanelBuild();
    CardPanel card =
        build.outline(
            "card", Outline.rectangle(90, 55, AT).rounded(6, List.of(), AT).polygon(), AT);
    card.window(4, AT);
    Net net = build.build();
    Polygon2 window = net.panels().getFirst().openings().getFirst().outline();
    Polygon2 panel = net.panels().getFirst().outline();
    assertThat(window.arcs()).hasSize(4);
    for (int a = 0; a < 4; a++) {
      Arc arc = window.arcs().get(a);
      assertThat(window.corner(arc.first()).distance(arc.centre())).isEqualTo(2, within(1e-9));
      assertThat(arc.centre().distance(panel.arcs().get(a).centre())).isLessThan(1e-9);
    }
    // A border wider than the radius: sharp corners.
    PanelBuild other = new PanelBuild();
    other
        .outline("card", Outline.rectangle(90, 55, AT).rounded(6, List.of(), AT).polygon(), AT)
        .window(8, AT);
    Polygon2 sharp = other.build().panels().getFirst().openings().getFirst().outline();
    assertThat(sharp.area()).isCloseTo((90 - 16) * (55 - 16), within(0.1));
  }

  /** Half a circle cut into an edge meets it with a kink: no corner stands for it. */
  @Test
  void roundNotchesAreArcsThatNoBorderFollows() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 90, 55, AT);
    card.notch("top", new Notch(45, 20, 10, NotchShape.ROUND), AT);
    card.window(12, AT);
    Net net = build.build();
    Arc notch = net.panels().getFirst().outline().arcs().getFirst();
    assertThat(net.panels().getFirst().outline().corner(notch.first()).distance(notch.centre()))
        .isEqualTo(10, within(1e-9));
    assertThat(net.panels().getFirst().openings().getFirst().outline().arcs()).isEmpty();
    String told =
        String.join(
            "\n",
            StepWords.texts(StepText.of(ScoreChart.of(net, Ruler.MM).pieces().getFirst(), TELL)));
    assertThat(told).contains("half circle, 20 mm across, bulging to the bottom");
  }

  @Test
  void anArcIsOneCut() {
    // Four sides, four arcs, two windows.
    assertThat(card().cuts()).isEqualTo(10);
  }
}
