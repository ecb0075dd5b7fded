package facetwright.cli.desk;

import facetwright.script.design.Design;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * What a command is asked and where it answers: the script and its dials, words or JSON, the
 * streams. Every command about a design has it.
 */
public final class Asked {
  @Mixin private DesignFile design = new DesignFile();

  @Option(names = "--json", description = "one JSON object instead of words")
  private boolean isJson;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** The script and its dials. */
  public DesignFile design() {
    return design;
  }

  /** The design, with what its script said told. */
  public Design evaluate() throws Exception {
    Design made = design.evaluate();
    said(made);
    return made;
  }

  /** Tells what a script said. */
  public void said(Design made) {
    made.said().forEach(err()::println);
  }

  /** Where faults and what is under way are told. */
  public PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Whether another program asks, which is answered by one object. */
  public boolean isJson() {
    return isJson;
  }

  /** Answers in the way that is asked for; only that is made. */
  public void answer(Supplier<String> object, Supplier<List<String>> lines) {
    if (isJson) {
      out().println(object.get());
    } else {
      lines.get().forEach(out()::println);
    }
    out().flush();
  }

  /** Tells people something more; other programs have their one object. */
  public void tell(String line) {
    if (!isJson) {
      out().println(line);
      out().flush();
    }
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }
}
