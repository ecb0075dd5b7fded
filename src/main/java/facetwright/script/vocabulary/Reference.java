package facetwright.script.vocabulary;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import java.util.List;
import java.util.Locale;

/** The reference of the script language as Markdown, written from the language itself. */
public final class Reference {
  private final StringBuilder text = new StringBuilder();

  private Reference() {}

  /** The whole reference. */
  public static String markdown() {
    Reference reference = new Reference();
    reference.head();
    Language.things().forEach(reference::thing);
    return reference.text.toString();
  }

  private void head() {
    text.append(
        """
        # The script language, function by function

        Written from the program itself by `scripts/docs`; every example is run by the tests. Read
        [writing-a-design.md](writing-a-design.md) first.

        Plain JavaScript, one file a design. A *length* is a number in the design's unit or text such
        as `"1 7/8 in"`, `"1-7/8"`, `"48 mm"` or `"4.8cm"`. Angles are in degrees. Options go in
        braces: `wrap({ columns: 8, width: 28 })`. Functions that return the thing itself can be
        chained.

        """);
    for (Thing<?> thing : Language.things()) {
      text.append("- [")
          .append(title(thing))
          .append("](#")
          .append(anchor(title(thing)))
          .append("): ");
      text.append(
          String.join(", ", thing.functions().stream().map(f -> "`" + f.name() + "`").toList()));
      text.append('\n');
    }
  }

  private void thing(Thing<?> thing) {
    text.append("\n## ").append(title(thing)).append("\n\n").append(thing.does()).append('\n');
    thing.functions().forEach(this::function);
  }

  private void function(Fn<?> fn) {
    text.append("\n### `").append(fn.signature()).append("`\n\n").append(fn.does()).append("\n\n");
    List<Arg<?>> places = fn.places();
    if (!places.isEmpty() || !fn.options().isEmpty()) {
      text.append("| takes | as | what | left out |\n|---|---|---|---|\n");
      places.forEach(this::row);
      fn.options().forEach(this::row);
      text.append('\n');
    }
    text.append("Returns ")
        .append(fn.returns())
        .append(".\n\n```js\n")
        .append(fn.example().strip());
    text.append("\n```\n");
  }

  private void row(Arg<?> arg) {
    String left = arg.usual() == null ? arg.leftOut() : "`" + arg.leftOut() + "`";
    text.append("| `")
        .append(arg.name())
        .append("` | ")
        .append(cell(arg.kind().wanted()))
        .append(" | ");
    text.append(cell(arg.does())).append(" | ").append(left).append(" |\n");
  }

  private static String cell(String words) {
    return words.replace("|", "\\|");
  }

  private static String title(Thing<?> thing) {
    return thing == Language.TOP ? "On their own" : "On " + thing.one();
  }

  private static String anchor(String title) {
    return title.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
