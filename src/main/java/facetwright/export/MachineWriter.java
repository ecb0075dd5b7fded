package facetwright.export;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.machine.MachineLines;
import facetwright.draw.machine.PaperLines;
import facetwright.draw.machine.Run;
import facetwright.net.sheet.Laid;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * What a cutting machine does, as SVG in mm: a group for each tool setting, in the order in which
 * they are run, thin whole lines, no words, no areas. One file a sheet of card; the decorative
 * papers are a file of their own.
 */
final class MachineWriter implements Exporter {
  /** Thin, so that a program takes a line for a cut and not for an area; from memory. */
  private static final double WIDTH = 0.1;

  private final boolean isPaper;

  private MachineWriter(boolean isPaper) {
    this.isPaper = isPaper;
  }

  static MachineWriter ofCard() {
    return new MachineWriter(false);
  }

  static MachineWriter ofPapers() {
    return new MachineWriter(true);
  }

  @Override
  public String format() {
    return isPaper ? "machine-layers" : "machine";
  }

  @Override
  public String ending() {
    return isPaper ? "machine-layers.svg" : "machine.svg";
  }

  @Override
  public String name() {
    return isPaper ? "Layers for a cutting machine (SVG)" : "Cutting file (SVG)";
  }

  @Override
  public String use() {
    return isPaper
        ? "The decorative papers of one piece, each paper a group of its own, for a cutting"
            + " machine."
        : "Scores and cuts in the order in which they are run, nothing else, for a cutting"
            + " machine.";
  }

  @Override
  public String when() {
    return isPaper ? "where the design has layers" : "";
  }

  @Override
  public boolean adds(Job job) {
    return !isPaper || !job.laid().net().layers().isEmpty();
  }

  @Override
  public byte[] write(Job job) {
    return files(job).firstEntry().getValue();
  }

  @Override
  public SequencedMap<String, byte[]> files(Job job) {
    return SvgDocument.files(this, job, sheets(job.laid()), MachineWriter::svg);
  }

  private List<MachineLines> sheets(Laid laid) {
    if (isPaper) {
      return List.of(PaperLines.of(laid.net()));
    }
    List<MachineLines> sheets = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      sheets.add(MachineLines.of(laid, i));
    }
    return sheets;
  }

  private static byte[] svg(String title, MachineLines lines) {
    return SvgDocument.of(title, lines.width(), lines.height(), xml -> runs(xml, lines));
  }

  private static void runs(XMLStreamWriter xml, MachineLines lines) throws XMLStreamException {
    for (Run run : lines.runs()) {
      xml.writeCharacters("\n");
      xml.writeStartElement("g");
      xml.writeAttribute("id", run.id());
      pen(xml, run.kind());
      SvgDocument.title(xml, Xml.clean(run.label()));
      for (Mark line : run.lines()) {
        Pace.step();
        xml.writeCharacters("\n");
        SvgWriter.mark(xml, line, lines.height());
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
    }
  }

  private static void pen(XMLStreamWriter xml, LineKind kind) throws XMLStreamException {
    xml.writeAttribute("fill", "none");
    xml.writeAttribute("stroke", kind.ink().hex());
    xml.writeAttribute("stroke-width", SvgDocument.number(WIDTH));
  }
}
