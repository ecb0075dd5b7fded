package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.net.Parts.Placing;
import java.io.Serializable;
import java.util.List;

/**
 * The parts of a form put together.
 *
 * @param poses for each panel, the motion from its place in the flat net to where it is when all
 *     parts are together, those hinged open; none where no part goes anywhere
 * @param shut the same with all that is hinged shut
 * @param whole the panels of all that is put together to one thing, in order
 * @param stages how they come together from where they stand apart, one after the other
 * @param swings how what is hinged opens, what is hinged to what is hinged before it
 * @param nests what goes into what
 * @param refused what can't go where it is to go
 */
public record Together(
    List<Motion3> poses,
    List<Motion3> shut,
    List<Integer> whole,
    List<Stage> stages,
    List<Swing> swings,
    List<Nest> nests,
    List<Refused> refused)
    implements Serializable {
  /** Of a form whose parts go nowhere. */
  public static final Together NONE =
      new Together(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public Together {
    poses = List.copyOf(poses);
    shut = List.copyOf(shut);
    whole = List.copyOf(whole);
    stages = List.copyOf(stages);
    swings = List.copyOf(swings);
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
   * @param as what it does, of what lies with others what that comes to
   * @param panels what moves
   * @param motion from where it was to where it comes to
   * @param from whence it comes at last, straight: direction and length, in mm
   */
  public record Stage(int placing, Placing as, List<Integer> panels, Motion3 motion, Vec3 from)
      implements Serializable {
    public Stage {
      panels = List.copyOf(panels);
    }
  }

  /**
   * A part opens about its hinge, with all that has gone to it.
   *
   * @param placing which of the net's placings
   * @param panels what moves
   * @param from one end of the hinge, as all stands shut
   * @param to its other end; what opens turns counter-clockwise about the way from the one to the
   *     other
   * @param away the direction, of length 1, in which it comes off the other
   * @param radians how far it stands open
   */
  public record Swing(
      int placing, List<Integer> panels, Vec3 from, Vec3 to, Vec3 away, double radians)
      implements Serializable {
    public Swing {
      panels = List.copyOf(panels);
    }

    /** The motion from shut to open by so much, in radians. */
    public Motion3 turned(double by) {
      return Motion3.about(from, to, by);
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
   * @param with indices of all parts that go in at once, side by side, the inner one first
   * @param between what lies between these, across the way in
   * @param shared the volume that the two fill both, in mm³
   * @param off how far the opening stays from where the inner part is as wide as the room is told
   *     for, in mm; 0 where it goes past
   * @param slack how much more room there is in the opening for that, in mm on a side
   */
  public record Nest(
      int placing,
      int outer,
      int inner,
      double depth,
      double room,
      boolean isTube,
      List<Integer> with,
      Between between,
      double shared,
      double off,
      double slack)
      implements Serializable {
    public Nest {
      with = List.copyOf(with);
    }
  }

  /**
   * What lies between parts that go into one opening side by side.
   *
   * @param times how many times one lies by another
   * @param mm the room that all these have between them
   */
  public record Between(int times, double mm) implements Serializable {}

  /**
   * A part that can't go where it is to go. It stays where it stands.
   *
   * @param placing which of the net's placings
   * @param why what is in the way
   * @param remedy what to do
   */
  public record Refused(int placing, Message why, Message remedy) implements Serializable {}
}
