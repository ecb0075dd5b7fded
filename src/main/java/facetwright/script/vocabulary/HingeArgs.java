package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;

import facetwright.message.Message;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import facetwright.script.sandbox.CallException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * That a part is hinged where it goes.
 *
 * @param hinged the side
 * @param open how far it stands open
 */
record HingeArgs(Arg<Side> hinged, Arg<Double> open) {
  /** How far what is hinged stands open where nothing is said, in degrees. */
  private static final double USUAL = 60;

  static HingeArgs fresh() {
    return new HingeArgs(
        optional(
            "hinged",
            Kinds.word(Side.class),
            "the side at which it is hinged by a strip; it is told whether it opens without"
                + " catching"),
        optional(
            "open",
            Kinds.degrees(0, 270),
            "how far what is hinged stands open in pictures, 60 degrees where left out; sizes are"
                + " those of the whole shut"));
  }

  /** The options of a call, these among them where there are any. */
  static Arg<?>[] beside(HingeArgs hinge, Arg<?>... others) {
    List<Arg<?>> all = new ArrayList<>(List.of(others));
    if (hinge != null) {
      all.add(hinge.hinged);
      all.add(hinge.open);
    }
    return all.toArray(Arg<?>[]::new);
  }

  /** How a placing is hinged, as the call says; left alone where it is not. */
  UnaryOperator<Placing> read(Call call) {
    if (!call.has(hinged)) {
      if (call.has(open)) {
        throw new CallException(
            Message.text("open: nothing is hinged"),
            Message.text("Say at which side it opens: { hinged: \"back\", open: 60 }."),
            List.of());
      }
      return UnaryOperator.identity();
    }
    Side side = call.get(hinged);
    double degrees = call.has(open) ? call.get(open) : USUAL;
    return placing -> new Placing.Hinged(placing, side, degrees);
  }
}
