package facetwright.papers.handout;

import facetwright.fold.pose.PartNames;
import facetwright.fold.pose.Together;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How parts come together, in words: what is done alike is told once, with its number. */
final class TogetherText {
  private final Parts parts;
  private final Together together;
  private final Unit unit;

  TogetherText(Parts parts, Together together, Unit unit) {
    this.parts = parts;
    this.together = together;
    this.unit = unit;
  }

  /** The stages that are told in one breath, run by run. */
  List<List<Together.Stage>> runs() {
    List<List<Together.Stage>> runs = new ArrayList<>();
    for (Together.Stage stage : together.stages()) {
      if (!runs.isEmpty() && isAlike(runs.getLast().getFirst(), stage)) {
        runs.getLast().add(stage);
      } else {
        runs.add(new ArrayList<>(List.of(stage)));
      }
    }
    return runs;
  }

  private boolean isAlike(Together.Stage a, Together.Stage b) {
    Placing one = placing(a);
    Placing other = placing(b);
    if (one instanceof Placing.With || other instanceof Placing.With) {
      return one instanceof Placing.With w
          && other instanceof Placing.With x
          && w.onto() == x.onto();
    }
    return one.getClass() == other.getClass()
        && first(one.part()) == first(other.part())
        && first(one.onto()) == first(other.onto())
        && one.turn() == other.turn()
        && one.site().equals(other.site());
  }

  private int first(int part) {
    return parts.all().get(part).first();
  }

  private Placing placing(Together.Stage stage) {
    return parts.placings().get(stage.placing());
  }

  /** What is done in a run of stages. */
  String words(List<Together.Stage> run) {
    Placing placing = placing(run.getFirst());
    if (placing instanceof Placing.With) {
      return "Lay " + withAll(run) + ", as the picture shows; they go in together.";
    }
    if (run.size() == 1) {
      return words(placing, name(placing.part()), name(placing.onto()), at(run)) + turned(placing);
    }
    boolean isOnOne = run.stream().map(s -> placing(s).onto()).distinct().count() == 1;
    if (isOnOne) {
      String all = text(run.stream().map(s -> placing(s).part()).toList());
      return words(placing, all, name(placing.onto()), at(run)) + turned(placing);
    }
    String one = "“" + parts.called(placing.part()) + "”";
    String other = "“" + parts.called(placing.onto()) + "”";
    return words(placing, one, other, at(run.subList(0, 1)))
        + turned(placing)
        + " Do so with "
        + (run.size() == 2 ? "both." : "all " + run.size() + ".");
  }

  private String words(Placing placing, String one, String other, String at) {
    return switch (placing) {
      case Placing.Over _ -> "Put " + one + " over " + other + deep(placing);
      case Placing.Into _ -> "Push " + one + " into " + other + deep(placing);
      case Placing.Hinged(Placing.On _, Side _, double _) -> "Lay " + one + " on " + other + at;
      case Placing.Hinged(Placing.Beside beside, Side _, double _) ->
          "Stand " + one + side(beside.side()) + other + ", close against it";
      case Placing.Hinged hinged -> words(hinged.shut(), one, other, at);
      case Placing.On _ -> "Glue " + one + " on " + other + at;
      case Placing.Beside beside ->
          "Stand " + one + side(beside.side()) + other + ", " + length(beside.gap()) + " away";
      case Placing.With _ -> throw new IllegalArgumentException("told with the others");
    };
  }

  private static String side(Side side) {
    return switch (side) {
      case RIGHT -> " to the right of ";
      case LEFT -> " to the left of ";
      case FRONT -> " in front of ";
      case BACK -> " behind ";
    };
  }

  /** All that lies together, and how. */
  private String withAll(List<Together.Stage> run) {
    List<Integer> all = new ArrayList<>(List.of(placing(run.getFirst()).onto()));
    run.forEach(s -> all.add(s.as().part()));
    String how =
        run.stream().allMatch(s -> s.as() instanceof Placing.On)
            ? "one on the other"
            : run.stream().allMatch(s -> isAt(s.as(), Side.RIGHT))
                ? "side by side"
                : run.stream().allMatch(s -> isAt(s.as(), Side.BACK))
                    ? "one behind the other"
                    : run.stream().anyMatch(s -> s.as() instanceof Placing.On)
                        ? "in layers"
                        : "in rows";
    return text(all) + " " + how;
  }

  private static boolean isAt(Placing placing, Side side) {
    return placing instanceof Placing.Beside b && b.side() == side;
  }

  /** A part, or all that goes in with it. */
  private String name(int part) {
    return together.nests().stream()
        .filter(n -> n.inner() == part && n.with().size() > 1)
        .findFirst()
        .map(n -> text(n.with()))
        .orElse("“" + parts.all().get(part).name() + "”");
  }

  private String text(List<Integer> some) {
    return PartNames.of(parts, some).text(unit).replaceAll("\"([^\"]*)\"", "“$1”");
  }

  private String deep(Placing placing) {
    return together.nests().stream()
        .filter(n -> parts.placings().get(n.placing()).shut().equals(placing))
        .findFirst()
        .map(n -> ", " + length(n.depth()) + " deep")
        .orElse("");
  }

  /** Where what stands on another has its middle, of several one after the other. */
  private String at(List<Together.Stage> run) {
    List<String> places =
        run.stream()
            .map(s -> placing(s).shut())
            .flatMap(p -> p instanceof Placing.On on ? Stream.of(off(on)) : Stream.empty())
            .toList();
    if (places.size() == 1) {
      return places.getFirst().isEmpty()
          ? ", middle on middle"
          : ", its middle " + places.getFirst() + " of the middle";
    }
    return places.isEmpty()
        ? ""
        : ", counted from its middle "
            + String.join(
                "; ", places.stream().map(p -> p.isEmpty() ? "in the middle" : p).toList());
  }

  private String off(Placing.On on) {
    List<String> off = new ArrayList<>();
    if (on.at().x() != 0) {
      off.add(length(Math.abs(on.at().x())) + (on.at().x() > 0 ? " to the right" : " to the left"));
    }
    if (on.at().y() != 0) {
      off.add(length(Math.abs(on.at().y())) + (on.at().y() > 0 ? " to the back" : " to the front"));
    }
    return off.isEmpty() ? "" : Sentence.listed(off);
  }

  private static String turned(Placing placing) {
    return placing.turn() == 0
        ? "."
        : ", turned by "
            + Decimals.plain(Math.abs(placing.turn()))
            + (placing.turn() > 0 ? "° to the left." : "° to the right.");
  }

  private String length(double mm) {
    return new Length(mm).read(unit);
  }
}
