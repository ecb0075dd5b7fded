package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;

import facetwright.geom.Vec2;
import facetwright.net.PanelRole;
import facetwright.net.blank.Blank;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.api.WindowShape;
import facetwright.script.args.BackingArgs;
import facetwright.script.args.LayerArgs;
import facetwright.script.args.PunchArgs;
import facetwright.script.sandbox.CallException;
import java.util.List;

/** What is said of the panels of a blank, each meant by a point inside it. */
final class BlankPanelWords {
  private static final String TRAY =
      """
      design("Tray");
      const tray = blank({ width: 150, height: 110 });
      for (const from of ["left", "right", "bottom", "top"]) tray.score({ from, at: 25, fold: 90 });
      for (const x of [25, 125]) {
        tray.cut({ from: "left", at: x, between: [0, 25] }).cut({ from: "left", at: x, between: [85, 110] });
      }
      for (const x of [12, 138]) {
        for (const [y, wall] of [[12, 20], [98, 90]]) {
          tray.role([x, y], "tab").join([x, 55], [x < 75 ? 26 : 124, wall], { tab: [x, y] });
        }
      }
      """;

  private BlankPanelWords() {}

  static List<Fn<Blank>> all() {
    return List.of(
        waste(), name(), role(), join(), lap(), standOn(), window(), hole(), layer(), backing());
  }

  private static Arg<Vec2> point(String name, String does) {
    return needed(name, PointKinds.point(), does);
  }

  private static Fn<Blank> waste() {
    Arg<Vec2> at = point("at", "a point in the panel");
    return Fn.<Blank>named("waste")
        .does("Cuts the panel at a point away.")
        .takes(at)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Cross");
            const cross = blank({ width: 90, height: 90 });
            for (const from of ["left", "right", "top", "bottom"]) cross.score({ from, at: 30, fold: 90 });
            for (const x of [10, 80]) for (const y of [10, 80]) cross.waste([x, y]);
            """)
        .runs((blank, call) -> blank.waste(call.get(at), call.site()));
  }

  private static Fn<Blank> name() {
    Arg<Vec2> at = point("at", "a point in the panel");
    Arg<String> name = needed("name", Kinds.text(), "what the maker calls it");
    return Fn.<Blank>named("name")
        .does("Names the panel at a point.")
        .takes(at, name)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Folder");
            blank({ width: 180, height: 120 })
              .score({ from: "left", at: 90, fold: 170, sense: "valley" })
              .name([40, 60], "inside left");
            """)
        .runs((blank, call) -> blank.name(call.get(at), call.get(name), call.site()));
  }

  private static Fn<Blank> role() {
    Arg<Vec2> at = point("at", "a point in the panel");
    Arg<PanelRole> role = needed("role", Kinds.word(PanelRole.class), "what it is for");
    return Fn.<Blank>named("role")
        .does("Says what the panel at a point is for.")
        .takes(at, role)
        .gives(Things.BLANK, "the blank")
        .example(TRAY)
        .runs((blank, call) -> blank.role(call.get(at), call.get(role), call.site()));
  }

  private static Fn<Blank> join() {
    Arg<Vec2> a = point("a", "a point in the one panel, near the side that meets");
    Arg<Vec2> b = point("b", "a point in the other, near its side");
    Arg<Vec2> tab =
        optional(
            "tab",
            PointKinds.point(),
            "a point in the tab that hangs on the first and is glued under the second");
    return Fn.<Blank>named("join")
        .does("Says that the sides of two panels nearest to the points meet when made.")
        .takes(a, b)
        .options(tab)
        .gives(Things.BLANK, "the blank")
        .example(TRAY)
        .runs((blank, call) -> blank.join(call.get(a), call.get(b), call.get(tab), call.site()));
  }

  private static Fn<Blank> lap() {
    Arg<Vec2> under = point("under", "a point in the panel that ends up inside");
    Arg<Vec2> over = point("over", "a point in the panel it lies under");
    return Fn.<Blank>named("lap")
        .does("Says that one panel lies flat under another when made.")
        .takes(under, over)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Sleeve for a map");
            blank({ width: 150, height: 200 })
              .score({ from: "left", at: 70, fold: 180 })
              .score({ from: "right", at: 10, fold: 180 })
              .lap([145, 100], [30, 100]);
            """)
        .runs((blank, call) -> blank.lap(call.get(under), call.get(over), call.site()));
  }

  private static Fn<Blank> standOn() {
    Arg<Vec2> at = point("at", "a point in the panel that lies on the table");
    return Fn.<Blank>named("standOn")
        .does("Says which panel the form stands on; usually its largest.")
        .takes(at)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Card stand");
            blank({ width: 80, height: 150 }).score({ from: "bottom", at: 40, fold: 80, sense: "valley" }).standOn([40, 20]);
            """)
        .runs((blank, call) -> blank.standOn(call.get(at), call.site()));
  }

  /** A place on the blank; a window may be given by its corners there. */
  private static final Kind<List<Vec2>> PLACE =
      Kinds.either(PointKinds.corners(), Kinds.map(PointKinds.point(), List::of));

  private static Fn<Blank> window() {
    WindowShape.Options shape = WindowShape.options();
    Arg<List<Vec2>> place =
        optional(
            "place",
            PLACE,
            "a point in the panel, from which at counts: the window's middle; or the window's"
                + " corners");
    return Fn.<Blank>named("window")
        .does("Cuts a window inside a panel; places count from the blank's lower left.")
        .takes(place)
        .options(shape.all())
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Frame");
            blank({ width: 120, height: 90 })
              .window([[20, 20], [60, 20], [60, 70], [20, 70]])
              .window([90, 45], { sides: 6, across: 30 });
            """)
        .runs(
            (blank, call) -> {
              List<Vec2> given = call.has(place) ? call.get(place) : List.of();
              if (given.size() > 1) {
                if (shape.isGiven(call)) {
                  throw new CallException(
                      "window: a list of corners is a shape already",
                      "Give a point in the panel with the options, or the corners alone.");
                }
                return blank.window(given, call.site());
              }
              if (given.isEmpty() && call.get(shape.at()).equals(Vec2.ZERO)) {
                throw new CallException(
                    "window needs to know where on the blank it is",
                    "Give a point in the panel: .window([40, 30], { width: 20, height: 10 }).");
              }
              Vec2 from = given.isEmpty() ? Vec2.ZERO : given.getFirst();
              return switch (shape.read(call, "window").moved(from)) {
                case WindowShape.Border(double border) ->
                    blank.window(from.plus(call.get(shape.at())), border, call.site());
                case WindowShape.Outline(var outline) -> blank.window(outline, call.site());
              };
            });
  }

  private static Fn<Blank> hole() {
    Arg<Vec2> place = optional("place", PointKinds.point(), "its middle, from the lower left");
    Arg<Vec2> at = optional("at", PointKinds.point(), "its middle, from the place or lower left");
    return Fn.<Blank>named("hole")
        .does("Punches a hole.")
        .takes(place)
        .options(PunchArgs.ACROSS, at)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Name tag");
            blank({ width: 80, height: 50 }).hole([40, 42], { across: 5 });
            """)
        .runs(
            (blank, call) -> {
              if (!call.has(place) && !call.has(at)) {
                throw new CallException(
                    "hole needs to know where on the blank it is",
                    "Give its middle: .hole([40, 42], { across: 5 }).");
              }
              return blank.hole(
                  Placing.sum(call, place, at), call.get(PunchArgs.ACROSS), call.site());
            });
  }

  private static Fn<Blank> layer() {
    Arg<Vec2> at = point("at", "a point in the panel");
    return Fn.<Blank>named("layer")
        .does("Plans a decorative paper on the panel at a point, a little smaller all round.")
        .takes(at)
        .options(LayerArgs.REVEAL, LayerArgs.PAPER)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Papered card");
            blank({ width: 148, height: 105 }).score({ from: "left", at: 74, fold: 170, sense: "valley" }).layer([110, 50], { reveal: 4 });
            """)
        .runs(
            (blank, call) ->
                blank.layer(
                    call.get(at),
                    call.get(LayerArgs.REVEAL),
                    call.get(LayerArgs.PAPER),
                    call.site()));
  }

  private static Fn<Blank> backing() {
    Arg<Vec2> at = point("at", "a point in the panel");
    return Fn.<Blank>named("backing")
        .does(
            "Puts paper or film behind the windows of the panel at a point. It keeps 1 mm clear of"
                + " scores, edges, holes and tabs.")
        .takes(at)
        .options(BackingArgs.PAPER, BackingArgs.OVERLAP, BackingArgs.SHAPE)
        .gives(Things.BLANK, "the blank")
        .example(
            """
            design("Frame with a pane");
            blank({ width: 120, height: 90 })
              .window([[20, 20], [100, 20], [100, 70], [20, 70]])
              .backing([10, 10], { paper: "clear film", overlap: 6 });
            """)
        .runs((blank, call) -> blank.backing(call.get(at), BackingArgs.read(call)));
  }
}
