package facetwright.fold.place;

import facetwright.fold.touch.Collision;
import facetwright.geom.Motion3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.Parts.Placing;
import java.util.List;

/** Why one part that would fit does not go over or into another at all. */
record Stopped(Net net, List<Skin> skins, Placing placing, Nesting how) {
  /** How far a lid goes over its box at least to stay on it, in mm; common practice, no source. */
  private static final double GRIPS = 5;

  /**
   * The reason: what stands out of the inner part is as tall as the outer is deep, or something
   * else is in the way.
   *
   * @param start where the inner part lies with its end in the opening
   * @param outer the part with the opening
   * @param inside all that comes with the inner part
   * @param all of it what goes in
   */
  NoWay at(Motion3 start, int outer, Cluster inside, List<Integer> all) {
    double deep = skins.get(outer).reach(how.outer().axis()) + how.mouth().at();
    for (int part : inside.parts()) {
      if (!all.contains(part)) {
        List<Integer> others = inside.parts().stream().filter(p -> p != part).toList();
        double out =
            inside.faces(all.getFirst(), skins, others).stream()
                .flatMap(f -> how.drawn(f, start, 1).stream())
                .mapToDouble(c -> c.z() + how.mouth().at())
                .max()
                .orElse(0);
        if (out >= deep - Collision.HELD) {
          return tooTall(outer, part, out, deep);
        }
      }
    }
    return new NoWay(
        Message.of(
            "%s does not go %s %s: what is there already is in the way at the opening",
            Way.name(net, placing.part()), placing.word(), Way.name(net, placing.onto())),
        Message.text(
            "Put what is to lie side by side together first, one beside the other, and then both"
                + " in at once."));
  }

  private NoWay tooTall(int outer, int tall, double out, double deep) {
    Value less = Value.atLeast(out - deep + GRIPS);
    int inner = outer == placing.part() ? placing.onto() : placing.part();
    return new NoWay(
        Message.of(
            "%s does not go %s %s: %s stands %s out of %s, and %s is %s deep",
            Way.name(net, placing.part()),
            placing.word(),
            Way.name(net, placing.onto()),
            Way.name(net, tall),
            Value.length(out),
            Way.name(net, inner),
            Way.name(net, outer),
            Value.length(deep)),
        Message.of(
            "Make %s lower by %s, or %s deeper by as much: then they go %s over each other.",
            Way.name(net, tall), less, Way.name(net, outer), Value.given(GRIPS)));
  }
}
