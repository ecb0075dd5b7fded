package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.form.EdgeTab;
import facetwright.form.Lids;
import facetwright.message.Message;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
import facetwright.net.Opening;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.TuckFlap;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import facetwright.script.sandbox.CallException;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** The options of what holds without glue, the same on whatever it hangs. */
final class HoldArgs {
  private HoldArgs() {}

  private static Arg<?>[] joined(List<Arg<?>> first, Arg<?>... more) {
    List<Arg<?>> all = new ArrayList<>(first);
    all.addAll(List.of(more));
    return all.toArray(Arg<?>[]::new);
  }

  /** How wide a slot is. */
  static Arg<Double> slot() {
    return optional(
        "slot",
        Kinds.length(0.1, 5),
        "how wide the slot is; as the card is thick where left out, by the sheet named above. Under"
            + " "
            + Decimals.places(Opening.NARROWEST, 0)
            + " mm, which no knife cuts, it is a single cut, which lets card so thick through");
  }

  static double slot(Call call, Arg<Double> slot) {
    return call.has(slot) ? call.get(slot) : call.session().caliper();
  }

  /** Those of hooks. */
  record Hook(Arg<Double> depth, Arg<Double> relief, Arg<Double> bevel) {
    static Hook fresh() {
      return new Hook(
          usual("depth", Kinds.length(), 12.0, "how far the hooks reach"),
          usual(
              "relief",
              Kinds.length(0.1, 5),
              PairedFlap.USUAL_RELIEF,
              "how wide the cut of a hook is, at least as the card is thick, and how far its tip"
                  + " stays short of the end of the edge"),
          optional(
              "bevel",
              Kinds.degrees(0, 80),
              "how far the hooks' ends are cut back from square; 45, or what their depth leaves,"
                  + " where left out"));
    }

    Arg<?>[] with(Arg<?>... more) {
      return joined(List.of(depth, relief, bevel), more);
    }

    PairedFlap flap(Call call) {
      double back = call.has(bevel) ? call.get(bevel) : Double.NaN;
      return new PairedFlap(call.get(depth), back, Hold.HOOK, call.get(relief));
    }

    EdgeTab edge(Call call) {
      return EdgeTab.hooked(
          call.get(depth),
          call.has(bevel) ? 90 - call.get(bevel) : 0,
          call.get(relief),
          call.site());
    }
  }

  /** Those of a flap that is tucked in. */
  record Tuck(Arg<Double> depth, Arg<Double> relief, Arg<Double> bevel, Arg<Double> radius) {
    static Tuck fresh() {
      return new Tuck(
          usual("depth", Kinds.length(), 15.0, "how far it reaches in"),
          usual(
              "relief",
              Kinds.length(0, 20),
              TuckFlap.USUAL_RELIEF,
              "how far it is set back at each end of its hinge, so that it does not jam"),
          usual(
              "bevel",
              Kinds.degrees(0, 60),
              TuckFlap.USUAL_BEVEL,
              "how far its sides lean in from square"),
          optional(
              "radius",
              Kinds.length(0, 200),
              "of the arcs at its far corners, by which it slips in; a third of its depth, 5 mm at"
                  + " most, where left out; 0 for none"));
    }

    private double round(Call call) {
      return call.has(radius) ? call.get(radius) : Double.NaN;
    }

    Arg<?>[] after(Arg<?>... more) {
      return joined(List.of(depth, relief, bevel, radius), more);
    }

    TuckFlap flap(Call call, double fold) {
      return new TuckFlap(
          call.get(depth), call.get(relief), call.get(bevel), round(call), FoldAngle.degrees(fold));
    }

    Lids.Tuck lid(Call call, double dust) {
      return new Lids.Tuck(call.get(depth), call.get(relief), call.get(bevel), round(call), dust);
    }
  }

  /**
   * That a part is hinged where it goes.
   *
   * @param hinged the side
   * @param open how far it stands open
   */
  record Hinge(Arg<Side> hinged, Arg<Double> open) {
    /** How far what is hinged stands open where nothing is said, in degrees. */
    private static final double USUAL = 60;

    static Hinge fresh() {
      return new Hinge(
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
    static Arg<?>[] beside(Hinge hinge, Arg<?>... others) {
      List<Arg<?>> all = new ArrayList<>(List.of(others));
      if (hinge != null) {
        all.add(hinge.hinged);
        all.add(hinge.open);
      }
      return all.toArray(Arg<?>[]::new);
    }

    boolean isSaid(Call call) {
      return call.has(hinged);
    }

    /** The same of what stands by the other: hinged across from the way it stands there. */
    UnaryOperator<Placing> readAcross(Call call, Side stands) {
      boolean isAlong = stands == Side.RIGHT || stands == Side.LEFT;
      if (call.has(hinged)) {
        boolean isHingedAlong = call.get(hinged) == Side.RIGHT || call.get(hinged) == Side.LEFT;
        if (isAlong == isHingedAlong) {
          throw new CallException(
              Message.of(
                  "hinged: nothing meets at the %s of what stands at the %s",
                  call.get(hinged).name().toLowerCase(Locale.ROOT),
                  stands.name().toLowerCase(Locale.ROOT)),
              Message.text(
                  isAlong
                      ? "Hinge it at the \"back\" or the \"front\"."
                      : "Hinge it at the \"left\" or the \"right\"."),
              List.of());
        }
      }
      return read(call);
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
}
