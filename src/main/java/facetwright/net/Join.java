package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Two places of the net that end up together when the piece is made. */
public sealed interface Join extends Serializable {
  Site site();

  /** What holds them together. */
  Hold hold();

  /** The panel that is brought to the other: it carries the tab, or comes to lie under. */
  int from();

  /** The panel that it is brought to. */
  int onto();

  /**
   * Two sides meet along their length, the start of the one at the end of the other.
   *
   * @param a the side that carries the tab, where there is one
   * @param b the side it meets
   * @param tab the panel that lies under {@code b}'s panel, or −1 when the sides only meet
   */
  record Seam(EdgeRef a, EdgeRef b, int tab, Hold hold, Site site) implements Join {
    public static final int NO_TAB = -1;

    /** One that glue holds. */
    public Seam(EdgeRef a, EdgeRef b, int tab, Site site) {
      this(a, b, tab, Hold.GLUE, site);
    }

    @Override
    public int from() {
      return a.panel();
    }

    @Override
    public int onto() {
      return b.panel();
    }
  }

  /**
   * One panel lies flat on another.
   *
   * @param under the panel that ends up inside; a tongue, which goes through the other, outside
   * @param over the panel that it lies on
   */
  record Lap(int under, int over, Hold hold, Site site) implements Join {
    @Override
    public int from() {
      return under;
    }

    @Override
    public int onto() {
      return over;
    }
  }

  /**
   * The slot that a tongue goes through. The slots of a panel come in the order of the tongues that
   * go through it.
   */
  static Optional<Opening.Slot> slot(Net net, Lap tongue) {
    int before = 0;
    for (Join join : net.joins()) {
      if (join.equals(tongue)) {
        break;
      }
      if (join instanceof Lap l && l.hold == Hold.TONGUE && l.over == tongue.over) {
        before++;
      }
    }
    return net.panels().get(tongue.over).openings().stream()
        .filter(Opening.Slot.class::isInstance)
        .map(Opening.Slot.class::cast)
        .skip(before)
        .findFirst();
  }

  /** The panels that end up glued under another, or closed over an opening, in order. */
  static SortedSet<Integer> glued(Net net) {
    SortedSet<Integer> found = new TreeSet<>();
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).role() == PanelRole.TAB) {
        found.add(p);
      }
    }
    for (Join join : net.joins()) {
      int lying =
          switch (join) {
            case Seam s -> s.tab();
            case Lap l -> l.under();
          };
      if (join.hold().isGlued() && lying != Seam.NO_TAB) {
        found.add(lying);
      } else if (!join.hold().isGlued()) {
        found.remove(lying);
      }
    }
    return found;
  }

  /** What holds two places together that meet when the piece is made. */
  enum Hold {
    /** Glue, or tape where there is no tab. */
    GLUE("tab", "under which it is glued"),
    /** Friction: a flap is slipped in behind a panel, and comes out again. */
    TUCK("tuck", "behind which it is tucked"),
    /** Nothing: a dust flap folds in first, and what closes over it keeps it there. */
    FLAP("dust flap", "under which it folds in"),
    /** Two flaps, each cut free along half of the edge, that are pushed into each other's cut. */
    HOOK("hook", "behind which it hooks"),
    /**
     * A flap folded in behind the edge that it meets, with a tongue that comes out through a slot
     * farther on.
     */
    LATCH("tongue", "behind which it lies"),
    /** A tongue pushed through a slot and folded over behind it. */
    TONGUE("tongue", "behind which it is folded over");

    private final String word;
    private final String lying;

    Hold(String word, String lying) {
      this.word = word;
      this.lying = lying;
    }

    /** What a maker calls the flap. */
    public String word() {
      return word;
    }

    /** How it lies with its panel, as told after the panel's name. */
    public String lying() {
      return lying;
    }

    public boolean isGlued() {
      return this == GLUE;
    }
  }
}
