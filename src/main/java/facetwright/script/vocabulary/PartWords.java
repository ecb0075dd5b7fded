package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.fold.pose.OnTable;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.Parts.Lie;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartCard;
import facetwright.script.api.PartDraft;
import facetwright.script.api.PointKinds;
import facetwright.script.api.Things;
import facetwright.script.args.LyingArgs;
import facetwright.words.Decimals;
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
        "the part that it goes over, or in brackets several: [left, right]",
        "Puts it over another part, its opening first, as a lid goes over its box or a sleeve round"
            + " its tray. Over several at once, give them in brackets: they lie as they fit, or as"
            + " you put one beside the other before. Whether it fits is told, with the card's"
            + " thickness.",
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
            + " into its box. What is made several times, and what goes into the same opening after"
            + " it, lies side by side there, or on each other where there is no room beside."
            + " Whether it fits is told, with the card's thickness.",
        """
        design("Two drawers in a case");
        const drawer = box({ width: 60, depth: 40, height: 20 }).open("top").unfold({ part: "drawer", count: 2 });
        const round = rectangle({ width: 121, height: 20 }).offset("card");
        const shell = prism({ outline: round, height: 40 }).open(["base", "top"]).unfold({ part: "case" });
        drawer.into(shell);
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
      String name, String what, String does, String example, boolean isOver, Nesting nesting) {
    Arg<LyingArgs.Hosts> other = needed("part", LyingArgs.hosts(isOver), what);
    Arg<Double> by = by();
    Arg<Double> turn = turn();
    Arg<Lie> lie = LyingArgs.lie();
    HoldArgs.Hinge hinge = HoldArgs.Hinge.fresh();
    return Fn.<PartDraft>named(name)
        .does(does)
        .takes(other)
        .options(HoldArgs.Hinge.beside(isOver ? hinge : null, by, turn, lie))
        .gives(Things.PART, "the part")
        .example(example)
        .runs(
            (part, call) -> {
              LyingArgs.Hosts hosts = call.get(other);
              double deep = deep(call.get(by));
              double degrees = call.get(turn);
              UnaryOperator<Placing> hung = isOver ? hinge.read(call) : UnaryOperator.identity();
              boolean shares =
                  isOver ? hosts.areAll() : degrees == 0 && (!call.has(by) || call.has(lie));
              PartDraft.Reader reader =
                  (p, o, _) -> hung.apply(nesting.of(p, o, deep, degrees, call.site()));
              PartDraft.Company with =
                  new PartDraft.Company(hosts.others(), LyingArgs.read(call, lie), shares);
              call.session()
                  .place(
                      part,
                      new PartDraft.Goes(hosts.first(), name, reader, 1, with, call.site(), 0));
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
              PartDraft.Reader reader =
                  (p, o, i) -> {
                    Vec2 place = places.get(Math.min(i, places.size() - 1));
                    return hung.apply(new Placing.On(p, o, place, degrees, call.site()));
                  };
              call.session()
                  .place(
                      part, PartDraft.Goes.alone(onto, "on", reader, places.size(), call.site()));
              return part;
            });
  }

  private static Fn<PartDraft> beside() {
    Arg<PartDraft> other = other("the part that it stands by");
    Arg<Side> side =
        usual("side", Kinds.word(Side.class), Side.RIGHT, "the side of the other it stands on");
    Arg<Double> by =
        optional(
            "by",
            Kinds.length(0, Ask.LONGEST),
            "room between: "
                + Decimals.plain(OnTable.BESIDE)
                + " mm where left out, hinged as much as the card is thick");
    Arg<Double> turn = turn();
    HoldArgs.Hinge hinge = HoldArgs.Hinge.fresh();
    return Fn.<PartDraft>named("beside")
        .does(
            "Stands it on the table by another part. Hinged, a strip of card joins the two along"
                + " an upright edge at the back or the front, where they meet; of what stands in"
                + " front or behind, at the left or right.")
        .takes(other)
        .options(HoldArgs.Hinge.beside(hinge, side, by, turn))
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
              double degrees = call.get(turn);
              UnaryOperator<Placing> hung = hinge.readAcross(call, where);
              PartDraft.Reader reader =
                  (p, o, _) -> {
                    double usual = hinge.isSaid(call) ? call.session().caliper() : OnTable.BESIDE;
                    double gap = call.has(by) ? call.get(by) : usual;
                    return hung.apply(new Placing.Beside(p, o, where, gap, degrees, call.site()));
                  };
              call.session()
                  .place(part, PartDraft.Goes.alone(onto, "beside", reader, 1, call.site()));
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
