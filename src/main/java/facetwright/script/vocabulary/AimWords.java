package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.geom.RingCount;
import facetwright.message.Message;
import facetwright.message.Refused;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Given;
import facetwright.script.api.GivenText;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.Session;
import facetwright.script.design.AskedAim;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.CallException;
import facetwright.words.Decimals;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.List;

/** The word that has dials turned until the design comes to what is wanted. */
final class AimWords {
  private static final Message LENGTH =
      Message.of("a length over 0, up to %s", Value.given(Ask.LONGEST));

  private AimWords() {}

  static List<Fn<Session>> all() {
    return List.of(aim());
  }

  private static Fn<Session> aim() {
    List<Arg<Goal>> goals =
        List.of(
            goal("height", LENGTH, "the finished height it should come to"),
            goal("width", LENGTH, "the longer side of the rectangle it should stand in"),
            goal("depth", LENGTH, "the shorter side of it"),
            goal(
                "volume", "a number, \"250 cm3\", \"15 in3\" or \"250 ml\"", "what it should hold"),
            goal("area", "a number, \"300 cm2\" or \"45 in2\"", "the area of its facets"),
            goal(
                "fits",
                "a sheet's name, or its sides as \"8 x 10 in\"",
                "the sheet its net should fill without leaving it"),
            goal("gap", "the number 0", "0 to have every join meet"),
            goal(
                "ring",
                "a whole number from "
                    + RingCount.LEAST
                    + " to "
                    + RingCount.MOST
                    + ", or such as \"8 standing\"",
                "how many copies should seat flush in a ring, with no wedge between; standing, none"
                    + " tipped"));
    Arg<List<String>> turn =
        optional(
            "turn",
            Kinds.either(Kinds.map(Kinds.text(), List::of), Kinds.list(Kinds.text(), 1, 100)),
            "the dials that may be turned, by name; where none is named those without steps, and to"
                + " fit a sheet only lengths");
    Arg<Grid> ruler =
        optional(
            "ruler",
            ruler(),
            "the ruler the dials are set by; 1/16 in for designs in inches, else 0.5 mm");
    List<Arg<?>> options = new ArrayList<>(goals);
    options.add(turn);
    options.add(ruler);
    return Fn.<Session>named("aim")
        .does(
            "Has dials turned until the design comes to what is wanted, as near as the ruler"
                + " allows. A dial that its user sets stays where it is set. Stands after the dials"
                + " it turns, once in a script.")
        .options(options.toArray(Arg<?>[]::new))
        .example(
            """
            design("Quay lantern");
            const side = dial("side", 28, { from: 20, to: 40 });
            const tall = dial("tall", 60, { from: 30, to: 120 });
            aim({ volume: "150 ml", turn: "tall" });
            prism({ sides: 6, side, height: tall }).unfold();
            """)
        .runs(
            (session, call) -> {
              call.ofScript("Aim in the script: it has the dials.");
              List<Goal> wanted = goals.stream().filter(call::has).map(call::get).toList();
              if (wanted.isEmpty()) {
                throw new CallException(
                    "aim says nothing to aim at",
                    "Give at least one of " + String.join(", ", GoalReader.WORDS) + ".");
              }
              List<String> names = call.has(turn) ? call.get(turn) : List.of();
              names.forEach(name -> mustBeADial(session, name));
              Grid marks = call.has(ruler) ? call.get(ruler) : Grid.usual(session.unit());
              call.once("Put all that it should come to into one aim.");
              session.aim(new AskedAim(wanted, names, marks, call.site()));
              return null;
            });
  }

  private static void mustBeADial(Session session, String name) {
    List<String> known = session.dials().stream().map(Dial::name).toList();
    if (!known.contains(name)) {
      throw new CallException(
          "aim: turn: there is no dial called \"" + name + "\" so far",
          NearName.nearest(name, known).map(n -> "Did you mean \"" + n + "\"? ").orElse("")
              + "Declare dials before the aim that turns them.");
    }
  }

  private static Arg<Goal> goal(String word, String wanted, String does) {
    return goal(word, Message.text(wanted), does);
  }

  private static Arg<Goal> goal(String word, Message wanted, String does) {
    return optional(
        word,
        Kinds.of(
            wanted,
            List.of(),
            (value, session) -> {
              try {
                return GoalReader.read(word, text(value), session.unit());
              } catch (IllegalArgumentException e) {
                throw new Kind.Unfit(Refused.words(e), "");
              }
            }),
        does);
  }

  private static Kind<Grid> ruler() {
    return Kinds.of(
        "the distance between two lines of the ruler, such as \"1/16 in\", or \"none\"",
        (value, session) -> {
          try {
            return Grid.read(text(value), session.unit());
          } catch (IllegalArgumentException e) {
            throw new Kind.Unfit(Refused.words(e), "");
          }
        });
  }

  private static String text(Given value) throws Kind.Unfit {
    return switch (value) {
      case Given.Text(String text) -> text;
      case Given.Amount(double n) -> Decimals.plain(n);
      default -> throw new Kind.Unfit(GivenText.quote(value) + " is neither a number nor text");
    };
  }
}
