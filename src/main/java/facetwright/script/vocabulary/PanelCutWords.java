package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Vec2;
import facetwright.net.panel.CardPanel;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.api.WindowShape;
import facetwright.script.args.BackingArgs;
import facetwright.script.args.LayerArgs;
import facetwright.script.args.NotchArgs;
import facetwright.script.args.PunchArgs;
import java.util.List;

/** What is cut out of a panel or laid on it. */
final class PanelCutWords {
  private PanelCutWords() {}

  static List<Fn<CardPanel>> all() {
    return List.of(window(), hole(), notch(), chamfer(), rounded(), layer(), backing(), tick());
  }

  private static Fn<CardPanel> window() {
    WindowShape.Options options = WindowShape.options();
    Arg<Vec2> place = Placing.before();
    return Fn.<CardPanel>named("window")
        .does(
            "Cuts a window into the panel; places count from its middle, the hinge at the bottom.")
        .takes(place)
        .options(options.all())
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Shop front");
            const front = panel("front", { width: 80, height: 60 });
            front.window({ width: 14, height: 20, at: [-22, 5] }).window({ sides: 8, across: 18, at: [20, 8] });
            """)
        .runs(
            (panel, call) ->
                switch (options.read(call, "window").moved(Placing.or(call, place))) {
                  case WindowShape.Border(double border) -> panel.window(border, call.site());
                  case WindowShape.Outline(var outline) -> panel.window(outline, call.site());
                });
  }

  private static Fn<CardPanel> hole() {
    Arg<Vec2> place = Placing.before();
    Arg<Vec2> at =
        usual("at", PointKinds.point(), Vec2.ZERO, "its place, counted from the panel's middle");
    return Fn.<CardPanel>named("hole")
        .does("Punches a hole into the panel.")
        .takes(place)
        .options(PunchArgs.ACROSS, at)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Tag");
            panel("tag", { width: 40, height: 70 }).hole({ across: 4, at: [0, 26] });
            """)
        .runs(
            (panel, call) ->
                panel.hole(call.get(PunchArgs.ACROSS), Placing.sum(call, place, at), call.site()));
  }

  private static Fn<CardPanel> notch() {
    Arg<String> edge = needed("edge", Kinds.text(), "the free edge it is cut into");
    NotchArgs as = NotchArgs.inMiddle();
    return Fn.<CardPanel>named("notch")
        .does("Cuts a notch into a free edge.")
        .takes(edge)
        .options(as.all())
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Thumb cut");
            panel("side", { width: 60, height: 60 }).notch("top", { at: 30, width: 20, depth: 10, shape: "round" });
            """)
        .runs((panel, call) -> panel.notch(call.get(edge), as.read(call), call.site()));
  }

  private static Fn<CardPanel> chamfer() {
    Arg<Integer> corner =
        needed(
            "corner",
            PointKinds.cornerNumber(),
            "which corner, from 1 at the bottom left, counter-clockwise");
    Arg<Double> by = needed("by", Kinds.length(), "how far along both edges");
    return Fn.<CardPanel>named("chamfer")
        .does("Cuts a free corner back.")
        .takes(corner, by)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Luggage tag");
            panel("tag", { width: 45, height: 80 }).chamfer(3, 12).chamfer(4, 12).hole({ across: 4, at: [0, 30] });
            """)
        .runs((panel, call) -> panel.chamfer(call.get(corner), call.get(by), call.site()));
  }

  private static Fn<CardPanel> rounded() {
    Arg<Double> radius = needed("radius", Kinds.length(), "of the arc, which meets both edges");
    Arg<List<Integer>> corners =
        optional(
            "corners",
            PointKinds.cornerNumbers(),
            "which, from 1 at the bottom left, counter-clockwise; all free ones where left out");
    return Fn.<CardPanel>named("rounded")
        .does("Rounds free corners by arcs, which are cut as arcs.")
        .takes(radius)
        .options(corners)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Folder with a round flap");
            const back = panel("back", { width: 90, height: 120 }).rounded(8, { corners: [1, 2] });
            back.attach("top", "flap", { depth: 40, fold: 180, sense: "valley" }).rounded(15);
            """)
        .runs(
            (panel, call) -> {
              return call.has(corners)
                  ? panel.rounded(call.get(corners), call.get(radius), call.site())
                  : panel.rounded(call.get(radius), call.site());
            });
  }

  private static Fn<CardPanel> layer() {
    return Fn.<CardPanel>named("layer")
        .does("Plans a decorative paper on the panel, a little smaller all round.")
        .options(LayerArgs.REVEAL, LayerArgs.PAPER)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Papered card");
            panel("front", { width: 100, height: 70 }).layer({ reveal: 3, paper: "gulls" });
            """)
        .runs(
            (panel, call) ->
                panel.layer(call.get(LayerArgs.REVEAL), call.get(LayerArgs.PAPER), call.site()));
  }

  private static Fn<CardPanel> backing() {
    return Fn.<CardPanel>named("backing")
        .does(
            "Puts paper or film behind the panel's windows, those cut later among them. It keeps"
                + " 1 mm clear of scores, edges, holes and tabs.")
        .options(BackingArgs.PAPER, BackingArgs.OVERLAP, BackingArgs.SHAPE)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Card with a pane");
            panel("front", { width: 100, height: 70 })
              .window({ sides: 24, across: 40 })
              .backing({ paper: "clear film", shape: "rectangle" });
            """)
        .runs((panel, call) -> panel.backing(BackingArgs.read(call)));
  }

  private static Fn<CardPanel> tick() {
    Arg<Vec2> from =
        needed("from", PointKinds.point(), "where it starts, from the panel's lower left corner");
    Arg<Vec2> to = needed("to", PointKinds.point(), "where it ends");
    return Fn.<CardPanel>named("tick")
        .does("Draws a short light mark, such as where something is to be glued.")
        .takes(from, to)
        .gives(Things.PANEL, "the panel")
        .example(
            """
            design("Marked card");
            panel("front", { width: 100, height: 70 }).tick([50, 0], [50, 4]);
            """)
        .runs((panel, call) -> panel.tick(call.get(from), call.get(to), call.site()));
  }
}
