package facetwright.script.api;

import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Count;
import facetwright.words.Mend;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
  Message wants();

  /** The same in words, its lengths in millimetres. */
  default String wanted() {
    return wants().text(Unit.MM);
  }

  /** What a number that it takes counts, or each number of a list; empty where it takes none. */
  default Optional<Quantity> counts() {
    return Optional.empty();
  }

  /** Words in quotes that it takes, to be offered while one writes; often none. */
  default List<String> words() {
    return List.of();
  }

  /** A value that is not what is wanted; {@code got} quotes it and says what is wrong. */
  final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    private final Message told;
    private final String instead;
    private final List<Integer> items;
    private final boolean isOfSize;

    public Unfit(String got) {
      this(got, "");
    }

    /**
     * @param got quotes the value and says what is wrong
     * @param instead the nearest value that fits, as a script writes it; empty where none is known
     */
    public Unfit(String got, String instead) {
      this(Message.text(got), instead);
    }

    /** One that quotes a value. */
    public Unfit(Message got, String instead) {
      this(got, instead, List.of(), false);
    }

    private Unfit(Message got, String instead, List<Integer> items, boolean isOfSize) {
      super(got.text(Unit.MM));
      this.told = got;
      this.instead = instead;
      this.items = List.copyOf(items);
      this.isOfSize = isOfSize;
    }

    /** A list of the right sort, but too short or too long. */
    static Unfit ofSize(long size, boolean isShort) {
      return new Unfit(
          Message.text(
              "a list of " + Count.of(size, "value") + " is too " + (isShort ? "short" : "long")),
          "",
          List.of(),
          true);
    }

    boolean isOfSize() {
      return isOfSize;
    }

    /** What is wrong, with its values. */
    Message told() {
      return told;
    }

    /** "Did you mean …? ", where a word in quotes is the nearest that fits; else nothing. */
    String meant() {
      return instead.startsWith("\"") && Character.isLetter(instead.charAt(1))
          ? "Did you mean " + instead + "? "
          : "";
    }

    /** The same, said of an item of a list, counted from 0. */
    Unfit ofItem(int item) {
      List<Integer> way = new ArrayList<>(List.of(item));
      way.addAll(items);
      return new Unfit(Message.of("value %s of the list: %s", item + 1, told), instead, way, false);
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
