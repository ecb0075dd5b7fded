package facetwright.fold.pose;

import facetwright.fold.touch.Collision;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * A net folded up. It stands on the table: z up, lowest point at z = 0.
 *
 * @param poses for each panel, the motion from its place in the flat net to its place in the form,
 *     its bodies apart
 * @param gaps for each join, how far it misses; empty where the form is not solved
 * @param tears for each score that closes a loop, how far its sides miss; empty where the form is
 *     not solved
 * @param closure whether it closes
 * @param strains the panels that have to bend for the joins to meet, in panel order; empty for an
 *     exact folding, and where no bending brings the joins together. Where the form is open, what
 *     it would take
 * @param free the scores that nothing determines, where the form is not solved
 * @param collisions panels that are where others are; none where the form is not solved
 * @param locked corners that are to be folded flat and can't be; none where the form is not solved
 * @param measures what it measures; where parts are put together, the whole
 * @param together the parts put together
 */
public record FoldedForm(
    List<Motion3> poses,
    List<JoinGap> gaps,
    List<ScoreGap> tears,
    Closure closure,
    List<PanelStrain> strains,
    List<Integer> free,
    List<Collision> collisions,
    List<FlatFolding> locked,
    Measures measures,
    Together together)
    implements Serializable {

  public FoldedForm {
    poses = List.copyOf(poses);
    gaps = List.copyOf(gaps);
    tears = List.copyOf(tears);
    strains = List.copyOf(strains);
    free = List.copyOf(free);
    collisions = List.copyOf(collisions);
    locked = List.copyOf(locked);
  }

  /** One whose parts go nowhere. */
  public FoldedForm(
      List<Motion3> poses,
      List<JoinGap> gaps,
      List<ScoreGap> tears,
      Closure closure,
      List<PanelStrain> strains,
      List<Integer> free,
      List<Collision> collisions,
      List<FlatFolding> locked,
      Measures measures) {
    this(poses, gaps, tears, closure, strains, free, collisions, locked, measures, Together.NONE);
  }

  /** Where each panel is when all parts are put together; where none go anywhere, as they stand. */
  public List<Motion3> whole() {
    return together.isSome() ? together.poses() : poses;
  }

  /** The same as it stands whole: its panels are where they are when all parts are together. */
  public FoldedForm standing() {
    return new FoldedForm(
        whole(), gaps, tears, closure, strains, free, collisions, locked, measures, together);
  }

  /** The same, its parts put together. */
  public FoldedForm with(Together made, Measures whole) {
    return new FoldedForm(
        poses, gaps, tears, closure, strains, free, collisions, locked, whole, made);
  }

  /** Whether it closes, be it that the card bends a little or a hair is forgiven. */
  public boolean closes() {
    return switch (closure) {
      case CLOSES, CLOSES_WITH_STRAIN, FORGIVEN -> true;
      case IN_ITSELF, OPEN, NOT_SOLVED -> false;
    };
  }

  /** Whether it closes and no panel, not even a tab, is in another's way. */
  public boolean canBeMade(Net net) {
    return closes() && obstacles(net).isEmpty();
  }

  /** Panels that can't be where they are, be it that panels bend by as much as the form takes. */
  public List<Collision> obstacles(Net net) {
    double bend = closure == Closure.CLOSES_WITH_STRAIN ? bend(net) : 0;
    return collisions.stream()
        .filter(Collision::isInTheWay)
        .filter(c -> c.isInOnePlace() || c.depth() > bend)
        .toList();
  }

  /** The strain of the panel that bends most; 0 where none does, and where something misses. */
  public double strain() {
    return closure == Closure.OPEN || closure == Closure.FORGIVEN
        ? 0
        : worst().map(PanelStrain::part).orElse(0.0);
  }

  /** The panel that bends most, or where something misses would have to. */
  public Optional<PanelStrain> worst() {
    return strains.stream().max(Comparator.comparingDouble(PanelStrain::part));
  }

  /** The same form, with the bending it would take to close it. */
  public FoldedForm needing(List<PanelStrain> bends) {
    return new FoldedForm(
        poses, gaps, tears, closure, bends, free, collisions, locked, measures, together);
  }

  /** The largest gap or tear in mm, 0 where there is none. */
  public double gap() {
    return DoubleStream.concat(
            gaps.stream().mapToDouble(JoinGap::mm), tears.stream().mapToDouble(ScoreGap::mm))
        .max()
        .orElse(0);
  }

  /**
   * How far places that meet stand from each other at most, in mm, each panel flat where its pose
   * puts it. That is the {@link #gap}, and where panels have to bend to bring it to nothing, what
   * they leave as long as they don't.
   */
  public double apart(Net net) {
    double most = gap();
    if (closure == Closure.CLOSES_WITH_STRAIN) {
      for (Join join : net.joins()) {
        if (join instanceof Join.Seam seam) {
          most = Math.max(most, Gaps.seam(net, poses, seam.a(), seam.b()));
        }
      }
      for (Score score : net.scores()) {
        most = Math.max(most, Gaps.seam(net, poses, score.a(), score.b()));
      }
    }
    return most;
  }

  /** How far corners that meet may stand from each other because their panels bend, in mm. */
  public double bend(Net net) {
    return closure == Closure.OPEN || closure == Closure.FORGIVEN
        ? 0
        : 2 * strains.stream().mapToDouble(s -> s.mm(net)).max().orElse(0);
  }

  /** What some of its panels measure as they stand, such as those of a lid beside its box. */
  public Measures measures(Net net, List<Integer> panels) {
    return new Body(net, poses, panels, Closure.within(net)).measure();
  }

  /** The corners of a panel in space. */
  public List<Vec3> corners(Net net, int panel) {
    return net.panels().get(panel).outline().corners().stream()
        .map(c -> poses.get(panel).apply(c))
        .toList();
  }
}
