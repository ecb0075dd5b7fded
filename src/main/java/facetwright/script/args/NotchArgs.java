package facetwright.script.args;

import static facetwright.script.api.Arg.needed;
import static facetwright.script.api.Arg.optional;
import static facetwright.script.api.Arg.usual;

import facetwright.net.Ask;
import facetwright.net.panel.Notch;
import facetwright.net.panel.NotchShape;
import facetwright.script.api.Arg;
import facetwright.script.api.Call;
import facetwright.script.api.Kinds;
import java.util.ArrayList;
import java.util.List;

/** What every function that cuts a notch is asked. */
public record NotchArgs(
    Arg<Double> at, Arg<Double> width, Arg<Double> depth, Arg<NotchShape> shape) {

  /** Of which the place may be left out. */
  public static NotchArgs inMiddle() {
    return new NotchArgs(
        optional(
            "at",
            Kinds.length(0, Ask.LONGEST),
            "where its middle is, from the edge's left end; the edge's middle where left out"),
        needed("width", Kinds.length(), "how wide its mouth is"),
        needed("depth", Kinds.length(), "how deep it is"),
        usual("shape", Kinds.word(NotchShape.class), NotchShape.V, "to a point, square, or round"));
  }

  /** All of them, one before. */
  public Arg<?>[] with(Arg<?> first) {
    List<Arg<?>> all = new ArrayList<>(List.of(first));
    all.addAll(List.of(all()));
    return all.toArray(Arg<?>[]::new);
  }

  public Arg<?>[] all() {
    return new Arg<?>[] {at, width, depth, shape};
  }

  public Notch read(Call call) {
    return new Notch(
        call.has(at) ? call.get(at) : Double.NaN,
        call.get(width),
        call.get(depth),
        call.get(shape));
  }
}
