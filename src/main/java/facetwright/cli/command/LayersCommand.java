package facetwright.cli.command;

import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PaperOptions;
import facetwright.cli.desk.RulerOption;
import facetwright.cli.json.WorksJson;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Groups the layers of a design and plans how they are cut. */
@Command(
    name = "layers",
    mixinStandardHelpOptions = true,
    description =
        "Groups a design's decorative layers and plans the trimmer's cuts, sheet by sheet.")
public final class LayersCommand implements Callable<Integer> {
  @Mixin private Asked asked;
  @Mixin private PaperOptions papers;

  @Mixin private RulerOption ruler;

  @Override
  public Integer call() throws Exception {
    Design made = asked.evaluate();
    Order order = Order.usual(made.unit()).by(ruler.of(made.unit()));
    Works works = papers.works(made, asked.err());
    asked.answer(() -> WorksJson.layers(made, works, order), () -> lines(made, works, order));
    return Exit.of(made.isSound());
  }

  private static List<String> lines(Design made, Works works, Order order) {
    List<String> lines = new ArrayList<>();
    LayersText words = new LayersText(order);
    lines.add(made.title());
    words.lost(works).ifPresent(l -> lines.add("  " + l));
    if (works.plans().isEmpty()) {
      lines.add("  It has no layers. A script gives them with layer({ reveal, paper }).");
    }
    for (LayerPlan plan : works.plans()) {
      lines.add("  " + words.summary(plan));
      words.groups(plan).forEach(line -> lines.add("    " + line));
      for (SheetPlan sheet : plan.plan().sheets()) {
        lines.add("    " + words.sheet(sheet) + ". " + words.given(sheet, plan));
        words.steps(sheet, plan).forEach(line -> lines.add("      " + line));
      }
    }
    if (!works.plans().isEmpty()) {
      lines.add("  " + words.caution());
    }
    return lines;
  }
}
