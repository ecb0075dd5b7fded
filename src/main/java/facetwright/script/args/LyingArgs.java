package facetwright.script.args;

import static facetwright.script.api.Arg.optional;

import facetwright.net.Parts.Lie;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Given;
import facetwright.script.api.Kind;
import facetwright.script.api.Kinds;
import facetwright.script.api.PartCard;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Things;
import java.util.List;
import java.util.Locale;

/** How a script says that several parts go into one opening, and how they lie. */
public final class LyingArgs {
  private LyingArgs() {}

  /**
   * What a part goes over or into.
   *
   * @param areAll whether all of each are meant, as many as are made
   */
  public record Hosts(List<PartDraft> parts, boolean areAll) {
    public PartDraft first() {
      return parts.getFirst();
    }

    /** Those beside the first. */
    public List<PartDraft> others() {
      return parts.subList(1, parts.size());
    }
  }

  /** One part, or in brackets several. */
  public static Kind<Hosts> hosts(boolean mayBeSeveral) {
    Kind<PartDraft> one = Kinds.thing(Things.PART);
    Kind<List<PartDraft>> several = Kinds.list(one, 1, PartCard.MOST);
    return mayBeSeveral
        ? Kinds.of(
            "a part made before, or several in brackets",
            List.of(),
            (value, session) ->
                new Hosts(several.read(value, session), value instanceof Given.Items))
        : Kinds.map(one, p -> new Hosts(List.of(p), false));
  }

  /** The option. */
  public static Arg<Lie> lie() {
    return optional(
        "lie",
        Kinds.map(
            Kinds.oneOf(List.of("right", "back", "top")),
            w -> Lie.valueOf(w.toUpperCase(Locale.ROOT))),
        "how several that go in at once lie: each to the right of the one before, behind it or on"
            + " top of it; the first way that fits where left out");
  }

  /** As a call says it. */
  public static Lie read(Call call, Arg<Lie> lie) {
    return call.has(lie) ? call.get(lie) : Lie.FOUND;
  }
}
