package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.LineKind;
import facetwright.fold.Folding;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.papers.order.Order;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What ezdxf, a reader made by others, finds in our files. */
class DxfReadTest {
  private static final String SCRIPT =
      """
      import sys, json, ezdxf
      from ezdxf import bbox
      doc = ezdxf.readfile(sys.argv[1])
      audit = doc.audit()
      space = doc.modelspace()
      out = {
        "version": doc.dxfversion, "units": doc.units,
        "errors": [e.message for e in audit.errors],
        "fixes": [e.message for e in audit.fixes],
        "layers": {l.dxf.name: l.dxf.linetype for l in doc.layers},
        "linetypes": {t.dxf.name: [v for c, v in t.pattern_tags.tags if c == 49]
                      for t in doc.linetypes},
        "count": {}, "circles": [], "extents": {},
      }
      for e in space:
          key = e.dxf.layer + " " + e.dxftype()
          out["count"][key] = out["count"].get(key, 0) + 1
          if e.dxftype() == "CIRCLE":
              out["circles"].append([e.dxf.center.x, e.dxf.center.y, e.dxf.radius])
      for layer in out["layers"]:
          box = bbox.extents(e for e in space if e.dxf.layer == layer)
          if box.has_data:
              out["extents"][layer] = [*box.extmin.xyz[:2], *box.extmax.xyz[:2]]
      print(json.dumps(out))
      """;

  @TempDir Path folder;

  private JsonNode read(Job job) throws IOException {
    Path file = Files.write(folder.resolve("template.dxf"), new DxfWriter().write(job));
    return new ObjectMapper().readTree(Outside.ezdxf(SCRIPT, file));
  }

  @Test
  void readsWithoutFault() throws IOException {
    JsonNode found = read(Papers.job("Tray", Papers.tray(60, 20), Papers.A4));
    assertThat(found.get("errors")).isEmpty();
    assertThat(found.get("fixes")).isEmpty();
    assertThat(found.get("version").asString()).isEqualTo("AC1015");
    // 4 = millimetres: DXF Reference, header variable $INSUNITS (from memory).
    assertThat(found.get("units").asInt()).isEqualTo(4);
  }

  @Test
  void keepsSizeLayersAndDashes() throws IOException {
    Net net = Papers.tray(60, 20);
    Job job =
        Jobs.of(
            "Tray", "", Papers.at(net, Papers.A4, 30, 40), Folding.fold(net), Order.usual(Unit.MM));
    JsonNode found = read(job);
    JsonNode sheet = found.get("extents").get("SHEET");
    assertThat(sheet.get(2).asDouble()).isCloseTo(210, within(1e-6));
    assertThat(sheet.get(3).asDouble()).isCloseTo(297, within(1e-6));
    JsonNode cut = found.get("extents").get("CUT-OUTLINE");
    assertThat(cut.get(0).asDouble()).isCloseTo(30, within(1e-5));
    assertThat(cut.get(1).asDouble()).isCloseTo(40, within(1e-5));
    assertThat(cut.get(2).asDouble()).isCloseTo(30 + net.box().width(), within(1e-5));
    assertThat(cut.get(3).asDouble()).isCloseTo(40 + net.box().height(), within(1e-5));
    // None that nothing lies on.
    assertThat(found.get("layers").propertyNames())
        .containsExactlyInAnyOrder(
            "0", "Defpoints", "SHEET", "MOUNTAIN", "PERFORATION", "CUT-WITHIN", "CUT-OUTLINE");
    for (LineKind kind : List.of(LineKind.SHEET, LineKind.MOUNTAIN, LineKind.PERFORATION)) {
      String name = kind.id().toUpperCase(Locale.ROOT);
      String type = found.get("layers").get(name).asString();
      assertThat(type).isEqualTo(kind.dashes().isEmpty() ? "Continuous" : name);
      JsonNode pattern = found.get("linetypes").get(type);
      assertThat(pattern).hasSize(kind.dashes().size());
      for (int i = 0; i < pattern.size(); i++) {
        assertThat(Math.abs(pattern.get(i).asDouble())).isEqualTo(kind.dashes().get(i));
        assertThat(pattern.get(i).asDouble() > 0).isEqualTo(i % 2 == 0);
      }
    }
  }

  @Test
  void countsCutsScoresAndHoles() throws IOException {
    JsonNode found = read(Papers.job("Tray", Papers.tray(60, 20), Papers.A4));
    JsonNode count = found.get("count");
    // Four walls and four tabs hang on mountains; the flap on a perforation. Each pair of tabs and
    // the wall between them hang on one straight line.
    assertThat(count.get("MOUNTAIN LINE").asInt()).isEqualTo(4);
    assertThat(count.get("PERFORATION LINE").asInt()).isEqualTo(1);
    // One way round the whole net, and the window.
    assertThat(count.get("CUT-OUTLINE LWPOLYLINE").asInt()).isEqualTo(1);
    assertThat(count.get("CUT-WITHIN LWPOLYLINE").asInt()).isEqualTo(1);
    assertThat(found.get("circles")).hasSize(1);
    assertThat(found.get("circles").get(0).get(2).asDouble()).isEqualTo(3);
  }
}
