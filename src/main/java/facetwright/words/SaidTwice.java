package facetwright.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a script says twice of the same, so that one of the two is lost. */
public final class SaidTwice {
  /** So many are kept; more of them tell nothing new. */
  private static final int MOST = 50;

  /** What becomes of it. */
  public enum Effect {
    /** The later takes the place of the earlier, of which nothing is left. */
    REPLACES,
    /** The later adds nothing. */
    IDLE,
    /** Both are made, in one place. */
    BESIDE,
    /** Two things are given one name. */
    ALIKE
  }

  /**
   * Something said twice.
   *
   * @param word by which it is said, such as "layer"
   * @param of of what; empty where that is not one thing
   * @param effect what becomes of it
   * @param first where it was said first
   * @param again where it is said again
   */
  public record Twice(String word, String of, Effect effect, Site first, Site again) {
    /** Whether one line says both. */
    public boolean isInOnePlace() {
      return first.equals(again);
    }

    private Twice anyhow() {
      return new Twice(word, "", effect, first, again);
    }
  }

  private final Set<Twice> known = new HashSet<>();
  private final List<Twice> all = new ArrayList<>();
  private final Set<Site> counting = new HashSet<>();
  private final Map<String, Site> once = new HashMap<>();

  /** Something was said twice; of one word in one place after another the first is kept. */
  public void add(Twice twice) {
    if (all.size() < MOST && known.add(twice.anyhow())) {
      all.add(twice);
    }
  }

  /** Work that another notes in; it is noted here, too, once the work is done. */
  public <T> Supplier<T> with(SaidTwice other, Supplier<T> work) {
    return () -> {
      T made = work.get();
      other.all.forEach(this::add);
      return made;
    };
  }

  /** The later takes the place of the earlier. */
  public void replaced(String word, String of, Site first, Site again) {
    add(new Twice(word, of, Effect.REPLACES, first, again));
  }

  /**
   * What was said is said anew.
   *
   * @param before each thing said before, as often as it stood somewhere
   * @param after all that is said now
   * @param site where a thing was said
   */
  public <T> void replaced(
      String word, Collection<T> before, Collection<T> after, Function<T, Site> site, Site again) {
    Set<T> gone = new LinkedHashSet<>(before);
    gone.removeAll(new HashSet<>(after));
    gone.forEach(t -> replaced(word, "", site.apply(t), again));
  }

  /** The later adds nothing. */
  public void idle(String word, String of, Site first, Site again) {
    add(new Twice(word, of, Effect.IDLE, first, again));
  }

  /** Both are made, in one place. */
  public void beside(String word, String of, Site first, Site again) {
    add(new Twice(word, of, Effect.BESIDE, first, again));
  }

  /** Two things are given one name. */
  public void alike(String word, String name, Site first, Site again) {
    add(new Twice(word, name, Effect.ALIKE, first, again));
  }

  /** What was said at a place has come to something after all. */
  public void counts(Site site) {
    counting.add(site);
  }

  /** Where what may stand once stood before; {@link Site#NONE} where it stands here first. */
  public Site before(String word, Site here) {
    Site first = once.putIfAbsent(word, here);
    return first == null ? Site.NONE : first;
  }

  /** All that was said twice, in the order in which it was found. */
  public List<Twice> all() {
    return all.stream()
        .filter(
            t -> t.effect() != Effect.REPLACES || t.isInOnePlace() || !counting.contains(t.first()))
        .toList();
  }
}
