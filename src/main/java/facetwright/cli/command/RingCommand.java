package facetwright.cli.command;

import facetwright.adjust.ring.RingOffer;
import facetwright.adjust.ring.RingOffers;
import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Output;
import facetwright.cli.desk.PapersFor;
import facetwright.cli.desk.PrinterOptions;
import facetwright.cli.desk.Progress;
import facetwright.cli.desk.RulerOption;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.RingJson;
import facetwright.draw.page.RingPages;
import facetwright.export.Job;
import facetwright.export.RingWriter;
import facetwright.geom.RingCount;
import facetwright.language.Telling;
import facetwright.papers.facets.FacetList;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.RingText;
import facetwright.papers.ring.Rings;
import facetwright.papers.ring.Seating;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.words.Decimals;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a ring of several copies of a design. */
@Command(
    name = "ring",
    mixinStandardHelpOptions = true,
    description = {
      "Plans a ring of several copies: which facets meet, how large it is, what goes between.",
      "With --out it makes a page on the ring and the papers of the piece, too."
    })
public final class RingCommand implements Callable<Integer> {
  /** So many other rings are told of each sort. */
  private static final int OFFERS = 3;

  @Mixin private Asked asked;

  @Option(
      names = "--count",
      paramLabel = "N",
      required = true,
      description = "how many pieces, " + RingCount.LEAST + " to " + RingCount.MOST)
  private int count;

  @Option(
      names = "--standing",
      description = "only rings in which each piece stands as it does alone, none tipped")
  private boolean standing;

  @Mixin private PrinterOptions printer;

  @Mixin private RulerOption ruler;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "a folder to make the papers in; made where missing")
  private Path out;

  @Mixin private Output output;

  @Override
  public Integer call() throws Exception {
    Trouble.unless("--count", "a ring is of %s pieces", RingCount.LEAST, RingCount.MOST, count);
    printer.check();
    WhatIf what = asked.design().whatIf();
    Design made = what.design();
    asked.said(made);
    Rings all;
    try {
      all = Rings.of(made.net(), made.folded());
    } catch (IllegalArgumentException e) {
      asked
          .err()
          .println(
              "facetwright: "
                  + e.getMessage()
                  + ". Give the open fold angles or more joins; facetwright check says which.");
      return Exit.ERROR_FOUND;
    }
    Rings rings = standing ? all.standing() : all;
    List<RingPlan> plans = rings.plans(count);
    Job job = PapersFor.job(made, printer.order(made.unit()).by(ruler.of(made.unit())).of(count));
    boolean isFlush = !plans.isEmpty() && plans.getFirst().seating().isFlush();
    List<RingOffer> offers =
        isFlush
            ? List.of()
            : asked.design().ask(() -> RingOffers.of(what, count, standing)).stream()
                .limit(OFFERS)
                .toList();
    asked.answer(
        () -> RingJson.of(made, rings, count, plans, offers, RingWriter.works(job).materials()),
        () -> lines(made, job, rings, plans, offers));
    if (!asked.isJson() && standing && plans.isEmpty()) {
      all.plans(count).stream()
          .findFirst()
          .ifPresent(
              p ->
                  asked.tell(
                      "  Tipped, it can: " + RingText.brief(p, job.order().telling()) + "."));
    }
    if (!asked.isJson() && !isFlush) {
      flushDials(what).ifPresent(asked::tell);
    }
    if (out != null && !plans.isEmpty()) {
      output.papers(out, files(job, offers), asked, made);
    }
    return Exit.of(!plans.isEmpty() && made.isSound());
  }

  private List<String> lines(
      Design made, Job job, Rings rings, List<RingPlan> plans, List<RingOffer> offers) {
    FacetList facets = FacetList.of(made.net(), made.folded(), made.spoken());
    Telling tell = job.order().telling();
    List<String> lines = new ArrayList<>();
    lines.add(made.title());
    if (plans.isEmpty()) {
      lines.add(
          "  No two facets of this piece can seat a ring of "
              + count
              + (standing ? " that stands" : "")
              + ": a piece may take no more than "
              + Decimals.plain(Math.rint(3600.0 / count) / 10)
              + "° of the circle.");
    } else {
      Seating seating = plans.getFirst().seating();
      RingText.lines(plans.getFirst(), made.laid().stock().caliper(), tell)
          .forEach(l -> lines.add("  " + l));
      lines.add(
          "  Facet 1 is "
              + names(facets, seating.one())
              + ", facet 2 "
              + names(facets, seating.other())
              + ", counted as facetwright facets does; the page shows them.");
      plans.stream()
          .skip(1)
          .limit(OFFERS)
          .forEach(
              p ->
                  lines.add(
                      "  Another way, "
                          + names(facets, p.seating().one())
                          + " to "
                          + names(facets, p.seating().other())
                          + ": "
                          + RingText.brief(p, tell)
                          + "."));
    }
    offers.forEach(o -> lines.add("  " + offer(o, tell)));
    RingText.hints(rings, count, tell).forEach(l -> lines.add("  " + l));
    if (!plans.isEmpty()) {
      lines.add("  All " + count + " take:");
      RingWriter.materials(job, plans.getFirst()).forEach(l -> lines.add("    " + l));
    }
    return lines;
  }

  /** The turn of dials that seats so many flush, where there is one. */
  private Optional<String> flushDials(WhatIf what) throws Exception {
    if (what.design().dials().stream().allMatch(Dial::isWord)) {
      return Optional.empty();
    }
    Outcome outcome =
        asked
            .design()
            .ask(
                () ->
                    what.aim(
                        List.of(new Goal.Ring(count, standing, "")),
                        List.of(),
                        Grid.usual(what.design().unit())));
    return outcome.isMet() && !outcome.settings().isEmpty()
        ? Optional.of(
            "  With "
                + OutcomeText.settings(outcome)
                + ", "
                + OutcomeText.goals(outcome).getFirst())
        : Optional.empty();
  }

  /** A dial turned by whole steps, and what its ring comes to. */
  private static String offer(RingOffer offer, Telling tell) {
    return "With "
        + offer.dial()
        + " "
        + Decimals.plain(offer.value())
        + ": "
        + RingText.brief(offer.plan(), tell)
        + ".";
  }

  private static String names(FacetList facets, List<Integer> panels) {
    return panels.stream()
        .flatMap(p -> facets.ofPanel(p).stream())
        .map(f -> "no. " + f.number() + ", \"" + f.name() + "\",")
        .collect(Collectors.joining(" with "))
        .replaceAll(",$", "");
  }

  private SequencedMap<String, byte[]> files(Job job, List<RingOffer> offers) {
    List<RingPages.Other> more =
        offers.stream()
            .map(
                o ->
                    new RingPages.Other(
                        o.design().net(),
                        o.design().folded().poses(),
                        o.plan(),
                        offer(o, job.order().telling())))
            .toList();
    SequencedMap<String, byte[]> files = new RingWriter(standing, more).files(job);
    files.putAll(PapersFor.files(job, List.of(), new Progress(asked.err())));
    return files;
  }
}
