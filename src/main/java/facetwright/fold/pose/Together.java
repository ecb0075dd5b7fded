package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import java.io.Serializable;
import java.util.List;

/**
 * The parts of a form put together.
 *
 * @param poses for each panel, the motion from its place in the flat net to where it is when all
 *     parts are together; none where no part goes anywhere
 * @param whole the panels of all that is put together to one thing, in order
 * @param stages how they come together from where they stand apart, one after the other
 * @param nests what goes into what
 * @param refused what can't go where it is to go
 */
public record Together(
    List<Motion3> poses,
    List<Integer> whole,
    List<Stage> stages,
    List<Nest> nests,
    List<Refused> refused)
    implements Serializable {
  /** Of a form whose parts go nowhere. */
  public static final Together NONE =
      new Together(List.of(), List.of(), List.of(), List.of(), List.of());

  public Together {
    poses = List.copyOf(poses);
    whole = List.copyOf(whole);
    stages = List.copyOf(stages);
    nests = List.copyOf(nests);
    refused = List.copyOf(refused);
  }

  /** Whether parts go anywhere. */
  public boolean isSome() {
    return !poses.isEmpty();
  }

  /**
   * A part goes to another, with all that has gone to it before.
   *
   * @param placing which of the net's placings
   * @param panels what moves
   * @param motion from where it was to where it comes to
   * @param from whence it comes at last, straight: direction and length, in mm
   */
  public record Stage(int placing, List<Integer> panels, Motion3 motion, Vec3 from)
      implements Serializable {
    public Stage {
      panels = List.copyOf(panels);
    }
  }

  /**
   * A part that goes into another.
   *
   * @param placing which of the net's placings
   * @param outer index of the part that goes round
   * @param inner index of the part inside
   * @param depth how far it goes in, in mm
   * @param room between the lines of the two nets on the side where there is least, in mm; below 0
   *     where the inner one stands over
   * @param isTube whether the outer part is open at both ends
   * @param shared the volume that the two fill both, in mm³
   */
  public record Nest(
      int placing, int outer, int inner, double depth, double room, boolean isTube, double shared)
      implements Serializable {}

  /**
   * A part that can't go where it is to go. It stays where it stands.
   *
   * @param placing which of the net's placings
   * @param why what is in the way
   * @param remedy what to do
   */
  public record Refused(int placing, Message why, Message remedy) implements Serializable {}
}
