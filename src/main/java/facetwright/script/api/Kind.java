package facetwright.script.api;

import facetwright.words.Mend;
import java.util.ArrayList;
import java.util.List;

/**
 * A kind of value that a function takes.
 *
 * @param <T> what the value is read as
 */
public interface Kind<T> {

  /**
   * Reads a script's value.
   *
   * @throws Unfit when the value is not of this kind or out of its range
   */
  T read(Given value, Session session) throws Unfit;

  /** What is wanted, range included, such as "a whole number from 3 to 64". */
  String wanted();

  /** Words in quotes that it takes, to be offered while one writes; often none. */
  default List<String> words() {
    return List.of();
  }

  /** A value that is not what is wanted; {@code got} quotes it and says what is wrong. */
  final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    private final String instead;
    private final List<Integer> items;

    public Unfit(String got) {
      this(got, "");
    }

    /**
     * @param got quotes the value and says what is wrong
     * @param instead the nearest value that fits, as a script writes it; empty where none is known
     */
    public Unfit(String got, String instead) {
      this(got, instead, List.of());
    }

    private Unfit(String got, String instead, List<Integer> items) {
      super(got);
      this.instead = instead;
      this.items = List.copyOf(items);
    }

    /** The same, said of an item of a list, counted from 0. */
    Unfit ofItem(int item) {
      List<Integer> way = new ArrayList<>(List.of(item));
      way.addAll(items);
      return new Unfit("value " + (item + 1) + " of the list: " + getMessage(), instead, way);
    }

    /**
     * The change to the nearest value that fits; none where none is known.
     *
     * @param option the option's name; empty for an argument in its place
     * @param place which argument, from 0
     */
    List<Mend> mends(String option, int place) {
      return instead.isEmpty() ? List.of() : List.of(new Mend.Value(option, place, items, instead));
    }
  }
}
