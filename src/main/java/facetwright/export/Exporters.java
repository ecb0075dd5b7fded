package facetwright.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** Every format there is. */
public final class Exporters {
  private Exporters() {}

  /** By the short name of the format, in the order in which a maker needs them. */
  public static SequencedMap<String, Exporter> all() {
    SequencedMap<String, Exporter> all = new LinkedHashMap<>();
    for (Exporter e :
        List.of(
            new PdfWriter(),
            new RingWriter(),
            TilesWriter.ofOutside(),
            TilesWriter.ofInside(),
            new LayoutWriter(),
            new CutsWriter(),
            new GuidesWriter(),
            new HandoutWriter(),
            new HtmlWriter(),
            ChartWriter.ofSteps(),
            ChartWriter.ofCard(),
            new FacetsWriter(),
            new SvgWriter(),
            MachineWriter.ofCard(),
            MachineWriter.ofPapers(),
            new DxfWriter(),
            new FoldWriter(),
            new ObjWriter(),
            new StlWriter(),
            PngWriter.ofNet(),
            PngWriter.ofForm())) {
      all.put(e.format(), e);
    }
    return all;
  }
}
