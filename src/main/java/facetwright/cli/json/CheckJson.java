package facetwright.cli.json;

import facetwright.aim.KnobMend;
import facetwright.aim.Measure;
import facetwright.check.cut.OverlapRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.geom.Box2;
import facetwright.json.JsonText;
import facetwright.message.Message;
import facetwright.net.Net;
import facetwright.net.Overlaps;
import facetwright.net.sheet.Laid;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.InFile;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** A design's measures and findings as one JSON object. */
public final class CheckJson {
  private CheckJson() {}

  public static String of(Design design, Optional<KnobMend> mend) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeObjectPropertyStart("dials");
          for (Dial dial : design.dials()) {
            switch (dial.kind()) {
              case SWITCH -> json.writeBooleanProperty(dial.name(), dial.value() == 1);
              case CHOICE ->
                  json.writeStringProperty(
                      dial.name(), DialText.text(dial, dial.value(), design.unit()));
              case LENGTH, ANGLE, WHOLE, NUMBER ->
                  json.writeNumberProperty(dial.name(), dial.value());
            }
          }
          json.writeEndObject();
          net(json, design);
          sheet(json, design.laid());
          folded(json, design);
          CheckVertices.write(json, design);
          PartsJson.write(json, design.net().parts());
          FittingsJson.write(json, design);
          mend(json, design, mend);
          findings(json, design.findings());
        });
  }

  /** A script that came to nothing, as the one finding there is. */
  public static String of(ScriptException fault) {
    Finding finding =
        new Finding(
            "script",
            Finding.Severity.ERROR,
            Message.text(fault.getMessage()),
            Message.text(fault.remedy()),
            new Place.WholeNet(),
            fault.site());
    return JsonText.object(json -> findings(json, List.of(finding)));
  }

  private static void net(JsonGenerator json, Design design) {
    Net net = design.net();
    Box2 box = net.box();
    json.writeObjectPropertyStart("net");
    json.writeNumberProperty("pieces", net.pieces());
    json.writeNumberProperty("panels", net.panels().size());
    json.writeNumberProperty("scores", net.scores().size());
    json.writeNumberProperty("cuts", net.cuts());
    json.writeNumberProperty("width_mm", box.width());
    json.writeNumberProperty("height_mm", box.height());
    json.writeNumberProperty("overlaps", overlaps(design));
    json.writeNumberProperty("card_g", design.laid().mass().grams());
    json.writeEndObject();
  }

  /** Counted again only where the rule found any, for it tells those that are alike as one. */
  private static long overlaps(Design design) {
    return design.findings().stream().anyMatch(f -> f.rule().equals(OverlapRule.NAME))
        ? Overlaps.find(design.net()).size()
        : 0;
  }

  private static void sheet(JsonGenerator json, Laid laid) {
    json.writeObjectPropertyStart("sheet");
    json.writeStringProperty("name", laid.stock().name());
    json.writeBooleanProperty("fits", laid.fits());
    json.writeNumberProperty("count", laid.sheets());
    json.writeNumberProperty("width_mm", laid.stock().width());
    json.writeNumberProperty("height_mm", laid.stock().height());
    if (laid.kinds().size() > 1) {
      JsonText.objects(
          json,
          "cards",
          laid.kinds(),
          card -> {
            json.writeStringProperty("name", card.name());
            json.writeNumberProperty("count", laid.sheetsOf(card));
            json.writeNumberProperty("width_mm", card.width());
            json.writeNumberProperty("height_mm", card.height());
            json.writeNumberProperty("weight", card.weight());
            json.writeNumberProperty("caliper_mm", card.caliper());
            json.writeStringProperty("colour", card.colour());
          });
    }
    json.writeEndObject();
  }

  private static void folded(JsonGenerator json, Design design) {
    FoldedForm folded = design.folded();
    boolean solved = folded.closure() != Closure.NOT_SOLVED;
    Measures measures = folded.measures();
    json.writeObjectPropertyStart("folded");
    FormJson.verdict(json, design);
    if (solved) {
      json.writeNumberProperty("gap_mm", folded.apart(design.net()));
      json.writeNumberProperty("strain", folded.strain());
      JsonText.objects(
          json,
          "strained_panels",
          folded.strains(),
          strain -> {
            json.writeStringProperty("panel", design.net().panels().get(strain.panel()).name());
            json.writeNumberProperty("strain", strain.part());
          });
      FormJson.size(json, "size_mm", folded);
      json.writeNumberProperty("volume_mm3", measures.volume());
    } else {
      json.writeNullProperty("gap_mm");
      json.writeNullProperty("strain");
      json.writeNullProperty("strained_panels");
      json.writeNullProperty("size_mm");
      json.writeNullProperty("volume_mm3");
    }
    json.writeNumberProperty("area_mm2", measures.area());
    if (solved) {
      json.writeNumberProperty("collisions", folded.collisions().size());
    } else {
      json.writeNullProperty("collisions");
    }
    json.writeEndObject();
  }

  /** The turn of one dial that would help most where it does not close, or null. */
  private static void mend(JsonGenerator json, Design design, Optional<KnobMend> mend) {
    if (mend.isEmpty()) {
      json.writeNullProperty("mend");
      return;
    }
    KnobMend turn = mend.get();
    json.writeObjectPropertyStart("mend");
    json.writeStringProperty("dial", turn.knob().name());
    json.writeNumberProperty("from", turn.knob().now());
    json.writeNumberProperty("to", turn.value());
    json.writeNumberProperty("gap_mm", turn.then().get(Measure.GAP));
    json.writeNumberProperty("strain", turn.then().get(Measure.STRAIN));
    json.writeStringProperty("message", turn.text(design.unit()));
    json.writeEndObject();
  }

  /** What was found, as a field. */
  public static void findings(JsonGenerator json, List<Finding> findings) {
    JsonText.objects(json, "findings", findings, finding -> finding(json, finding));
  }

  private static void finding(JsonGenerator json, Finding finding) {
    json.writeStringProperty("rule", finding.rule());
    json.writeStringProperty("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    json.writeStringProperty("message", finding.message());
    if (finding.site().isKnown()) {
      json.writeNumberProperty("line", finding.site().line());
      json.writeNumberProperty("column", finding.site().column());
    } else {
      json.writeNullProperty("line");
      json.writeNullProperty("column");
    }
    InFile in = finding.site().in();
    if (in.isKnown()) {
      json.writeObjectPropertyStart("in");
      json.writeStringProperty("file", in.name());
      json.writeNumberProperty("line", in.line());
      json.writeNumberProperty("column", in.column());
      json.writeBooleanProperty("gathered", in.isGathered());
      json.writeEndObject();
    }
    json.writeStringProperty("fix", finding.fix());
  }
}
