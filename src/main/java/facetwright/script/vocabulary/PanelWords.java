package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.outline.Outline;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.FlapShape;
import facetwright.net.panel.Hinge;
import facetwright.net.panel.PanelBuild;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Fn;
import facetwright.script.api.FoldOptions;
import facetwright.script.api.Kinds;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Session;
import facetwright.script.api.Things;
import facetwright.script.args.TabArgs;
import facetwright.script.sandbox.CallException;
import java.util.ArrayList;
import java.util.List;

/** The words for building panel by panel: starting and attaching. */
final class PanelWords {
  static final Arg<String> EDGE =
      needed(
          "edge",
          Kinds.text(List.of("bottom", "right", "top", "left")),
          "\"bottom\", \"right\", \"top\" or \"left\" of a four-sided panel, else a number as text"
              + " from \"1\", counter-clockwise; an attached panel's hinge is its bottom");

  private PanelWords() {}

  static List<Fn<Session>> top() {
    return List.of(panel());
  }

  static List<Fn<CardPanel>> onPanel() {
    return List.of(attach(), tab());
  }

  private static Fn<Session> panel() {
    Arg<String> name = needed("name", Kinds.text(), "what the maker calls it");
    Arg<Double> width = optional("width", Kinds.length(), "width of a rectangle");
    Arg<Double> height = optional("height", Kinds.length(), "height of a rectangle");
    Arg<Integer> sides =
        optional(
            "sides", Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES), "for equal sides: how many");
    Arg<Double> side = optional("side", Kinds.length(), "for equal sides: their length");
    Arg<List<Vec2>> corners =
        optional("corners", PointKinds.corners(), "a free outline, its corners [x, y]");
    Arg<Outline> outline =
        optional("outline", Kinds.thing(Things.OUTLINE), "an outline; its arcs are no edges");
    return Fn.<Session>named("panel")
        .does(
            "Starts a piece with one panel. The form stands on the panel called base, floor, bottom"
                + " or foot, else on the first of the design; one called front faces the reader.")
        .takes(name)
        .options(width, height, sides, side, corners, outline)
        .gives(Things.PANEL, "a panel")
        .example(
            """
            design("Folder");
            const back = panel("back", { width: 90, height: 120 });
            back.attach("right", "front", { depth: 90, fold: 180, sense: "valley" });
            """)
        .runs(
            (session, call) -> {
              PanelBuild build = session.panels();
              String called = call.get(name);
              boolean rectangle = call.has(width) && call.has(height);
              boolean regular = call.has(sides) && call.has(side);
              int shapes =
                  (rectangle ? 1 : 0)
                      + (regular ? 1 : 0)
                      + (call.has(corners) ? 1 : 0)
                      + (call.has(outline) ? 1 : 0);
              if (shapes != 1) {
                throw new CallException(
                    "panel needs one shape",
                    "Give width and height, or sides and side, or corners, or an outline.");
              }
              CardPanel made =
                  rectangle
                      ? build.rectangle(called, call.get(width), call.get(height), call.site())
                      : regular
                          ? build.regular(called, call.get(sides), call.get(side), call.site())
                          : call.has(outline)
                              ? build.outline(called, call.get(outline).polygon(), call.site())
                              : build.polygon(called, call.get(corners), call.site());
              return call.hold(Things.PANEL, made);
            });
  }

  /** The options that say where on an edge something hangs and how it is folded. */
  private record HingeOptions(
      Arg<Double> width, Arg<Double> offset, FoldOptions folded, Arg<Boolean> perforated) {
    static HingeOptions fresh() {
      return new HingeOptions(
          optional(
              "width", Kinds.length(), "how much of the edge it takes; all of it where left out"),
          optional(
              "offset",
              Kinds.length(0, Ask.LONGEST),
              "where on the edge it begins, from its left end; centred where left out"),
          FoldOptions.fresh(),
          usual(
              "perforated",
              Kinds.flag(),
              false,
              "whether the score is perforated, to tear or fold easily"));
    }

    /** The options of a function that hinges a panel: its own, these, and its own again. */
    Arg<?>[] among(List<Arg<?>> before, Arg<?>... after) {
      List<Arg<?>> all = new ArrayList<>(before);
      all.addAll(List.of(folded.fold(), folded.sense(), width, offset, perforated));
      all.addAll(List.of(after));
      return all.toArray(Arg<?>[]::new);
    }

    Hinge read(Call call) {
      FoldAngle angle = folded.angle(call);
      Sense way = folded.way(call);
      Hinge hinge;
      if (!call.has(width)) {
        if (call.has(offset)) {
          throw new CallException(
              "offset says where a narrower panel begins", "Give width as well.");
        }
        hinge = Hinge.whole(way, angle);
      } else {
        hinge =
            call.has(offset)
                ? Hinge.at(call.get(offset), call.get(width), way, angle)
                : Hinge.centred(call.get(width), way, angle);
      }
      return call.get(perforated) ? hinge.asPerforation() : hinge;
    }
  }

  private static Fn<CardPanel> attach() {
    Arg<String> name = needed("name", Kinds.text(), "what the maker calls the new panel");
    Arg<Double> depth = optional("depth", Kinds.length(), "how far it reaches from the edge");
    Arg<Double> bevel =
        usual("bevel", Kinds.degrees(0, 80), 0.0, "how far its ends are cut back from square");
    Arg<Double> tip =
        optional(
            "tip",
            Kinds.number(-2, 3),
            "makes it a triangle: where its tip stands, 0 left end, 0.5 middle, 1 right end");
    Arg<Integer> sides =
        optional(
            "sides",
            Kinds.count(Ask.FEWEST_SIDES, Ask.MOST_SIDES),
            "makes it a panel with so many equal sides");
    Arg<List<Vec2>> corners =
        optional(
            "corners",
            PointKinds.corners(),
            "its own shape from the edge's left end, x along it and y outward, the two ends of the"
                + " hinge first");
    Arg<PanelRole> role =
        usual("role", Kinds.word(PanelRole.class), PanelRole.FACET, "what it is for");
    HingeOptions hinge = HingeOptions.fresh();
    return Fn.<CardPanel>named("attach")
        .does("Attaches a new panel to an edge by a score.")
        .takes(EDGE, name)
        .options(hinge.among(List.of(depth, bevel, tip, sides, corners), role))
        .gives(Things.PANEL, "the new panel")
        .example(
            """
            design("Open crate");
            const floor = panel("floor", { width: 70, height: 50 });
            const walls = ["bottom", "right", "top", "left"].map((edge) =>
              floor.attach(edge, edge + " wall", { depth: 30, fold: 90 }));
            for (let i = 0; i < 4; i++) walls[i].join("left", walls[(i + 1) % 4], "right", { depth: 8 });
            """)
        .runs(
            (panel, call) -> {
              FlapShape shape;
              if (call.has(corners)) {
                shape = new FlapShape.Own(call.get(corners));
              } else if (call.has(sides)) {
                shape = new FlapShape.Regular(call.get(sides));
              } else if (!call.has(depth)) {
                throw new CallException(
                    "attach needs a shape", "Give depth, or sides, or corners.");
              } else if (call.has(tip)) {
                shape = new FlapShape.Triangle(call.get(depth), call.get(tip));
              } else {
                shape = new FlapShape.Tapered(call.get(depth), call.get(bevel));
              }
              CardPanel made =
                  panel.attach(
                      call.get(name), call.get(EDGE), shape, hinge.read(call), call.site());
              return call.hold(Things.PANEL, made.become(call.get(role)));
            });
  }

  private static Fn<CardPanel> tab() {
    HingeOptions hinge = HingeOptions.fresh();
    return Fn.<CardPanel>named("tab")
        .does("Attaches a tab to an edge, to be glued under something else.")
        .takes(EDGE)
        .options(hinge.among(List.of(TabArgs.DEPTH, TabArgs.BEVEL)))
        .gives(Things.PANEL, "the tab, a panel")
        .example(
            """
            design("Sign to stand");
            const sign = panel("sign", { width: 80, height: 50 });
            sign.tab("bottom", { depth: 12, fold: 90 });
            """)
        .runs(
            (panel, call) -> {
              String called = "tab of " + panel.name();
              return call.hold(
                  Things.PANEL,
                  panel.tab(
                      called, call.get(EDGE), TabArgs.read(call), hinge.read(call), call.site()));
            });
  }
}
