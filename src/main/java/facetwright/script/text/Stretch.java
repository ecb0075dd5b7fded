package facetwright.script.text;

/**
 * A stretch of text.
 *
 * @param start offset of its first character
 * @param end offset after its last
 */
public record Stretch(int start, int end) {
  public boolean holds(int offset) {
    return start <= offset && offset < end;
  }

  public boolean isEmpty() {
    return end <= start;
  }

  /**
   * Where it lies after a change of the text around or in it; what is typed at its end joins it.
   *
   * @param at where the change begins
   * @param removed how many characters went
   * @param added how many came
   */
  public Stretch moved(int at, int removed, int added) {
    return new Stretch(moved(start, at, removed, added), moved(end, at, removed, added));
  }

  private static int moved(int offset, int at, int removed, int added) {
    return offset < at || (offset == at && removed == 0 && added == 0)
        ? offset
        : offset >= at + removed ? offset + added - removed : at + added;
  }
}
