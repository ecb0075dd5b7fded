package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.fold.pose.OnTable;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartCard;
import facetwright.script.api.PartDraft;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.words.Site;
import java.util.List;
import java.util.function.UnaryOperator;

/** The words for parts: telling them apart, and putting them together. */
final class PartWords {
  private PartWords() {}

  static List<Fn<PartDraft>> all() {
    return List.of(over(), into(), on(), beside(), mirrored());
  }

  /** Told of a wrap, a blank, and a panel with all that hangs together with it. */
  static <T> Fn<T> part() {
    Arg<String> name = needed("name", Kinds.text(), "what it is called: \"sleeve\"");
    PartCard.Options own = PartCard.Options.fresh();
    return Fn.<T>named("part")
        .does(
            "Calls it a part of the design, to be put together with others. Of a panel, all that"
                + " is attached or joined to it is the part.")
        .takes(name)
        .options(own.after())
        .gives(Things.PART, "the part")
        .example(
            """
            design("Sleeve and tray");
            const floor = panel("floor", { width: 90, height: 60 });
            for (const edge of ["bottom", "right", "top", "left"]) {
              floor.attach(edge, edge + " wall", { depth: 20, fold: 90 });
            }
            const tray = floor.part("tray");
            const sleeve = wrap({ widths: [61.5, 21.5, 61.5, 21.5], rows: [90], seam: 10 }).part("sleeve");
            sleeve.over(tray);
            """)
        .runs(
            (thing, call) ->
                call.hold(
                    Things.PART,
                    call.session().part(thing, call.get(name), own.read(call), call.site())));
  }

  private static Arg<PartDraft> other(String does) {
    return needed("part", Kinds.thing(Things.PART), does);
  }

  private static Arg<Double> turn() {
    return usual(
        "turn",
        Kinds.degrees(-360, 360),
        0.0,
        "turned from how it goes by itself, counter-clockwise from above");
  }

  private static Arg<Double> by() {
    return optional("by", Kinds.length(), "how deep; as deep as it goes where left out");
  }

  private static double deep(Double by) {
    return by == null ? Placing.ALL_THE_WAY : by;
  }

  private static Fn<PartDraft> over() {
    return nesting(
        "over",
        "the part that it goes over",
        "Puts it over another part, its opening first, as a lid goes over its box or a sleeve"
            + " round its tray; over several that stand side by side, where one was put beside the"
            + " other before. Whether it fits is told, with the card's thickness.",
        """
        design("Box with its lid");
        const box = prism({ sides: 6, side: 30, height: 40 }).open("top").unfold({ part: "box" });
        const lid = prism({ sides: 6, side: 31, height: 15 }).open("top").unfold({ part: "lid" });
        lid.over(box);
        """,
        true,
        Placing.Over::new);
  }

  private static Fn<PartDraft> into() {
    return nesting(
        "into",
        "the part that it goes into",
        "Puts it into an opening of another part, as a drawer goes into its sleeve or an insert"
            + " into its box. Whether it fits is told, with the card's thickness.",
        """
        design("Box with an insert");
        const box = prism({ sides: 4, side: 60, height: 50 }).open("top").unfold({ part: "box" });
        const insert = prism({ sides: 4, side: 59, height: 20 }).open("top").unfold({ part: "insert" });
        insert.into(box);
        """,
        false,
        Placing.Into::new);
  }

  /** How one part goes over or into another. */
  @FunctionalInterface
  private interface Nesting {
    Placing of(int part, int other, double deep, double degrees, Site site);
  }

  private static Fn<PartDraft> nesting(
      String name, String what, String does, String example, boolean hangs, Nesting nesting) {
    Arg<PartDraft> other = other(what);
    Arg<Double> by = by();
    Arg<Double> turn = turn();
    HoldArgs.Hinge hinge = HoldArgs.Hinge.fresh();
    return Fn.<PartDraft>named(name)
        .does(does)
        .takes(other)
        .options(HoldArgs.Hinge.beside(hangs ? hinge : null, by, turn))
        .gives(Things.PART, "the part")
        .example(example)
        .runs(
            (part, call) -> {
              PartDraft onto = call.get(other);
              double deep = deep(call.get(by));
              double degrees = call.get(turn);
              UnaryOperator<Placing> hung = hangs ? hinge.read(call) : UnaryOperator.identity();
              call.session()
                  .place(
                      part,
                      onto,
                      name,
                      (p, o, _) -> hung.apply(nesting.of(p, o, deep, degrees, call.site())),
                      1,
                      call.site());
              return part;
            });
  }

  private static Fn<PartDraft> on() {
    Arg<PartDraft> other = other("the part that it stands on");
    Arg<List<Vec2>> at =
        optional(
            "at",
            Kinds.either(
                Kinds.list(PointKinds.point(), 2, PartCard.MOST),
                Kinds.map(PointKinds.point(), List::of)),
            "where its middle goes, [right, back] from the middle of what it stands on, there where"
                + " left out; of what is made several times a list of places");
    Arg<Double> turn = turn();
    HoldArgs.Hinge hinge = HoldArgs.Hinge.fresh();
    return Fn.<PartDraft>named("on")
        .does("Stands it on another part, middle on middle, as deep down as it goes.")
        .takes(other)
        .options(HoldArgs.Hinge.beside(hinge, at, turn))
        .gives(Things.PART, "the part")
        .example(
            """
            design("Step and post");
            const step = prism({ sides: 4, side: 60, height: 15 }).unfold({ part: "step" });
            const post = prism({ sides: 4, side: 25, height: 70 }).unfold({ part: "post" });
            post.on(step, { turn: 45 });
            """)
        .runs(
            (part, call) -> {
              PartDraft onto = call.get(other);
              List<Vec2> places = call.has(at) ? call.get(at) : List.of(Vec2.ZERO);
              double degrees = call.get(turn);
              UnaryOperator<Placing> hung = hinge.read(call);
              call.session()
                  .place(
                      part,
                      onto,
                      "on",
                      (p, o, i) ->
                          hung.apply(
                              new Placing.On(
                                  p,
                                  o,
                                  places.get(Math.min(i, places.size() - 1)),
                                  degrees,
                                  call.site())),
                      places.size(),
                      call.site());
              return part;
            });
  }

  private static Fn<PartDraft> beside() {
    Arg<PartDraft> other = other("the part that it stands by");
    Arg<Side> side =
        usual("side", Kinds.word(Side.class), Side.RIGHT, "the side of the other it stands on");
    Arg<Double> by = usual("by", Kinds.length(0, Ask.LONGEST), OnTable.BESIDE, "room between");
    Arg<Double> turn = turn();
    return Fn.<PartDraft>named("beside")
        .does("Stands it on the table by another part.")
        .takes(other)
        .options(side, by, turn)
        .gives(Things.PART, "the part")
        .example(
            """
            design("House and bench");
            const house = prism({ sides: 4, side: 50, height: 60 }).unfold({ part: "house" });
            const bench = prism({ sides: 4, side: 15, height: 12 }).unfold({ part: "bench" });
            bench.beside(house, { side: "front", by: 8 });
            """)
        .runs(
            (part, call) -> {
              PartDraft onto = call.get(other);
              Side where = call.get(side);
              double gap = call.get(by);
              double degrees = call.get(turn);
              call.session()
                  .place(
                      part,
                      onto,
                      "beside",
                      (p, o, _) -> new Placing.Beside(p, o, where, gap, degrees, call.site()),
                      1,
                      call.site());
              return part;
            });
  }

  private static Fn<PartDraft> mirrored() {
    Arg<String> name =
        optional(
            "name",
            Kinds.text(),
            "what the mirror image is called: \"right\"; \"mirrored\" before the part's name where"
                + " left out");
    Arg<Integer> count =
        optional(
            "count",
            Kinds.count(1, PartCard.MOST),
            "how many of it are made; as many as of the part where left out");
    return Fn.<PartDraft>named("mirrored")
        .does(
            "Makes its mirror image, left to right, as a part of its own: of a left one a right"
                + " one. It is cut from the same side of the card, so that mountains stay"
                + " mountains; windows, tabs, layers and what goes in come along, and words stay"
                + " readable.")
        .takes(name)
        .options(count)
        .gives(Things.PART, "the mirror image, a part of its own")
        .example(
            """
            design("Pair of brackets");
            const back = panel("back", { width: 40, height: 60 });
            back.attach("left", "shelf", { depth: 25, fold: 90 });
            const left = back.part("left");
            left.mirrored("right").beside(left);
            """)
        .runs(
            (part, call) -> {
              PartCard card = part.card();
              String called = part.name().isEmpty() ? "mirrored" : "mirrored " + part.name();
              return call.hold(
                  Things.PART,
                  call.session()
                      .mirror(
                          part,
                          call.has(name) ? call.get(name) : called,
                          call.has(count) ? card.counted(call.get(count)) : card,
                          call.site()));
            });
  }
}
