package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.blank.Blank;
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

/** The words for drawing a net on a sheet by measurements from its edges. */
final class BlankWords {
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
      Arg<From> from, Arg<Double> at, Arg<List<Double>> between, Arg<List<Vec2>> points) {
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
          optional("points", Kinds.list(PointKinds.point(), 2, most), points));
    }

    List<Vec2> read(Call call, Blank blank, String function) {
      boolean measured = call.has(from) && call.has(at);
      if (measured == call.has(points) || call.has(from) != call.has(at)) {
        throw new CallException(
            function + " needs to know where the line runs", "Give from and at, or points.");
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
              session.add(blank, blank::build, Speaking.byPlace(session.unit()));
              return call.hold(Things.BLANK, blank);
            });
  }

  private static Fn<Blank> score() {
    LineOptions line = LineOptions.fresh("instead: the line's two ends", 2);
    FoldOptions folded = FoldOptions.fresh();
    Arg<Boolean> perforated =
        usual(
            "perforated", Kinds.flag(), false, "whether it is perforated, to tear or fold easily");
    return Fn.<Blank>named("score")
        .does("Draws a score line.")
        .options(
            line.from,
            line.at,
            line.between,
            line.points,
            folded.fold(),
            folded.sense(),
            perforated)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Sleeve for a map");
            blank({ width: 150, height: 200 })
              .score({ from: "left", at: 70, fold: 180 })
              .score({ from: "right", at: 10, fold: 180 });
            """)
        .runs(
            (blank, call) -> {
              List<Vec2> ends = line.read(call, blank, "score");
              Segment2 at = new Segment2(ends.get(0), ends.get(1));
              FoldAngle angle = folded.angle(call);
              Sense way = folded.way(call);
              return call.get(perforated)
                  ? blank.perforate(at, way, angle, call.site())
                  : blank.score(at, way, angle, call.site());
            });
  }

  private static Fn<Blank> cut() {
    LineOptions line = LineOptions.fresh("instead: the points of a path", 2_000);
    return Fn.<Blank>named("cut")
        .does(
            "Draws a cut line or a path of cuts; where it runs along a score, it parts the panels.")
        .options(line.from, line.at, line.between, line.points)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Strip with a slit");
            blank({ width: 120, height: 60 })
              .score({ from: "bottom", at: 30, fold: 90 })
              .cut({ from: "left", at: 60, between: [30, 60] });
            """)
        .runs((blank, call) -> blank.cut(line.read(call, blank, "cut"), call.site()));
  }
}
