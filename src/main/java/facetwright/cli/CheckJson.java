package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.aim.Measure;
import facetwright.aim.Mend;
import facetwright.check.Finding;
import facetwright.check.OverlapRule;
import facetwright.check.Verdict;
import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.fold.Measures;
import facetwright.fold.PanelStrain;
import facetwright.geom.Box2;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.Overlaps;
import facetwright.script.Design;
import facetwright.script.Dial;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** A design's measures and findings as one JSON object. */
final class CheckJson {
  private CheckJson() {}

  static String of(Design design, Optional<Mend> mend) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", design.unit().symbol());
          json.writeObjectFieldStart("dials");
          for (Dial dial : design.dials()) {
            json.writeNumberField(dial.name(), dial.value());
          }
          json.writeEndObject();
          net(json, design);
          sheet(json, design.laid());
          folded(json, design);
          CheckVertices.write(json, design);
          mend(json, design, mend);
          json.writeArrayFieldStart("findings");
          for (Finding finding : design.findings()) {
            finding(json, finding);
          }
          json.writeEndArray();
        });
  }

  private static void net(JsonGenerator json, Design design) throws IOException {
    Net net = design.net();
    Box2 box = net.box();
    json.writeObjectFieldStart("net");
    json.writeNumberField("pieces", net.pieces());
    json.writeNumberField("panels", net.panels().size());
    json.writeNumberField("scores", net.scores().size());
    json.writeNumberField("cuts", net.cuts());
    json.writeNumberField("width_mm", box.width());
    json.writeNumberField("height_mm", box.height());
    json.writeNumberField("overlaps", overlaps(design));
    json.writeEndObject();
  }

  /** Counted again only where the rule found any, for it tells those that are alike as one. */
  private static long overlaps(Design design) {
    return design.findings().stream().anyMatch(f -> f.rule().equals(OverlapRule.NAME))
        ? Overlaps.find(design.net()).size()
        : 0;
  }

  private static void sheet(JsonGenerator json, Laid laid) throws IOException {
    json.writeObjectFieldStart("sheet");
    json.writeStringField("name", laid.stock().name());
    json.writeBooleanField("fits", laid.fits());
    json.writeNumberField("count", laid.sheets());
    json.writeNumberField("width_mm", laid.stock().width());
    json.writeNumberField("height_mm", laid.stock().height());
    json.writeEndObject();
  }

  private static void folded(JsonGenerator json, Design design) throws IOException {
    FoldedForm folded = design.folded();
    boolean solved = folded.closure() != Closure.NOT_SOLVED;
    Measures measures = folded.measures();
    json.writeObjectFieldStart("folded");
    json.writeStringField("verdict", Verdict.of(design.laid(), folded, design.unit()));
    if (solved) {
      json.writeBooleanField("closed", folded.canBeMade(design.net()));
      json.writeNumberField("gap_mm", folded.apart(design.net()));
      json.writeNumberField("strain", folded.strain());
      json.writeArrayFieldStart("strained_panels");
      for (PanelStrain strain : folded.strains()) {
        json.writeStartObject();
        json.writeStringField("panel", design.net().panels().get(strain.panel()).name());
        json.writeNumberField("strain", strain.part());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeArrayFieldStart("size_mm");
      json.writeNumber(measures.width());
      json.writeNumber(measures.depth());
      json.writeNumber(measures.height());
      json.writeEndArray();
      json.writeNumberField("volume_mm3", measures.volume());
    } else {
      json.writeNullField("closed");
      json.writeNullField("gap_mm");
      json.writeNullField("strain");
      json.writeNullField("strained_panels");
      json.writeNullField("size_mm");
      json.writeNullField("volume_mm3");
    }
    json.writeNumberField("area_mm2", measures.area());
    if (solved) {
      json.writeNumberField("collisions", folded.collisions().size());
    } else {
      json.writeNullField("collisions");
    }
    json.writeEndObject();
  }

  /** The turn of one dial that would help most where it does not close, or null. */
  private static void mend(JsonGenerator json, Design design, Optional<Mend> mend)
      throws IOException {
    if (mend.isEmpty()) {
      json.writeNullField("mend");
      return;
    }
    Mend turn = mend.get();
    json.writeObjectFieldStart("mend");
    json.writeStringField("dial", turn.knob().name());
    json.writeNumberField("from", turn.knob().now());
    json.writeNumberField("to", turn.value());
    json.writeNumberField("gap_mm", turn.then().get(Measure.GAP));
    json.writeNumberField("strain", turn.then().get(Measure.STRAIN));
    json.writeStringField("message", turn.text(design.unit()));
    json.writeEndObject();
  }

  static void finding(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", finding.rule());
    json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    json.writeStringField("message", finding.message());
    if (finding.site().isKnown()) {
      json.writeNumberField("line", finding.site().line());
      json.writeNumberField("column", finding.site().column());
    } else {
      json.writeNullField("line");
      json.writeNullField("column");
    }
    json.writeStringField("fix", finding.fix());
    json.writeEndObject();
  }
}
