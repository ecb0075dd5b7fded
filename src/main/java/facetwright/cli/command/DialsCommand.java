package facetwright.cli.command;

import facetwright.aim.Slopes;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.DialsTable;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Progress;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.DialsJson;
import facetwright.pace.Pace;
import facetwright.script.WhatIf;
import facetwright.words.Count;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists a design's dials and what turning each does. */
@Command(
    name = "dials",
    mixinStandardHelpOptions = true,
    description =
        "Lists a design's dials and what turning each by one mark of the ruler does; of"
            + " 1000 dials at most.")
public final class DialsCommand implements Callable<Integer> {
  /** Each takes some four designs; so many take a minute or two. */
  public static final int MOST = 1000;

  /** Steps of work that a design is reckoned as: ten milliseconds of it. */
  private static final int DESIGN = 10_000;

  @Mixin private Asked asked;

  @Override
  public Integer call() throws Exception {
    WhatIf what = asked.design().whatIf();
    int dials = what.design().dials().size();
    if (dials > MOST) {
      throw new Trouble.WrongCall(
          "dials tells what "
              + MOST
              + " dials do at most, and this design has "
              + dials
              + ". Write as numbers what need not be turned.");
    }
    Slopes slopes =
        new Progress(asked.err())
            .during(
                "Turning " + Count.of(dials, "dial") + " a little up and down",
                () -> asked.design().ask(counted(what, dials)::slopes));
    asked.answer(
        () -> DialsJson.of(what.design(), slopes), () -> DialsTable.lines(what.design(), slopes));
    return Exit.SOUND;
  }

  /** The same questions, each design that is made for them told and counted. */
  public static WhatIf counted(WhatIf what, int dials) {
    AtomicInteger made = new AtomicInteger();
    return what.telling(
        () -> {
          Pace.doing("design " + made.incrementAndGet() + " of about " + 4 * dials);
          Pace.step(DESIGN);
        });
  }
}
