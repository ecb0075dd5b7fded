package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.LineKind;
import facetwright.fold.Folding;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.papers.order.Order;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The picture as an XML parser reads it; units by SVG 1.1 (W3C 2011), section 7.10. */
class SvgReadTest {
  private static Document read(byte[] svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
  }

  private static Job tray() {
    Net net = Papers.tray(60, 20);
    Laid laid = Papers.at(net, Papers.A4, 30, 40);
    return Jobs.of("Tray & <lid>", "", laid, Folding.fold(net), Order.usual(Unit.MM));
  }

  private static Element group(Document svg, String id) {
    NodeList groups = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", "g");
    for (int i = 0; i < groups.getLength(); i++) {
      if (((Element) groups.item(i)).getAttribute("id").equals(id)) {
        return (Element) groups.item(i);
      }
    }
    throw new AssertionError("no group " + id);
  }

  private static List<double[]> points(Element group) {
    List<double[]> points = new ArrayList<>();
    NodeList paths = group.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      String d = ((Element) paths.item(i)).getAttribute("d");
      for (String pair : d.replaceAll("[MLZ]", " ").trim().split(" +")) {
        points.add(Arrays.stream(pair.split(",")).mapToDouble(Double::parseDouble).toArray());
      }
    }
    return points;
  }

  @Test
  void sizeIsInMillimetres() throws Exception {
    Element root = read(new SvgWriter().write(tray())).getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("210mm");
    assertThat(root.getAttribute("height")).isEqualTo("297mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 210 297");
    assertThat(root.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("Tray & <lid>: template");
  }

  @Test
  void cutsLieWhereTheNetLies() throws Exception {
    List<double[]> cut = points(group(read(new SvgWriter().write(tray())), "cut"));
    double width = Papers.tray(60, 20).box().width();
    double height = Papers.tray(60, 20).box().height();
    assertThat(cut.stream().mapToDouble(p -> p[0]).min().orElseThrow())
        .as("a legend's sample may lie right of the net, none left of it")
        .isCloseTo(30, within(1e-4));
    List<double[]> net = cut.stream().filter(p -> p[0] <= 30 + width + 1e-6).toList();
    assertThat(net.stream().mapToDouble(p -> p[0]).max().orElseThrow())
        .isCloseTo(30 + width, within(1e-4));
    assertThat(net.stream().mapToDouble(p -> p[1]).max().orElseThrow())
        .isCloseTo(297 - 40, within(1e-4));
    assertThat(net.stream().mapToDouble(p -> p[1]).min().orElseThrow())
        .isCloseTo(297 - 40 - height, within(1e-4));
  }

  @Test
  void linesDifferByDashesAlone() throws Exception {
    Document svg = read(new SvgWriter().write(tray()));
    List<String> styles = new ArrayList<>();
    for (LineKind kind :
        List.of(LineKind.CUT, LineKind.MOUNTAIN, LineKind.PERFORATION, LineKind.LAYER)) {
      Element group = group(svg, kind.id());
      styles.add(group.getAttribute("stroke-dasharray"));
      assertThat(group.getElementsByTagName("title").getLength()).isEqualTo(1);
    }
    assertThat(styles).doesNotHaveDuplicates();
    assertThat(
            Arrays.stream(LineKind.values())
                .filter(k -> k != LineKind.GUIDE && k != LineKind.TICK && k != LineKind.GLUE)
                .map(LineKind::dashes)
                .collect(Collectors.toSet()))
        .as(
            "cut, scores, perforation, layer, backing, glue inside and sheet edge: each its own"
                + " dashes")
        .hasSize(8);
  }

  @Test
  void oneFileASheet() throws Exception {
    Laid two = new Laid(Papers.cube(40, 8), Papers.A4, 2, true, new Room(0, 0));
    Job job = Jobs.of("Two", "", two, Folding.fold(two.net()), Order.usual(Unit.MM));
    assertThat(new SvgWriter().files(job).keySet())
        .containsExactly("two-template.svg", "two-template-2.svg");
  }
}
