package facetwright.papers.chart;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One thing to do, in plain data: with the steps before it, all a maker has to know. */
public sealed interface Step {

  /** The numbered points that one has to find for this step. */
  default Set<Integer> numbers() {
    Stream<Spot> spots =
        switch (this) {
          case Trim _, FullScores _, ShortScores _ -> Stream.of();
          case SpotScores s -> s.lines().stream().flatMap(p -> Stream.of(p.from(), p.to()));
          case Points p ->
              IntStream.range(0, p.at().size()).mapToObj(i -> new Spot.Numbered(p.first() + i));
          case Punch p -> p.centres().stream();
          case Windows w -> w.outlines().stream().flatMap(List::stream).map(Step::point);
          case Slits s -> s.cuts().stream().flatMap(p -> Stream.of(p.from(), p.to()));
          case CutAway c -> c.areas().stream().flatMap(List::stream).map(Step::point);
        };
    Set<Integer> numbers = new TreeSet<>();
    spots.forEach(
        s -> {
          if (s instanceof Spot.Numbered(int number)) {
            numbers.add(number);
          }
        });
    return numbers;
  }

  private static Spot point(Spot spot) {
    return spot instanceof Spot.Circle(Spot centre, _) ? centre : spot;
  }

  /** Whether it takes something away or parts the card. */
  default boolean isCut() {
    return switch (this) {
      case Punch _, Windows _, Slits _, CutAway _ -> true;
      case Trim _, FullScores _, ShortScores _, SpotScores _, Points _ -> false;
    };
  }

  /** A line at a measure from the left stop. */
  record Ruled(String label, Measure measure) {}

  /** From one spot straight to another. */
  record Path(Spot from, Spot to) {}

  /**
   * The sheet cut to the blank, before anything is scored.
   *
   * @param width from left to right as it lies first
   * @param height from top to bottom
   */
  record Trim(Measure width, Measure height) implements Step {}

  /**
   * Lines over the whole of the blank.
   *
   * @param isAgain whether the same measures were set before, all of them or these among them
   */
  record FullScores(Placing placing, List<Ruled> lines, boolean isPerforated, boolean isAgain)
      implements Step {
    public FullScores {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Lines that start and stop within the blank.
   *
   * @param from where each starts, told along it
   * @param to where each stops
   */
  record ShortScores(Placing placing, List<Ruled> lines, Guide from, Guide to, boolean isPerforated)
      implements Step {
    public ShortScores {
      lines = List.copyOf(lines);
    }
  }

  /** Scores in any direction, from spot to spot. */
  record SpotScores(List<Path> lines, boolean isPerforated) implements Step {
    public SpotScores {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Points marked lightly and numbered.
   *
   * @param first the number of the first of them
   */
  record Points(int first, List<Spot.At> at) implements Step {
    public Points {
      at = List.copyOf(at);
    }
  }

  /** Round holes of one diameter. */
  record Punch(Measure diameter, List<Spot> centres) implements Step {
    public Punch {
      centres = List.copyOf(centres);
    }
  }

  /**
   * Openings within the card, each by its corners in order, arcs by their radius between.
   *
   * @param word what one is called: "window" or "slot"
   */
  record Windows(List<List<Spot>> outlines, String word) implements Step {
    public Windows {
      outlines = outlines.stream().map(List::copyOf).toList();
    }
  }

  /**
   * Cuts that take nothing away; where they stop at a score, the score stays whole.
   *
   * @param isForTongues whether each is a slot cut as a single line
   */
  record Slits(List<Path> cuts, boolean isForTongues) implements Step {
    public Slits {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * Waste, each area by its corners in order, arcs by their radius between; sides on the edge of
   * the blank need no cut.
   */
  record CutAway(List<List<Spot>> areas) implements Step {
    public CutAway {
      areas = areas.stream().map(List::copyOf).toList();
    }
  }
}
