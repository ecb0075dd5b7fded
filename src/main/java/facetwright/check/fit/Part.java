package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Outlines;
import facetwright.check.finding.Subject;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A body of a design that other bodies may go over or into.
 *
 * @param panel index of the panel it is called by
 * @param use what its name says it is for
 * @param word the word of its name that says so; empty where none does
 * @param mouths its openings that something may go into
 * @param sections what it may go into an opening with
 */
record Part(int panel, Use use, String word, List<Mouth> mouths, List<Section> sections) {
  private static final Set<String> LIDS = Set.of("lid", "cover", "cap");
  private static final Set<String> SLEEVES = Set.of("sleeve", "slipcase", "case", "shell");
  private static final Set<String> INNERS =
      Set.of("drawer", "insert", "liner", "lining", "inlay", "inner", "neck");

  /** A facet leans from another by less than this, or is square to it to within this. */
  private static final double SQUARE = Math.sin(Math.toRadians(2));

  /** What a part is for. */
  enum Use {
    /** It goes over another. */
    LID,
    /** Another is pushed into it. */
    SLEEVE,
    /** It goes into another. */
    INNER,
    /** Its name does not say. */
    UNTOLD
  }

  /**
   * An opening with walls square to it.
   *
   * @param outline seen from within
   * @param depth how far the body reaches from it, in mm
   * @param isTube whether the body is open at the other end, too
   * @param lining what is glued to its walls
   */
  record Mouth(Polygon2 outline, double depth, boolean isTube, Lining lining) {}

  /**
   * What a body is seen from one side.
   *
   * @param outline seen from within, its own rim or the side it shows
   * @param first how many walls it has that its first side runs square to
   * @param second how many walls it has along its first side
   * @param depth how far the body reaches from there, in mm
   * @param isFaceOn whether it is seen at its rim, or has none
   * @param isHanded whether it can't be turned over as well
   * @param lining what is glued to its walls
   */
  record Section(
      Polygon2 outline,
      int first,
      int second,
      double depth,
      boolean isFaceOn,
      boolean isHanded,
      Lining lining) {}

  static Part of(Subject subject, List<Integer> body) {
    List<Integer> facets =
        body.stream().filter(p -> subject.panel(p).role() == PanelRole.FACET).toList();
    int largest =
        facets.stream()
            .max(
                Comparator.<Integer>comparingDouble(
                        p -> Math.rint(subject.panel(p).outline().area() * 1e6))
                    .thenComparing(Comparator.reverseOrder()))
            .orElse(body.getFirst());
    int first = facets.isEmpty() ? body.getFirst() : facets.getFirst();
    String word = word(subject, first).or(() -> word(subject, largest)).orElse("");
    Use use = useOf(word);
    List<Mouth> mouths = new ArrayList<>();
    List<Section> sections = new ArrayList<>();
    Optional<Block> block = Block.of(subject, body);
    Optional<Rim> rim = block.isPresent() ? Optional.empty() : Rim.of(subject, body);
    if (block.isPresent()) {
      square(subject, body, block.get(), mouths, sections);
    } else if (rim.isPresent()) {
      Rim r = rim.get();
      if (r.isSquare()) {
        mouths.add(new Mouth(r.outline(), r.depth(), r.isTube(), r.lining()));
      }
      if (r.isWidest()) {
        sections.add(new Section(r.outline(), 2, 2, r.depth(), true, !r.isTube(), r.lining()));
      }
    } else {
      closed(subject, facets).ifPresent(sections::add);
    }
    return new Part(largest, use, word, List.copyOf(mouths), List.copyOf(sections));
  }

  private static Optional<String> word(Subject subject, int panel) {
    return word(subject.panel(panel).name());
  }

  private static Optional<String> word(String name) {
    for (String word : name.toLowerCase(Locale.ROOT).split("[^a-z]+")) {
      if (useOf(word) != Use.UNTOLD) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private static Use useOf(String word) {
    return LIDS.contains(word)
        ? Use.LID
        : SLEEVES.contains(word) ? Use.SLEEVE : INNERS.contains(word) ? Use.INNER : Use.UNTOLD;
  }

  /** What a name says that its bearer is for. */
  static Use use(String name) {
    return word(name).map(Part::useOf).orElse(Use.UNTOLD);
  }

  private static void square(
      Subject subject,
      List<Integer> body,
      Block block,
      List<Mouth> mouths,
      List<Section> sections) {
    boolean isClosed = block.walls().stream().allMatch(w -> w.get(0) && w.get(1));
    for (int d = 0; d < 3; d++) {
      int one = (d + 1) % 3;
      int two = (d + 2) % 3;
      if (Math.min(block.size().get(one), block.size().get(two)) < Mm.HAIR) {
        continue;
      }
      Polygon2 outline = Polygon2.rectangle(0, 0, block.size().get(one), block.size().get(two));
      double depth = block.size().get(d);
      Lining lining =
          Lining.of(
              subject, body, outline, block.origin(), block.axes().get(one), block.axes().get(two));
      if (block.isOpen(d)) {
        mouths.add(new Mouth(outline, depth, block.walls(d) == 0, lining));
      }
      boolean isFaceOn = isClosed || block.isOpen(d);
      sections.add(
          new Section(outline, block.walls(one), block.walls(two), depth, isFaceOn, false, lining));
    }
  }

  /** The end of a closed body that all its other facets are square to, or face as it does. */
  private static Optional<Section> closed(Subject subject, List<Integer> facets) {
    for (int end : facets) {
      Vec3 axis = subject.folded().poses().get(end).ez();
      boolean isEnd =
          facets.stream()
              .map(p -> Math.abs(subject.folded().poses().get(p).ez().dot(axis)))
              .allMatch(c -> c < SQUARE || c > 1 - SQUARE);
      List<Vec2> plain = Outlines.plain(subject.panel(end).outline().corners());
      if (isEnd && plain.size() > 4) {
        Polygon2 outline = Polygon2.ofEitherSense(plain);
        Lining bare = Lining.none(outline.size());
        return Optional.of(new Section(outline, 2, 2, 0, true, false, bare));
      }
    }
    return Optional.empty();
  }

  boolean isTube() {
    return mouths.stream().anyMatch(Mouth::isTube);
  }
}
