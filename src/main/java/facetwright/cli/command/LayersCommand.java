package facetwright.cli.command;

import facetwright.cli.desk.DesignFile;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PaperOptions;
import facetwright.cli.desk.RulerOption;
import facetwright.cli.json.Json;
import facetwright.cli.json.WorksJson;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Groups the layers of a design and plans how they are cut. */
@Command(
    name = "layers",
    mixinStandardHelpOptions = true,
    description =
        "Groups a design's decorative layers and plans the trimmer's cuts, sheet by sheet.")
public final class LayersCommand implements Callable<Integer> {
  @Mixin private DesignFile design;
  @Mixin private PaperOptions papers;

  @Mixin private RulerOption ruler;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    Design made = design.evaluate();
    made.said().forEach(line -> spec.commandLine().getErr().println(line));
    Order order = Order.usual(made.unit()).by(ruler.of(made.unit()));
    Works works = papers.works(made, spec.commandLine().getErr());
    PrintWriter out = spec.commandLine().getOut();
    if (json.isAsked()) {
      out.println(WorksJson.layers(made, works, order));
    } else {
      tell(out, made, works, order);
    }
    out.flush();
    return made.isSound() ? Exit.SOUND : Exit.ERROR_FOUND;
  }

  private static void tell(PrintWriter out, Design made, Works works, Order order) {
    WorksText words = new WorksText(order);
    out.println(made.title());
    words.lost(works).ifPresent(l -> out.println("  " + l));
    if (works.plans().isEmpty()) {
      out.println("  It has no layers. A script gives them with layer({ reveal, paper }).");
    }
    for (LayerPlan plan : works.plans()) {
      out.println("  " + words.summary(plan));
      words.groups(plan).forEach(line -> out.println("    " + line));
      for (SheetPlan sheet : plan.plan().sheets()) {
        out.println("    " + words.sheet(sheet) + ". " + words.given(sheet, plan));
        words.steps(sheet, plan).forEach(line -> out.println("      " + line));
      }
    }
    if (!works.plans().isEmpty()) {
      out.println("  " + WorksText.CAUTION);
    }
  }
}
