package facetwright.worker;

import java.io.ObjectInputFilter;
import java.util.Set;

/**
 * What may come out of a stream between two processes: this program's own records and enums, texts,
 * numbers, and lists of them, within limits. Anything else is refused before it is made.
 */
final class PlainData {
  static final long MOST_REFERENCES = 4_000_000;
  static final long MOST_ITEMS = 1_000_000;
  static final long DEEPEST = 40;

  private static final String OWN = "facetwright.";

  /** What {@code List.of} and the like make; it travels as {@code CollSer}. */
  private static final String UNCHANGING = "java.util.ImmutableCollections$";

  private static final Set<String> LIBRARY =
      Set.of(
          "java.lang.String",
          "java.lang.Number",
          "java.lang.Integer",
          "java.lang.Long",
          "java.lang.Double",
          "java.lang.Boolean",
          "java.lang.Enum",
          "java.lang.Record",
          "java.lang.Object",
          "java.util.CollSer");

  private PlainData() {}

  static ObjectInputFilter filter() {
    return PlainData::check;
  }

  private static ObjectInputFilter.Status check(ObjectInputFilter.FilterInfo info) {
    if (info.references() > MOST_REFERENCES
        || info.arrayLength() > MOST_ITEMS
        || info.depth() > DEEPEST
        || info.streamBytes() > Frames.LONGEST) {
      return ObjectInputFilter.Status.REJECTED;
    }
    Class<?> type = info.serialClass();
    if (type == null) {
      return ObjectInputFilter.Status.UNDECIDED;
    }
    return isAllowed(type) ? ObjectInputFilter.Status.ALLOWED : ObjectInputFilter.Status.REJECTED;
  }

  private static boolean isAllowed(Class<?> type) {
    Class<?> plain = type;
    while (plain.isArray()) {
      plain = plain.getComponentType();
    }
    if (plain.isPrimitive()
        || LIBRARY.contains(plain.getName())
        || plain.getName().startsWith(UNCHANGING)) {
      return true;
    }
    // A constant with a body of its own has a class of its own.
    boolean value = plain.isRecord() || plain.isEnum() || Enum.class.isAssignableFrom(plain);
    return value && plain.getName().startsWith(OWN);
  }
}
