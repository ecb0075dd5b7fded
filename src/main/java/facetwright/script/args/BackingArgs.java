package facetwright.script.args;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.Backing;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import java.util.List;
import java.util.Locale;

/** The options of every function that puts paper or film behind windows. */
public final class BackingArgs {
  public static final Arg<String> PAPER =
      usual(
          "paper",
          Kinds.text(List.of("vellum", "clear film")),
          "vellum",
          "the name of the paper or film, to sort by");

  public static final Arg<Double> OVERLAP =
      optional(
          "overlap",
          Kinds.length(0.5, 100),
          "how far it reaches past the window all round; where left out 5 mm, or what there is room"
              + " for down to 3 mm");

  public static final Arg<Backing.Cut> SHAPE =
      optional(
          "shape",
          Kinds.map(
              Kinds.oneOf(List.of("rectangle", "outline")),
              w -> Backing.Cut.valueOf(w.toUpperCase(Locale.ROOT))),
          "a plain rectangle, or the window's own outline made larger; where left out a rectangle"
              + " where there is room for one");

  private BackingArgs() {}

  /** What a call asks for. */
  public static Backing read(Call call) {
    Backing.Cut cut = call.has(SHAPE) ? call.get(SHAPE) : Backing.Cut.EITHER;
    String paper = call.get(PAPER);
    if (!call.has(OVERLAP)) {
      return Backing.usual(paper, cut, call.site());
    }
    double overlap = call.get(OVERLAP);
    return new Backing(paper, overlap, overlap, cut, call.site());
  }
}
