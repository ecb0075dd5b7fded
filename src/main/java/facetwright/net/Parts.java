package facetwright.net;

import facetwright.geom.Vec2;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The parts that a maker tells apart, such as a box and its lid, and where each goes when all are
 * put together.
 *
 * @param all the parts, in the order of the script
 * @param placings where they go, in the order in which they are put together; no part goes to two
 *     places, and none to what is put on it
 */
public record Parts(List<Part> all, List<Placing> placings) implements Serializable {
  /** Of a net whose maker told no parts apart. */
  public static final Parts NONE = new Parts(List.of(), List.of());

  private static final Pattern NUMBER = Pattern.compile(" \\d+$");

  public Parts {
    all = List.copyOf(all);
    placings = List.copyOf(placings);
  }

  /**
   * One part.
   *
   * @param name what the maker calls it
   * @param panels its panels
   * @param stance how it stands by itself
   * @param first index of the first of those made like it: its own where it is that
   * @param imageOf index of the first of those whose mirror image it is, or {@link #NO_IMAGE}
   * @param caliper how thick its card is, in mm, or {@link #AS_ALL}
   * @param site where the script made it
   */
  public record Part(
      String name,
      List<Integer> panels,
      Stance stance,
      int first,
      int imageOf,
      double caliper,
      Site site)
      implements Serializable {
    /** Of a part that is nothing's mirror image. */
    public static final int NO_IMAGE = -1;

    /** Of the card that the design is of. */
    public static final double AS_ALL = Double.NaN;

    public Part {
      panels = List.copyOf(panels);
    }
  }

  /** Which side of another part one stands on, seen from above with the front toward the viewer. */
  public enum Side {
    RIGHT,
    LEFT,
    FRONT,
    BACK
  }

  /** How several that go into one opening lie, as the first of them stands by itself. */
  public enum Lie {
    /** Each to the right of the one before. */
    RIGHT,
    /** Each behind the one before. */
    BACK,
    /** Each on the one before. */
    TOP,
    /** As they fit: the first way that has room, of those without room that with most. */
    FOUND
  }

  /** Where a part goes. */
  public sealed interface Placing extends Serializable {
    /** As far as it goes, where no length is named. */
    double ALL_THE_WAY = Double.NaN;

    /** Index of the part that goes there. */
    int part();

    /** Index of the part that it goes to. */
    int onto();

    /**
     * How far it is turned from how it goes by itself, in degrees, counter-clockwise from above.
     */
    double turn();

    /** Where the script says so. */
    Site site();

    /** What it does there, in a word of the script. */
    default String word() {
      return switch (this) {
        case Over _ -> "over";
        case Into _ -> "into";
        case On _ -> "on";
        case Beside _, With _ -> "beside";
        case Hinged h -> h.shut().word();
      };
    }

    /** Where it goes, where hinged there as it is shut. */
    default Placing shut() {
      return this;
    }

    /**
     * It goes over the other, its opening first, as a lid or a sleeve does.
     *
     * @param by how far the other goes into it, in mm, or {@link #ALL_THE_WAY}
     */
    record Over(int part, int onto, double by, double turn, Site site) implements Placing {}

    /**
     * It goes into an opening of the other, as a drawer or an insert does.
     *
     * @param by how far it goes in, in mm, or {@link #ALL_THE_WAY}
     */
    record Into(int part, int onto, double by, double turn, Site site) implements Placing {}

    /**
     * It stands on the other.
     *
     * @param at its middle from the middle of what it stands on, to the right and to the back, in
     *     mm
     */
    record On(int part, int onto, Vec2 at, double turn, Site site) implements Placing {}

    /**
     * It stands on the table by the other.
     *
     * @param gap room between the two, in mm
     */
    record Beside(int part, int onto, Side side, double gap, double turn, Site site)
        implements Placing {}

    /**
     * It lies with others that go into one opening together. What comes of it is told by the form:
     * it stands beside one of them, or on it.
     *
     * @param onto index of the first of them
     * @param nth its place among them, from 1; the first has none
     * @param lie how they lie
     * @param gap room between two of them, in mm
     */
    record With(int part, int onto, int nth, Lie lie, double gap, Site site) implements Placing {
      @Override
      public double turn() {
        return 0;
      }
    }

    /**
     * It is hinged there along an edge, and stands open.
     *
     * @param shut how it lies shut: over the other or on it
     * @param edge the side of the other along which it is hinged
     * @param open how far it stands open, in degrees
     */
    record Hinged(Placing shut, Side edge, double open) implements Placing {
      @Override
      public int part() {
        return shut.part();
      }

      @Override
      public int onto() {
        return shut.onto();
      }

      @Override
      public double turn() {
        return shut.turn();
      }

      @Override
      public Site site() {
        return shut.site();
      }
    }
  }

  /** Whether parts are put together at all. */
  public boolean arePlaced() {
    return !placings.isEmpty();
  }

  /** Where this part goes; nothing where others go to it alone. */
  public Optional<Placing> placing(int part) {
    return placings.stream().filter(p -> p.part() == part).findFirst();
  }

  /** Of those made alike the first: its index, in the order of all. */
  public List<Integer> kinds() {
    return IntStream.range(0, all.size()).filter(p -> all.get(p).first() == p).boxed().toList();
  }

  /** How many are made like this part, itself counted. */
  public int count(int part) {
    int first = all.get(part).first();
    return (int) all.stream().filter(p -> p.first() == first).count();
  }

  /** What a part is called, of several made alike without a number where that tells it apart. */
  public String called(int part) {
    String name = all.get(part).name();
    String plain = plain(name);
    int first = all.get(part).first();
    boolean isOther =
        all.stream().anyMatch(p -> p.first() != first && plain(p.name()).equals(plain));
    return count(part) == 1 || isOther ? name : plain;
  }

  private static String plain(String name) {
    return NUMBER.matcher(name).replaceFirst("");
  }

  /** How thick the card of a part is, in mm, where that of the design is so thick. */
  public double caliper(int part, double usual) {
    double own = all.get(part).caliper();
    return Double.isNaN(own) ? usual : own;
  }

  /** How thick the card of a panel is, in mm, where that of the design is so thick. */
  public double caliperAt(int panel, double usual) {
    double own = of(panel).map(Part::caliper).orElse(Part.AS_ALL);
    return Double.isNaN(own) ? usual : own;
  }

  /** The part that a panel belongs to. */
  public Optional<Part> of(int panel) {
    return all.stream().filter(p -> p.panels().contains(panel)).findFirst();
  }

  /** Whether all that is named is there. */
  boolean nameWhatIsThere(int panels) {
    return all.stream().flatMap(p -> p.panels().stream()).allMatch(p -> p >= 0 && p < panels)
        && placings.stream()
            .flatMapToInt(p -> IntStream.of(p.part(), p.onto()))
            .allMatch(p -> p >= 0 && p < all.size());
  }
}
