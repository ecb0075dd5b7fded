package facetwright.message;

import facetwright.measure.Unit;
import facetwright.words.Sentence;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Words for a maker with the values they tell of, to be worded in the unit of whoever reads them.
 *
 * @param parts literal words and values in turn; no two literals stand side by side, and none is
 *     empty
 */
public record Message(List<Part> parts) implements Serializable {
  public static final Message EMPTY = new Message(List.of());

  private static final String HERE = "%s";

  /** A piece of a message: literal words, or a value. */
  public sealed interface Part extends Serializable permits Literal, Value {}

  /** Words that every reader reads alike. */
  public record Literal(String words) implements Part {}

  public Message {
    parts = joined(parts);
  }

  /** Words without a value. */
  public static Message text(String words) {
    return new Message(List.of(new Literal(words)));
  }

  /**
   * Words with values in their places.
   *
   * @param words "%s" stands for a value; nothing else in them has a meaning
   * @param values in their order: a {@link Value}, another message, or what reads the same in every
   *     unit, such as a word or a whole number
   * @throws IllegalArgumentException where there are more or fewer values than places
   */
  public static Message of(String words, Object... values) {
    List<Part> parts = new ArrayList<>();
    int from = 0;
    for (Object value : values) {
      int at = words.indexOf(HERE, from);
      if (at < 0) {
        throw new IllegalArgumentException("no place for \"" + value + "\" in \"" + words + "\"");
      }
      parts.add(new Literal(words.substring(from, at)));
      add(parts, value);
      from = at + HERE.length();
    }
    if (words.indexOf(HERE, from) >= 0) {
      throw new IllegalArgumentException("a place in \"" + words + "\" has no value");
    }
    parts.add(new Literal(words.substring(from)));
    return new Message(parts);
  }

  /** Messages or values one after another, with words between them. */
  public static Message join(String between, Collection<?> messages) {
    List<Part> parts = new ArrayList<>();
    for (Object message : messages) {
      if (!parts.isEmpty()) {
        parts.add(new Literal(between));
      }
      add(parts, message);
    }
    return new Message(parts);
  }

  /** "a", "a and b", "a, b and c". */
  public static Message list(List<?> messages) {
    int last = messages.size() - 1;
    return last < 1
        ? join("", messages)
        : join(", ", messages.subList(0, last)).plus(of(" and %s", messages.get(last)));
  }

  /** The same with more after it: words, a value or a message. */
  public Message plus(Object more) {
    List<Part> all = new ArrayList<>(parts);
    add(all, more);
    return new Message(all);
  }

  /** The same with a capital first. */
  public Message capital() {
    if (parts.isEmpty() || !(parts.getFirst() instanceof Literal(String words))) {
      return this;
    }
    List<Part> all = new ArrayList<>(parts);
    all.set(0, new Literal(Sentence.capital(words)));
    return new Message(all);
  }

  /** The same with its values changed. */
  public Message with(UnaryOperator<Value> change) {
    return new Message(
        parts.stream()
            .map(
                part ->
                    switch (part) {
                      case Literal words -> words;
                      case Value value -> change.apply(value);
                    })
            .toList());
  }

  /** The values it tells of, in their order. */
  public List<Value> values() {
    return parts.stream().filter(Value.class::isInstance).map(Value.class::cast).toList();
  }

  public boolean isEmpty() {
    return parts.isEmpty();
  }

  /**
   * As it is read in a unit. Inches off any ruler's mark have their millimetres beside them, in
   * brackets where they do not stand in some already: "0.2 in (5.08 mm)".
   */
  public String text(Unit unit) {
    StringBuilder told = new StringBuilder();
    for (Part part : parts) {
      switch (part) {
        case Literal(String words) -> told.append(words);
        case Value value -> {
          told.append(value.text(unit));
          if (told.lastIndexOf("(") <= told.lastIndexOf(")")) {
            value.aside(unit).ifPresent(metric -> told.append(" (").append(metric).append(')'));
          }
        }
      }
    }
    return told.toString();
  }

  /** As it is read in millimetres. */
  @Override
  public String toString() {
    return text(Unit.MM);
  }

  private static void add(List<Part> parts, Object more) {
    switch (more) {
      case Message message -> parts.addAll(message.parts);
      case Part part -> parts.add(part);
      case String words -> parts.add(new Literal(words));
      case Integer number -> parts.add(Value.count(number));
      case Long number -> parts.add(Value.count(number));
      default -> throw new IllegalArgumentException(more.getClass() + " can't stand in a message");
    }
  }

  private static List<Part> joined(List<Part> parts) {
    List<Part> all = new ArrayList<>();
    for (Part part : parts) {
      if (!(part instanceof Literal(String words))) {
        all.add(part);
      } else if (!all.isEmpty() && all.getLast() instanceof Literal(String before)) {
        all.set(all.size() - 1, new Literal(before + words));
      } else if (!words.isEmpty()) {
        all.add(part);
      }
    }
    return List.copyOf(all);
  }
}
