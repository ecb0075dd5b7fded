package facetwright.words;

import java.io.Serializable;
import java.util.List;

/**
 * A change of the script's text that would put a fault or a finding right, in the call at its site
 * unless said otherwise.
 */
public sealed interface Mend extends Serializable {

  /**
   * A word is written otherwise.
   *
   * @param written a name, or what stands between quotes
   * @param meant what to write in its place, without quotes too
   */
  record Word(String written, String meant) implements Mend {}

  /**
   * An argument is given another value.
   *
   * @param option the option's name in braces; empty for an argument in its place
   * @param place which argument, from 0; the braces' own place for an option
   * @param items the way into the argument where it is a list: an index from 0 for each depth;
   *     empty for all of it
   * @param value as the script writes it
   */
  record Value(String option, int place, List<Integer> items, String value) implements Mend {
    public Value {
      items = List.copyOf(items);
    }
  }

  /**
   * A length is written otherwise, where it stands as the number it was.
   *
   * @param option the option's name in the call's braces, wherever these stand; empty for an
   *     argument in its place
   * @param place which argument, from 0, where it is no option
   * @param items the way into it where it is a list, as above
   * @param from what it is, in mm
   * @param near the value nearest to that which does, in mm
   * @param far the farthest value that does, too; all between do
   */
  record Length(String option, int place, List<Integer> items, double from, double near, double far)
      implements Mend {
    public Length {
      items = List.copyOf(items);
    }
  }

  /**
   * Another sheet is taken, wherever the script says which.
   *
   * @param name of the sheet
   */
  record Sheet(String name) implements Mend {}

  /**
   * What the chain of calls at the site comes to is kept under the name that the chain begins with.
   *
   * @param name that name
   */
  record Keep(String name) implements Mend {}

  /**
   * The form that the chain of calls at the site comes to is unfolded.
   *
   * @param name what it is kept as; empty where it is kept as nothing, so that the chain goes on
   */
  record Unfold(String name) implements Mend {}
}
