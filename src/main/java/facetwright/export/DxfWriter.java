package facetwright.export;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.draw.machine.MachineLines;
import facetwright.draw.machine.Run;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.language.Telling;
import facetwright.net.sheet.Laid;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a cutting machine does on each sheet, the sheets side by side as laid, in mm: a layer for
 * each tool setting, the edges of the sheets a layer, a maker's words on panels another. The
 * version is AC1015; holes are true circles, outlines are closed.
 */
final class DxfWriter implements Exporter {
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

  /** Programs read it. */
  @Override
  public Telling reader(Job job) {
    return Telling.english(job.unit(), job.order().ruler());
  }

  @Override
  public byte[] write(Job job) {
    Laid laid = job.laid();
    Map<String, Run> runs = new LinkedHashMap<>();
    List<Mark.Text> words = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      Box2 box = laid.sheet(i);
      Polygon2 sheet = Polygon2.rectangle(box.minX(), box.minY(), box.width(), box.height());
      add(
          runs,
          new Run(
              LineKind.SHEET.id(),
              LineKind.SHEET.label(),
              LineKind.SHEET,
              List.of(Mark.Stroke.around(sheet, LineKind.SHEET))));
      Motion2 back = Motion2.shift(NetDrawing.cornerOf(laid, i));
      for (Run run : MachineLines.of(laid, i).runs()) {
        List<Mark> lines = run.lines().stream().map(m -> m.moved(back)).toList();
        add(runs, new Run(run.id(), run.label(), run.kind(), lines));
      }
      NetDrawing.of(laid, i, Set.of(NetDrawing.Content.LABELS)).moved(back).marks().stream()
          .filter(Mark.Text.class::isInstance)
          .forEach(t -> words.add((Mark.Text) t));
    }
    return new DxfText(title(job), List.copyOf(runs.values()), words)
        .text()
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** Lines of one kind on several sheets are one layer. */
  private static void add(Map<String, Run> runs, Run run) {
    runs.merge(
        run.id(),
        run,
        (a, b) -> {
          List<Mark> all = new ArrayList<>(a.lines());
          all.addAll(b.lines());
          return new Run(a.id(), a.label(), a.kind(), all);
        });
  }
}
