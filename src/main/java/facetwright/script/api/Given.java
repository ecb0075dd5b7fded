package facetwright.script.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.graalvm.polyglot.Value;

/**
 * A value that a script gave to a function, read once and whole. To read it may run code of the
 * script, such as a getter; to look at what was read runs none.
 */
public sealed interface Given {
  /** Lists longer than that are not read: no function takes them. */
  int MOST_ITEMS = 10_000;

  /** Lists in lists are read as deep as that: no function takes deeper ones. */
  int DEEPEST = 4;

  /** Text in quotes. */
  record Text(String text) implements Given {}

  /** A number; may be infinite or none. */
  record Amount(double value) implements Given {}

  /** True or false. */
  record Flag(boolean value) implements Given {}

  /**
   * A list.
   *
   * @param size how many items it has
   * @param items the items; none where there are more than {@link #MOST_ITEMS}
   */
  record Items(long size, List<Given> items) implements Given {
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * An object in braces.
   *
   * @param keys the names of all its members
   * @param members those members that were asked for
   */
  record Braces(Set<String> keys, Map<String, Given> members) implements Given {}

  /** A thing that an earlier call made. */
  record Held(Handle<?> handle) implements Given {}

  /** What no function takes, told by its kind alone. */
  enum Other implements Given {
    NOTHING,
    FUNCTION,
    SYMBOL
  }

  /**
   * Reads what a call was given. What the script has done in it, getters among it, runs now: to be
   * called on the script's own time.
   *
   * @param wanted the members to read where an argument is an object in braces; each is read once
   */
  static List<Given> read(Value[] given, List<String> wanted) {
    List<Given> all = new ArrayList<>(given.length);
    for (Value value : given) {
      all.add(of(value, wanted, 0));
    }
    return all;
  }

  private static Given of(Value value, List<String> wanted, int depth) {
    if (value == null || value.isNull()) {
      return Other.NOTHING;
    }
    if (value.isString()) {
      return new Text(value.asString());
    }
    if (value.isBoolean()) {
      return new Flag(value.asBoolean());
    }
    if (value.isNumber()) {
      return new Amount(value.fitsInDouble() ? value.asDouble() : Double.NaN);
    }
    if (value.isProxyObject() && value.asProxyObject() instanceof Handle<?> handle) {
      return new Held(handle);
    }
    if (value.hasArrayElements()) {
      return items(value, wanted, depth);
    }
    if (value.canExecute()) {
      return Other.FUNCTION;
    }
    return value.hasMembers() ? braces(value, depth == 0 ? wanted : List.of()) : Other.SYMBOL;
  }

  private static Items items(Value list, List<String> wanted, int depth) {
    long size = list.getArraySize();
    if (size > MOST_ITEMS || depth >= DEEPEST) {
      return new Items(size, List.of());
    }
    List<Given> items = new ArrayList<>();
    // An item that is worked out when it is asked for may change how long the list is.
    for (int i = 0; i < size && i < list.getArraySize(); i++) {
      items.add(of(list.getArrayElement(i), wanted, depth + 1));
    }
    return new Items(items.size(), items);
  }

  private static Braces braces(Value object, List<String> wanted) {
    Map<String, Given> members = new LinkedHashMap<>();
    for (String name : wanted) {
      members.put(name, of(object.getMember(name), List.of(), 1));
    }
    return new Braces(new LinkedHashSet<>(object.getMemberKeys()), members);
  }
}
