package facetwright.papers.handout;

import facetwright.fold.pose.PartNames;
import facetwright.fold.pose.Together;
import facetwright.language.Telling;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How parts come together, in words: what is done alike is told once, with its number. */
final class TogetherText {
  private final Parts parts;
  private final Together together;
  private final Telling tell;

  TogetherText(Parts parts, Together together, Telling tell) {
    this.parts = parts;
    this.together = together;
    this.tell = tell;
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
      return Sentence.capital(
          tell.say("together.lay", "parts", text(together(run)), "how", withAll(run)));
    }
    boolean isOnOne = run.stream().map(s -> placing(s).onto()).distinct().count() == 1;
    if (run.size() == 1) {
      return words(run, name(placing.part()), name(placing.onto()), 1);
    }
    if (isOnOne) {
      String all = text(run.stream().map(s -> placing(s).part()).toList());
      return words(run, all, name(placing.onto()), 1);
    }
    return words(
        run.subList(0, 1),
        tell.quoted(parts.called(placing.part())),
        tell.quoted(parts.called(placing.onto())),
        run.size());
  }

  /**
   * @param again how often it is done alike
   */
  private String words(List<Together.Stage> run, String one, String other, int again) {
    Placing placing = placing(run.getFirst());
    List<String> places = places(run);
    Optional<Together.Nest> nest =
        together.nests().stream()
            .filter(n -> parts.placings().get(n.placing()).shut().equals(placing.shut()))
            .findFirst();
    return Sentence.capital(
        tell.say(
            "together.put",
            "how",
            how(placing),
            "one",
            one,
            "other",
            other,
            "side",
            placing.shut() instanceof Placing.Beside b ? word(b.side()) : "",
            "gap",
            placing instanceof Placing.Beside b ? tell.read(b.gap()) : "",
            "deep",
            String.valueOf(nest.isPresent()),
            "depth",
            nest.map(n -> tell.read(n.depth())).orElse(""),
            "middle",
            middle(run, places),
            "places",
            tell.apart(places),
            "turn",
            placing.turn() == 0 ? "none" : placing.turn() > 0 ? "left" : "right",
            "degrees",
            tell.figures(Decimals.plain(Math.abs(placing.turn()))),
            "again",
            again));
  }

  private static String how(Placing placing) {
    return switch (placing) {
      case Placing.Over _ -> "over";
      case Placing.Into _ -> "into";
      case Placing.Hinged(Placing.On _, Side _, double _) -> "lay";
      case Placing.Hinged(Placing.Beside _, Side _, double _) -> "close";
      case Placing.Hinged hinged -> how(hinged.shut());
      case Placing.On _ -> "glue";
      case Placing.Beside _ -> "away";
      case Placing.With _ -> throw new IllegalArgumentException("told with the others");
    };
  }

  /** The word by which phrases tell a side. */
  static String word(Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  private List<Integer> together(List<Together.Stage> run) {
    List<Integer> all = new ArrayList<>(List.of(placing(run.getFirst()).onto()));
    run.forEach(s -> all.add(s.as().part()));
    return all;
  }

  /** How all of them lie that lie together. */
  private static String withAll(List<Together.Stage> run) {
    return run.stream().allMatch(s -> s.as() instanceof Placing.On)
        ? "on"
        : run.stream().allMatch(s -> isAt(s.as(), Side.RIGHT))
            ? "beside"
            : run.stream().allMatch(s -> isAt(s.as(), Side.BACK))
                ? "behind"
                : run.stream().anyMatch(s -> s.as() instanceof Placing.On) ? "layers" : "rows";
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
        .orElse(tell.quoted(parts.all().get(part).name()));
  }

  private String text(List<Integer> some) {
    return tell.listed(
        PartNames.alike(parts, some).stream()
            .map(
                a ->
                    tell.say(
                        "together.parts",
                        "which",
                        a.times() == 1
                            ? "one"
                            : a.times() < a.count() ? "some" : a.times() == 2 ? "both" : "all",
                        "name",
                        a.name(),
                        "times",
                        a.times()))
            .toList());
  }

  /** Where what stands on another has its middle, of several one after the other. */
  private List<String> places(List<Together.Stage> run) {
    return run.stream()
        .map(s -> placing(s).shut())
        .flatMap(p -> p instanceof Placing.On on ? Stream.of(place(on)) : Stream.empty())
        .toList();
  }

  private String middle(List<Together.Stage> run, List<String> places) {
    return switch (places.size()) {
      case 0 -> "none";
      case 1 ->
          placing(run.getFirst()).shut() instanceof Placing.On on && where(on).equals("middle")
              ? "same"
              : "one";
      default -> "several";
    };
  }

  private static String where(Placing.On on) {
    boolean isAcross = on.at().x() != 0;
    boolean isAlong = on.at().y() != 0;
    return isAcross ? isAlong ? "both" : "across" : isAlong ? "along" : "middle";
  }

  private String place(Placing.On on) {
    return tell.say(
        "together.place",
        "where",
        where(on),
        "x",
        tell.read(Math.abs(on.at().x())),
        "right",
        String.valueOf(on.at().x() > 0),
        "y",
        tell.read(Math.abs(on.at().y())),
        "back",
        String.valueOf(on.at().y() > 0));
  }
}
