package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The net for a cutting machine: one layer a kind of line, in mm, all sheets side by side as laid.
 * The version is AC1015; holes are true circles, cuts are joined into few polylines. Names, hatch
 * and check ruler are left out, a maker's words on panels are on a layer of their own; the edge of
 * each sheet is a layer of its own.
 */
final class DxfWriter implements Exporter {
  private static final Set<NetDrawing.Content> CONTENT =
      Set.of(NetDrawing.Content.LAYERS, NetDrawing.Content.TICKS, NetDrawing.Content.LABELS);

  @Override
  public String format() {
    return "dxf";
  }

  @Override
  public String ending() {
    return "template.dxf";
  }

  @Override
  public String name() {
    return "Cutting file (DXF)";
  }

  @Override
  public String use() {
    return "Cuts and scores on layers of their own, for a cutting machine.";
  }

  @Override
  public byte[] write(Job job) {
    Laid laid = job.laid();
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      Box2 box = laid.sheet(i);
      Polygon2 sheet = Polygon2.rectangle(box.minX(), box.minY(), box.width(), box.height());
      marks.add(Mark.Stroke.around(sheet, LineKind.SHEET));
      marks.addAll(onSheet(laid, i));
    }
    return new DxfText(title(job), marks).text().getBytes(StandardCharsets.US_ASCII);
  }

  /** The lines of one sheet where they lie among all sheets; the sheet's edge left out. */
  private static List<Mark> onSheet(Laid laid, int index) {
    Drawing page = NetDrawing.of(laid, index, CONTENT);
    Vec2 back = NetDrawing.cornerOf(laid, index);
    return page.moved(Motion2.shift(back)).marks().stream()
        .filter(m -> !(m instanceof Mark.Stroke s && s.kind() == LineKind.SHEET))
        .toList();
  }
}
