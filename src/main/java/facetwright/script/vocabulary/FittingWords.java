package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.fitting.Extra;
import facetwright.net.fitting.LightKind;
import facetwright.net.fitting.Moment.When;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.FittingDraft;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Thing;
import facetwright.script.api.VolumeKind;
import facetwright.script.args.MomentArgs;
import facetwright.script.sandbox.CallException;
import java.util.List;
import java.util.regex.Pattern;

/** The words for what goes in and on a piece while it is glued. */
final class FittingWords {
  /** A battery tea light, in mm; common practice, no source. */
  private static final double TEA_LIGHT = 38;

  /** Narrow satin ribbon, in mm; common practice, no source. */
  private static final double RIBBON = 6;

  private static final Pattern FLAME =
      Pattern.compile("(?i)candle|flame|wick|match|oil|\\bgas\\b|bulb|halogen|mains");

  private static final Pattern BATTERY = Pattern.compile("(?i)batter|\\bled\\b|flameless");

  private FittingWords() {}

  /** Told of a wrap, a blank, a panel with all that hangs together with it, and a part. */
  static <T> List<Fn<T>> all(Thing<T> of) {
    return List.of(ribbon(of), light(of), filling(of), note(of));
  }

  private static <T> Object of(T receiver) {
    return receiver instanceof PartDraft part ? part.of() : receiver;
  }

  private static <T> T fit(
      T receiver, Call call, String function, Extra thing, List<String> through, When usual) {
    call.session()
        .fit(
            new FittingDraft(
                of(receiver),
                thing,
                through,
                MomentArgs.when(call, function, usual),
                MomentArgs.names(call),
                call.site()));
    return receiver;
  }

  private static <T> Fn<T> ribbon(Thing<T> of) {
    Arg<Double> length = needed("length", Kinds.length(), "how long the ribbon is");
    Arg<Double> width = usual("width", Kinds.length(0.5, 100), RIBBON, "how wide");
    Arg<List<String>> through =
        optional(
            "through",
            MomentArgs.NAMES,
            "the panels whose holes it goes through; all that have holes where left out");
    Arg<String> tie =
        optional(
            "tie", Kinds.text(), "where it is tied, in your words; without holes it is tied only");
    return Fn.<T>named("ribbon")
        .does(
            "Threads a ribbon, or ties it. It is on the shopping list, and in the steps before the"
                + " holes are glued over or a hand no longer reaches in.")
        .options(length, width, through, tie, MomentArgs.BEFORE, MomentArgs.AFTER, MomentArgs.AT)
        .gives(of, "the " + of.name())
        .example(
            """
            design("Lantern to hang", { units: "in" });
            const body = wrap({ columns: 8, width: 1, rows: [1, 3], seam: "1/2 in" });
            body.columns("even").rows(1).remove();
            body.columns("odd").rows(1).tabs({ hole: "1/8 in" });
            body.ribbon({ length: 12, width: "1/4 in" });
            """)
        .runs(
            (thing, call) ->
                fit(
                    thing,
                    call,
                    "ribbon",
                    new Extra.Ribbon(
                        call.get(length),
                        call.get(width),
                        List.of(),
                        call.has(tie) ? call.get(tie) : ""),
                    call.has(through) ? call.get(through) : List.of(),
                    When.FOUND));
  }

  private static <T> Fn<T> light(Thing<T> of) {
    Arg<String> kind =
        usual(
            "kind",
            Kinds.text(LightKind.names()),
            LightKind.TEA.called(),
            "what it is; battery lights only");
    Arg<Double> across = usual("across", Kinds.length(), TEA_LIGHT, "how wide it is");
    Arg<Double> height = usual("height", Kinds.length(), TEA_LIGHT, "how tall it stands");
    return Fn.<T>named("light")
        .does(
            "Puts a battery light in, before what would close over it. Whether it goes through the"
                + " opening that is left, and fits inside, is told.")
        .takes(kind)
        .options(across, height, MomentArgs.BEFORE, MomentArgs.AFTER, MomentArgs.AT)
        .gives(of, "the " + of.name())
        .example(
            """
            design("Lamp on a shelf");
            const shade = blank({ width: 262, height: 80 });
            for (const x of [63, 126, 189, 252]) shade.score({ from: "left", at: x, fold: 90 });
            shade.role([257, 40], "tab").lap([257, 40], [30, 40]);
            shade.light({ across: 36, height: 40 });
            """)
        .runs(
            (thing, call) -> {
              String called = call.get(kind);
              if (FLAME.matcher(called).find() && !BATTERY.matcher(called).find()) {
                throw new CallException(
                    "light: \""
                        + called
                        + "\" may be hot or a flame, and only lights that run on a battery go in"
                        + " paper",
                    "Name one that does: light(\"battery candle\", { across: 20, height: 60 }).");
              }
              return fit(
                  thing,
                  call,
                  "light",
                  new Extra.Light(called, call.get(across), call.get(height)),
                  List.of(),
                  When.FOUND);
            });
  }

  private static <T> Fn<T> filling(Thing<T> of) {
    Arg<String> what = needed("what", Kinds.text(), "what it is: \"sweets in their wrappers\"");
    Arg<Integer> count = optional("count", Kinds.count(1, 10_000), "how many go into one piece");
    Arg<Double> across =
        optional("across", Kinds.length(), "how wide one of them is: it has to go in");
    Arg<Double> volume = optional("volume", VolumeKind.volume(), "how much it is: \"150 ml\"");
    return Fn.<T>named("filling")
        .does(
            "Fills it, before what would close over it. Without a count or a volume it is as much"
                + " as goes in.")
        .takes(what)
        .options(count, across, volume, MomentArgs.BEFORE, MomentArgs.AFTER, MomentArgs.AT)
        .gives(of, "the " + of.name())
        .example(
            """
            design("Favour pouch");
            const floor = panel("floor", { width: 50, height: 50 });
            for (const edge of ["bottom", "right", "top", "left"]) {
              floor.attach(edge, edge + " wall", { depth: 40, fold: 90 });
            }
            floor.filling("sweets in their wrappers", { count: 6, across: 20, volume: "60 ml" });
            """)
        .runs(
            (thing, call) ->
                fit(
                    thing,
                    call,
                    "filling",
                    new Extra.Filling(
                        call.get(what),
                        call.has(count) ? call.get(count) : 0,
                        call.has(across) ? call.get(across) : Extra.NOT_SAID,
                        call.has(volume) ? call.get(volume) : Extra.NOT_SAID),
                    List.of(),
                    When.FOUND));
  }

  private static <T> Fn<T> note(Thing<T> of) {
    Arg<String> text = needed("text", Kinds.text(), "what is to be done or known, as it is read");
    return Fn.<T>named("note")
        .does(
            "A step of your own among those of gluing: first, last, or before or after a panel is"
                + " glued. First where you don't say.")
        .takes(text)
        .options(MomentArgs.BEFORE, MomentArgs.AFTER, MomentArgs.AT)
        .gives(of, "the " + of.name())
        .example(
            """
            design("Lantern with a wish");
            const body = wrap({ columns: 6, width: 30, rows: [15, 60], seam: 10 });
            body.rows(1).tabs();
            body.note("Write your wish on a strip and drop it in.", { before: "row 1" });
            body.note("Leave it to dry under a book.", { at: "last" });
            """)
        .runs(
            (thing, call) ->
                fit(thing, call, "note", new Extra.Note(call.get(text)), List.of(), When.FIRST));
  }
}
