package facetwright.net;

import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Segment2;
import facetwright.net.fitting.Fittings;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A flat net that has passed its invariants:
 *
 * <ul>
 *   <li>every outline is simple, and its openings lie inside it and apart from each other;
 *   <li>every side is exactly one of boundary, scored to one other panel, or slit from one other
 *       panel;
 *   <li>the two sides of a score or slit run along the same line, opposite ways, to 1e-6 mm;
 *   <li>joins, layers and the stance name panels, sides and corners that exist.
 * </ul>
 *
 * <p>What it does not promise: that panels do not overlap, that it fits a sheet, that it closes.
 * Those are findings, not invariants.
 *
 * @param panels all panels; other parts name them by their index here
 * @param scores the creases
 * @param slits cuts that two panels share
 * @param joins what meets when made
 * @param layers decorative papers
 * @param ticks light marks
 * @param cutaways card cut away, so that it is known which line freed a side
 * @param stance how it stands when made
 * @param parts what its maker calls a part, and where each goes
 * @param fittings what goes in and on
 */
public record Net(
    List<Panel> panels,
    List<Score> scores,
    List<Slit> slits,
    List<Join> joins,
    List<Layer> layers,
    List<Tick> ticks,
    List<Cutaway> cutaways,
    Stance stance,
    Parts parts,
    Fittings fittings)
    implements Serializable {

  /**
   * @throws NetException when an invariant is broken, with the script place of the broken part
   */
  public Net {
    panels = List.copyOf(panels);
    scores = List.copyOf(scores);
    slits = List.copyOf(slits);
    joins = List.copyOf(joins);
    layers = List.copyOf(layers);
    ticks = List.copyOf(ticks);
    cutaways = List.copyOf(cutaways);
    NetInvariants.check(panels, scores, slits, joins, layers, stance);
    if (!parts.nameWhatIsThere(panels.size()) || !fittings.nameWhatIsThere(panels.size())) {
      throw new NetException("a part or a fitting names no panel or no part", Site.NONE);
    }
  }

  /** One whose maker told no parts apart, and that nothing goes in or on. */
  public Net(
      List<Panel> panels,
      List<Score> scores,
      List<Slit> slits,
      List<Join> joins,
      List<Layer> layers,
      List<Tick> ticks,
      List<Cutaway> cutaways,
      Stance stance) {
    this(panels, scores, slits, joins, layers, ticks, cutaways, stance, Parts.NONE, Fittings.NONE);
  }

  /** What a side of a panel is. */
  public sealed interface EdgeUse {
    record Boundary() implements EdgeUse {}

    record Scored(Score score) implements EdgeUse {}

    record SlitFrom(Slit slit) implements EdgeUse {}
  }

  /** Where a side lies in the net, running counter-clockwise round its panel. */
  public Segment2 segment(EdgeRef ref) {
    return panels.get(ref.panel()).outline().side(ref.edge());
  }

  public EdgeUse use(EdgeRef ref) {
    for (Score score : scores) {
      if (score.a().equals(ref) || score.b().equals(ref)) {
        return new EdgeUse.Scored(score);
      }
    }
    for (Slit slit : slits) {
      if (slit.a().equals(ref) || slit.b().equals(ref)) {
        return new EdgeUse.SlitFrom(slit);
      }
    }
    return new EdgeUse.Boundary();
  }

  /** All sides that are neither scored nor slit, in panel order. */
  public List<EdgeRef> boundary() {
    boolean[][] used = new boolean[panels.size()][];
    Arrays.setAll(used, i -> new boolean[panels.get(i).outline().size()]);
    for (Score s : scores) {
      used[s.a().panel()][s.a().edge()] = true;
      used[s.b().panel()][s.b().edge()] = true;
    }
    for (Slit s : slits) {
      used[s.a().panel()][s.a().edge()] = true;
      used[s.b().panel()][s.b().edge()] = true;
    }
    List<EdgeRef> free = new ArrayList<>();
    for (int p = 0; p < used.length; p++) {
      for (int e = 0; e < used[p].length; e++) {
        if (!used[p][e]) {
          free.add(new EdgeRef(p, e));
        }
      }
    }
    return List.copyOf(free);
  }

  /** For each panel, which piece it belongs to: 0, 1, …, in order of each piece's first panel. */
  public int[] pieceOfPanel() {
    List<List<Integer>> neighbours = new ArrayList<>();
    panels.forEach(_ -> neighbours.add(new ArrayList<>()));
    for (Score s : scores) {
      neighbours.get(s.a().panel()).add(s.b().panel());
      neighbours.get(s.b().panel()).add(s.a().panel());
    }
    int[] piece = new int[panels.size()];
    Arrays.fill(piece, -1);
    int count = 0;
    for (int start = 0; start < piece.length; start++) {
      if (piece[start] >= 0) {
        continue;
      }
      List<Integer> open = new ArrayList<>(List.of(start));
      piece[start] = count;
      while (!open.isEmpty()) {
        for (int next : neighbours.get(open.removeLast())) {
          if (piece[next] < 0) {
            piece[next] = count;
            open.add(next);
          }
        }
      }
      count++;
    }
    return piece;
  }

  /** The box round each piece as it lies in the net. */
  public List<Box2> boxOfPiece() {
    int[] piece = pieceOfPanel();
    List<Box2> boxes = new ArrayList<>();
    for (int p = 0; p < piece.length; p++) {
      Box2 box = panels.get(p).outline().box();
      if (piece[p] < boxes.size()) {
        boxes.set(piece[p], boxes.get(piece[p]).union(box));
      } else {
        boxes.add(box);
      }
    }
    return boxes;
  }

  /** How many pieces of card it is cut as. */
  public int pieces() {
    return Arrays.stream(pieceOfPanel()).max().orElse(-1) + 1;
  }

  /** How many separate cuts: free sides, arcs, slits and openings, each counted once. */
  public int cuts() {
    // All the sides that stand for one arc are one cut.
    int bows =
        panels.stream()
            .flatMap(p -> p.outline().arcs().stream())
            .mapToInt(a -> a.sides() - 1)
            .sum();
    return boundary().size()
        - bows
        + slits.size()
        + panels.stream().mapToInt(p -> p.openings().size()).sum();
  }

  /** The upright box around all panels. */
  public Box2 box() {
    return panels.stream().map(p -> p.outline().box()).reduce(Box2::union).orElseThrow();
  }

  /** The same net, its panels called so, in order. */
  public Net renamed(List<String> names) {
    List<Panel> named =
        IntStream.range(0, names.size()).mapToObj(i -> panels.get(i).named(names.get(i))).toList();
    return new Net(named, scores, slits, joins, layers, ticks, cutaways, stance, parts, fittings);
  }

  /** The same net, its parts told apart. */
  public Net with(Parts told) {
    return new Net(panels, scores, slits, joins, layers, ticks, cutaways, stance, told, fittings);
  }

  /** The same net, standing otherwise. */
  public Net with(Stance other) {
    return new Net(panels, scores, slits, joins, layers, ticks, cutaways, other, parts, fittings);
  }

  /** The same net, other things in and on it. */
  public Net with(Fittings fit) {
    return fit.equals(fittings)
        ? this
        : new Net(panels, scores, slits, joins, layers, ticks, cutaways, stance, parts, fit);
  }

  /**
   * The same net with other scores, such as the same ones folded the other way.
   *
   * @throws NetException as when it is made
   */
  public Net scored(List<Score> others) {
    return new Net(panels, others, slits, joins, layers, ticks, cutaways, stance, parts, fittings);
  }

  /**
   * The same net with other joins.
   *
   * @throws NetException as when it is made
   */
  public Net joined(List<Join> others) {
    return new Net(panels, scores, slits, others, layers, ticks, cutaways, stance, parts, fittings);
  }

  /**
   * The same net with each piece moved on the sheet. Two pieces that a slit parts no longer share
   * it when they are moved apart: its sides are boundary then.
   */
  public Net moved(List<Motion2> motionOfPiece) {
    int[] piece = pieceOfPanel();
    List<Panel> moved =
        IntStream.range(0, piece.length)
            .mapToObj(i -> panels.get(i).moved(motionOfPiece.get(piece[i])))
            .toList();
    List<Tick> movedTicks =
        ticks.stream().map(t -> t.moved(motionOfPiece.get(piece[t.panel()]))).toList();
    List<Slit> shared =
        slits.stream()
            .filter(
                s ->
                    motionOfPiece
                        .get(piece[s.a().panel()])
                        .equals(motionOfPiece.get(piece[s.b().panel()])))
            .toList();
    return new Net(
        moved, scores, shared, joins, layers, movedTicks, cutaways, stance, parts, fittings);
  }
}
