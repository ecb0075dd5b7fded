package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.DialReader;
import facetwright.script.api.Fn;
import facetwright.script.api.Given;
import facetwright.script.api.Kinds;
import facetwright.script.api.Session;
import facetwright.script.api.UnitKind;
import facetwright.script.api.Unmet;
import facetwright.script.sandbox.CallException;
import facetwright.words.Decimals;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The words every script starts with: its name, its dials, its sheet. */
final class TopWords {
  /** The weight of card most makers own, g/m²; common practice, no source. */
  private static final List<String> SIZES =
      SheetSizes.list().stream().map(SheetSize::name).toList();

  private TopWords() {}

  static List<Fn<Session>> all() {
    return List.of(design(), dial(), sheet(), length(), must(), say());
  }

  private static Fn<Session> design() {
    Arg<String> title = needed("title", Kinds.text(), "what the design is called");
    Arg<Unit> units = usual("units", UnitKind.unit(), Unit.MM, "what plain numbers count");
    return Fn.<Session>named("design")
        .does("Names the design and says what plain numbers count. It comes first in every script.")
        .takes(title)
        .options(units)
        .example(
            """
            design("Quay box", { units: "in" });
            prism({ sides: 4, side: 2, height: "1 1/2 in" }).unfold();
            """)
        .runs(
            (session, call) -> {
              call.ofScript("Name the design in the script alone.");
              call.once("Name the design once, on the first line.");
              session.name(call.get(title), call.get(units));
              return null;
            });
  }

  private static Fn<Session> dial() {
    Arg<String> name = needed("name", Kinds.text(), "what the maker calls it");
    Arg<Given> start = needed("value", DialReader.dialValue(), "its value when nobody turns it");
    Arg<List<String>> of =
        optional(
            "of",
            Kinds.list(Kinds.text(), 2, DialReader.MOST_WORDS),
            "the words it is one of, where its value is a word");
    Arg<Given> from = optional("from", DialReader.amount(), "the least value");
    Arg<Given> to = optional("to", DialReader.amount(), "the greatest value");
    Arg<Given> step =
        optional(
            "step", DialReader.amount(), "the distance between values, counted from the least");
    Arg<Boolean> whole =
        optional(
            "whole",
            Kinds.flag(),
            "true where it takes whole numbers only; found out where it counts sides or columns");
    return Fn.<Session>named("dial")
        .does(
            "What the user of the design may turn: a length, an angle, a number, one of several"
                + " words, or on and off. Returns its value now.")
        .takes(name, start)
        .options(of, from, to, step, whole)
        .returns(
            "the dial's value: a number, a length counted in the design's unit, an angle in"
                + " degrees; a word; or true or false")
        .example(
            """
            design("Lantern drum");
            const sides = dial("sides", 8, { from: 5, to: 12 });
            const tall = dial("tall", "60 mm", { from: "40 mm", to: "90 mm" });
            const turn = dial("turn", "15 deg", { from: 0, to: 30 });
            const top = dial("top", "open", { of: ["open", "closed"] });
            const lit = dial("lit", true);
            let drum = prism({ sides, side: 25, height: tall }).twist(turn);
            if (lit) drum = drum.window("base", { border: 8 });
            if (top === "open") drum = drum.open("top");
            drum.unfold();
            """)
        .runs(
            (_, call) -> {
              call.ofScript(
                  "Make the dial in the script, and give its value to a function of the file.");
              return DialReader.read(
                  call,
                  call.get(name),
                  new DialReader.Declared(
                      call.get(start),
                      call.get(of),
                      call.get(from),
                      call.get(to),
                      call.get(step),
                      call.get(whole)));
            });
  }

  private static Fn<Session> sheet() {
    Arg<String> name =
        optional("size", Kinds.text(SIZES), "its name, such as \"A4\" or \"Letter\"");
    Arg<Double> width = optional("width", Kinds.length(), "its width where it has no name");
    Arg<Double> height = optional("height", Kinds.length(), "its height where it has no name");
    Arg<Double> weight =
        usual(
            "weight",
            Kinds.number(40, 1_000),
            Stock.USUAL_WEIGHT,
            "grams per square metre, the number alone");
    Arg<Double> caliper =
        optional(
            "caliper", Kinds.length(0.01, 5), "its thickness; measured is better than reckoned");
    Arg<Stock.Grain> grain =
        usual(
            "grain",
            Kinds.word(Stock.Grain.class),
            Stock.Grain.UNKNOWN,
            "which side the fibres run along");
    Arg<Double> margin =
        optional(
            "margin",
            Kinds.length(0, 100),
            "a border of the sheet to stay clear of; without it " + Room.WORDS);
    return Fn.<Session>named("sheet")
        .does(
            "The card it is cut from. Without it the smallest common sheet is taken that holds the"
                + " net with room at its edges, and from one piece to the next. Of several parts"
                + " each is laid flat for the smallest sheet that holds it alone, not for the"
                + " others; then all are laid together, in a few orders: the sheet named may not be"
                + " the smallest that could hold them.")
        .takes(name)
        .options(width, height, weight, caliper, grain, margin)
        .example(
            """
            design("Lid");
            sheet("A5", { weight: 240, grain: "long" });
            prism({ sides: 6, side: 20, height: 15 }).unfold();
            """)
        .runs(
            (session, call) -> {
              call.ofScript("Name the sheet in the script.");
              if (call.has(name) == (call.has(width) || call.has(height))
                  || call.has(width) != call.has(height)) {
                throw new CallException(
                    "sheet needs either a size by name or both a width and a height, and was given "
                        + WrapWords.given(
                            call.has(name) ? "the name \"" + call.get(name) + "\"" : "",
                            call.has(width) ? "a width" : "",
                            call.has(height) ? "a height" : ""),
                    "Write sheet(\"A4\") or sheet({ width: 200, height: 300 }).");
              }
              double gsm = call.get(weight);
              double thick = call.has(caliper) ? call.get(caliper) : Stock.usualCaliper(gsm);
              Stock stock = stock(call, name, width, height, gsm, thick, call.get(grain));
              double border = call.has(margin) ? call.get(margin) : 0;
              if (2 * border >= Math.min(stock.width(), stock.height())) {
                throw new CallException(
                    Message.of("sheet: %s", SheetLayout.noRoom(stock, border)),
                    Message.text("Take a smaller margin, or a larger sheet."),
                    List.of());
              }
              call.once("Name the sheet once: of the two take out what is not meant.");
              session.stock(
                  stock, call.has(margin) ? OptionalDouble.of(border) : OptionalDouble.empty());
              return null;
            });
  }

  private static Stock stock(
      Call call,
      Arg<String> name,
      Arg<Double> width,
      Arg<Double> height,
      double gsm,
      double caliper,
      Stock.Grain grain) {
    if (!call.has(name)) {
      double w = call.get(width);
      double h = call.get(height);
      Unit unit = call.session().unit();
      String shown =
          Decimals.plain(call.plain(w))
              + " × "
              + Decimals.plain(call.plain(h))
              + " "
              + unit.symbol();
      return new Stock(shown, w, h, gsm, caliper, grain);
    }
    try {
      return SheetSizes.named(call.get(name)).stock(gsm, caliper, grain);
    } catch (IllegalArgumentException e) {
      throw new CallException("sheet: " + e.getMessage(), "", SheetSizes.mends(call.get(name)));
    }
  }

  private static Fn<Session> length() {
    Arg<Double> text =
        needed("text", Kinds.length(-Ask.LONGEST, Ask.LONGEST), "the length to read");
    return Fn.<Session>named("length")
        .does(
            "Reads a length such as \"1 7/8 in\" or \"48 mm\" into a plain number of the design's"
                + " unit.")
        .takes(text)
        .returns("the length in the design's unit")
        .example(
            """
            design("Metric from inches");
            const side = length("1 1/4 in"); // 31.75
            prism({ sides: 5, side, height: side * 2 }).unfold();
            """)
        .runs((_, call) -> call.plain(call.get(text)));
  }

  private static Fn<Session> must() {
    Arg<Boolean> holds =
        needed("condition", Kinds.flag(), "what has to hold, such as tall > 2 * wide");
    Arg<String> todo =
        needed("remedy", Kinds.text(), "what to do where it does not hold, as its finding says");
    return Fn.<Session>named("must")
        .does(
            "A check of your own. Where the condition does not hold, it is an error at this line;"
                + " the net stays.")
        .takes(holds, todo)
        .example(
            """
            design("Lantern that stands");
            const wide = dial("wide", 40, { from: 20, to: 60 });
            const tall = dial("tall", 90, { from: 40, to: 160 });
            must(tall <= 3 * wide, "Make it wider: over three times as tall as wide it falls over.");
            box({ width: wide, depth: wide, height: tall }).open("top").unfold();
            """)
        .runs(
            (session, call) -> {
              if (!call.get(holds)) {
                session.unmet(new Unmet(call.get(todo), call.site()));
              }
              return null;
            });
  }

  private static Fn<Session> say() {
    Arg<List<String>> words = needed("text", Kinds.shown(), "text, a number, or a list of them");
    return Fn.<Session>named("say")
        .does("Shows a line while the script is being written: a value to look at.")
        .takes(words)
        .example(
            """
            design("A thing to look at");
            const gem = bipyramid({ sides: 6, side: 20, height: 70 });
            say(["volume", gem.volume()]);
            gem.unfold();
            """)
        .runs(
            (session, call) -> {
              session.say(call.get(words).stream().collect(Collectors.joining(" ")));
              return null;
            });
  }
}
