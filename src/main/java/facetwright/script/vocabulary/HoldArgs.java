package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.form.EdgeTab;
import facetwright.form.Lids;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.TuckFlap;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import java.util.ArrayList;
import java.util.List;

/** The options of flaps that hold without glue, the same on whatever they hang. */
final class HoldArgs {
  private HoldArgs() {}

  private static Arg<?>[] joined(List<Arg<?>> first, Arg<?>... more) {
    List<Arg<?>> all = new ArrayList<>(first);
    all.addAll(List.of(more));
    return all.toArray(Arg<?>[]::new);
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

    Arg<?>[] all() {
      return joined(List.of(depth, relief, bevel));
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
  record Tuck(Arg<Double> depth, Arg<Double> relief, Arg<Double> bevel) {
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
              "how far its sides lean in from square"));
    }

    Arg<?>[] after(Arg<?>... more) {
      return joined(List.of(depth, relief, bevel), more);
    }

    TuckFlap flap(Call call, double fold) {
      return new TuckFlap(
          call.get(depth), call.get(relief), call.get(bevel), FoldAngle.degrees(fold));
    }

    Lids.Tuck lid(Call call, double dust) {
      return new Lids.Tuck(call.get(depth), call.get(relief), call.get(bevel), dust);
    }
  }
}
