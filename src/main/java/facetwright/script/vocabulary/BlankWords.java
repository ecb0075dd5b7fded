package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.Sense;
import facetwright.net.blank.Blank;
import facetwright.net.blank.LineFold;
import facetwright.net.blank.LineKind;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.FoldOptions;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Session;
import facetwright.script.api.Speaking;
import facetwright.script.api.Things;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.List;
import java.util.stream.IntStream;

/** The words for drawing a net on a sheet by measurements from its edges. */
final class BlankWords {
  /** So many folds may be listed for the stretches of a line. */
  private static final int MOST_TURNS = 64;

  private BlankWords() {}

  static List<Fn<Session>> top() {
    return List.of(blank());
  }

  static List<Fn<Blank>> onBlank() {
    return List.of(score(), cut());
  }

  /** The edge of the blank a measure counts from. */
  enum From {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM;

    Segment2 line(Blank blank, double at, Site site) {
      return switch (this) {
        case LEFT -> blank.fromLeft(at, site);
        case RIGHT -> blank.fromRight(at, site);
        case TOP -> blank.fromTop(at, site);
        case BOTTOM -> blank.fromBottom(at, site);
      };
    }

    Segment2 line(Blank blank, double at, double start, double stop, Site site) {
      return switch (this) {
        case LEFT -> blank.fromLeft(at, start, stop, site);
        case RIGHT -> blank.fromRight(at, start, stop, site);
        case TOP -> blank.fromTop(at, start, stop, site);
        case BOTTOM -> blank.fromBottom(at, start, stop, site);
      };
    }
  }

  /** The ways in which a line's place is given. */
  private record LineOptions(
      Arg<From> from,
      Arg<Double> at,
      Arg<List<Double>> between,
      Arg<List<Vec2>> points,
      Arg<Vec2> within) {
    static LineOptions fresh(String points, int most) {
      Kind<Double> place = Kinds.length(0, Ask.LONGEST);
      return new LineOptions(
          optional("from", Kinds.word(From.class), "the edge it is measured from and runs along"),
          optional("at", place, "how far from that edge"),
          optional(
              "between",
              Kinds.list(place, 2, 2),
              "where it starts and stops, from the blank's bottom or left; right across where left"
                  + " out"),
          optional("points", Kinds.list(PointKinds.point(), 2, most), points),
          optional(
              "within",
              PointKinds.point(),
              "a point in a panel between the lines drawn so far: only what lies in that panel is"
                  + " drawn"));
    }

    /** The line, or what of it lies in the panel asked for; of a path every part. */
    List<List<Vec2>> drawn(Call call, Blank blank, String function) {
      List<Vec2> path = read(call, blank, function);
      if (!call.has(within)) {
        return List.of(path);
      }
      if (path.size() > 2) {
        throw new CallException(
            function + ": within takes one straight line, not a path",
            "Draw the path's parts one by one, or leave within out.");
      }
      return blank
          .inPanel(new Segment2(path.getFirst(), path.getLast()), call.get(within), call.site())
          .stream()
          .map(part -> List.of(part.from(), part.to()))
          .toList();
    }

    List<Vec2> read(Call call, Blank blank, String function) {
      boolean measured = call.has(from) && call.has(at);
      if (measured == call.has(points) || call.has(from) != call.has(at)) {
        throw new CallException(
            function + " needs to know where the line runs",
            "Give from and at, such as { from: \"left\", at: 20 }, or points, such as { points:"
                + " [[0, 0], [30, 40]] }.");
      }
      if (call.has(points)) {
        return call.get(points);
      }
      From edge = call.get(from);
      Segment2 line;
      if (call.has(between)) {
        List<Double> stops = call.get(between);
        line = edge.line(blank, call.get(at), stops.get(0), stops.get(1), call.site());
      } else {
        line = edge.line(blank, call.get(at), call.site());
      }
      return List.of(line.from(), line.to());
    }
  }

  private static Fn<Session> blank() {
    Arg<Double> width = needed("width", Kinds.length(), "its width");
    Arg<Double> height = needed("height", Kinds.length(), "its height");
    return Fn.<Session>named("blank")
        .does(
            "A rectangle of card to draw on: score and cut lines by their measures from its edges."
                + " The panels between them are found when the script has ended; a panel is meant"
                + " by any point [x, y] inside it, counted from the lower left corner.")
        .options(width, height)
        .gives(Things.BLANK, "a blank")
        .example(
            """
            design("Folder");
            blank({ width: 180, height: 120 }).score({ from: "left", at: 90, fold: 170, sense: "valley" });
            """)
        .runs(
            (session, call) -> {
              Blank blank = Blank.of(call.get(width), call.get(height), call.site());
              session.add(
                  blank,
                  session.twice().with(blank.twice(), blank::build),
                  Speaking.byPlace(session.unit()));
              return call.hold(Things.BLANK, blank);
            });
  }

  private static Fn<Blank> score() {
    LineOptions line = LineOptions.fresh("instead: the line's two ends", 2);
    Arg<List<Double>> fold =
        optional(
            "fold",
            Kinds.list(FoldOptions.far(), 1, MOST_TURNS),
            "how far it is folded; where left out it is found by closing the form; a list is taken"
                + " in turn by its stretches from crossing to crossing");
    Arg<List<Sense>> sense =
        optional(
            "sense",
            Kinds.list(Kinds.word(Sense.class), 1, MOST_TURNS),
            "which way the crest points, seen on the outside; where left out a mountain, or what"
                + " closes the form; a list is taken in turn by its stretches, counted from the"
                + " bottom, the left or the first point");
    Arg<Boolean> perforated =
        usual(
            "perforated", Kinds.flag(), false, "whether it is perforated, to tear or fold easily");
    return Fn.<Blank>named("score")
        .does("Draws a score line.")
        .options(
            line.from, line.at, line.between, line.points, line.within, fold, sense, perforated)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Folded map");
            const map = blank({ width: 160, height: 120 });
            for (const at of [40, 80, 120]) {
              map.score({ from: "left", at, fold: 180, sense: at === 80 ? "valley" : "mountain" });
            }
            map.score({ from: "bottom", at: 60, fold: 180, sense: ["mountain", "valley"] });
            """)
        .runs(
            (blank, call) -> {
              List<LineFold> folds = folds(call, fold, sense);
              LineKind kind = call.get(perforated) ? LineKind.PERFORATED : LineKind.SCORE;
              for (List<Vec2> ends : line.drawn(call, blank, "score")) {
                blank.score(new Segment2(ends.get(0), ends.get(1)), kind, folds, call.site());
              }
              return blank;
            });
  }

  /** Both lists in turn, until both begin anew at once. */
  private static List<LineFold> folds(Call call, Arg<List<Double>> fold, Arg<List<Sense>> sense) {
    List<Double> far = call.has(fold) ? call.get(fold) : List.of();
    List<Sense> ways = call.has(sense) ? call.get(sense) : List.of();
    int a = Math.max(1, far.size());
    int b = Math.max(1, ways.size());
    int turns = a;
    while (turns % b != 0) {
      turns += a;
    }
    return IntStream.range(0, turns)
        .mapToObj(
            i ->
                FoldOptions.said(
                    far.isEmpty() ? null : far.get(i % a), ways.isEmpty() ? null : ways.get(i % b)))
        .map(said -> new LineFold(said.sense(), said.angle()))
        .toList();
  }

  private static Fn<Blank> cut() {
    LineOptions line = LineOptions.fresh("instead: the points of a path", 2_000);
    return Fn.<Blank>named("cut")
        .does(
            "Draws a cut line or a path of cuts; where it runs along a score, it parts the panels.")
        .options(line.from, line.at, line.between, line.points, line.within)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Strip with a slit");
            blank({ width: 120, height: 60 })
              .score({ from: "bottom", at: 30, fold: 90 })
              .cut({ from: "left", at: 60, between: [30, 60] });
            """)
        .runs(
            (blank, call) -> {
              line.drawn(call, blank, "cut").forEach(path -> blank.cut(path, call.site()));
              return blank;
            });
  }
}
