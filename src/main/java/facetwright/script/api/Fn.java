package facetwright.script.api;

import java.util.List;
import java.util.Optional;

/**
 * A function of the script language.
 *
 * @param name as the script calls it
 * @param does what it does, first sentence short
 * @param places arguments in their places, in order
 * @param options arguments given in braces after them; empty when it takes none
 * @param returns what comes back, in words
 * @param gives the kind of thing that comes back; empty for a number, text or nothing
 * @param example a whole script that uses it and runs
 * @param body what it does with a call
 * @param <T> what stands behind the thing it belongs to
 */
public record Fn<T>(
    String name,
    String does,
    List<Arg<?>> places,
    List<Arg<?>> options,
    String returns,
    Optional<Thing<?>> gives,
    String example,
    Body<T> body) {

  public Fn {
    places = List.copyOf(places);
    options = List.copyOf(options);
  }

  /** What a function does: returns a thing, a number, text, or null for nothing. */
  @FunctionalInterface
  public interface Body<T> {
    Object call(T receiver, Call call);
  }

  /** The names of its options, in order. */
  List<String> optionNames() {
    return options.stream().<String>map(Arg::name).toList();
  }

  public static <T> Builder<T> named(String name) {
    return new Builder<>(name);
  }

  /** How the function is written: {@code wrap({ columns, width, … })}. */
  public String signature() {
    StringBuilder text = new StringBuilder(name).append('(');
    for (Arg<?> arg : places) {
      text.append(text.charAt(text.length() - 1) == '(' ? "" : ", ");
      text.append(arg.needed() ? arg.name() : "[" + arg.name() + "]");
    }
    if (!options.isEmpty()) {
      text.append(places.isEmpty() ? "" : ", ").append("{ ");
      text.append(String.join(", ", options.stream().map(Arg::name).toList())).append(" }");
    }
    return text.append(')').toString();
  }

  public static final class Builder<T> {
    private final String name;
    private String does = "";
    private List<Arg<?>> places = List.of();
    private List<Arg<?>> options = List.of();
    private String returns = "nothing";
    private Optional<Thing<?>> gives = Optional.empty();
    private String example = "";

    private Builder(String name) {
      this.name = name;
    }

    public Builder<T> does(String text) {
      does = text;
      return this;
    }

    public Builder<T> takes(Arg<?>... args) {
      places = List.of(args);
      return this;
    }

    public Builder<T> options(Arg<?>... args) {
      options = List.of(args);
      return this;
    }

    public Builder<T> returns(String text) {
      returns = text;
      return this;
    }

    public Builder<T> gives(Thing<?> thing, String words) {
      gives = Optional.of(thing);
      return returns(words);
    }

    public Builder<T> example(String script) {
      example = script;
      return this;
    }

    public Fn<T> runs(Body<T> body) {
      return new Fn<>(name, does, places, options, returns, gives, example, body);
    }
  }
}
