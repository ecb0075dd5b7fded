package facetwright.script;

import facetwright.fold.making.Bodies;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.PanelRole;
import facetwright.net.Stance;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.PanelBuild;
import facetwright.script.api.Session;
import java.util.List;
import java.util.stream.IntStream;

/** Which panels of the whole net come of what a script made. */
final class Owned {
  private final Session session;
  private final List<Net> nets;

  /**
   * @param nets for each source of the session, the net it came to
   */
  Owned(Session session, List<Net> nets) {
    this.session = session;
    this.nets = nets;
  }

  /**
   * What comes of one thing.
   *
   * @param net its own net
   * @param from where the panels of that net begin in the whole
   * @param panels which of the whole are its own
   */
  record Share(Net net, int from, List<Integer> panels) {}

  /**
   * @param thing a wrap, a blank, a form laid flat; or a panel, of which all that hangs together
   *     with it is its own
   */
  @SuppressWarnings("ReferenceEquality") // One thing is no other, however alike.
  Share of(Object thing) {
    Object of = thing instanceof CardPanel ? session.panels() : thing;
    int by = 0;
    for (int s = 0; s < nets.size(); s++) {
      Net one = nets.get(s);
      if (session.sources().get(s).of() == of) {
        int from = by;
        List<Integer> own =
            thing instanceof CardPanel panel && of instanceof PanelBuild build
                ? body(one, build.number(panel))
                : IntStream.range(0, one.panels().size()).boxed().toList();
        return new Share(one, from, own.stream().map(p -> p + from).toList());
      }
      by += one.panels().size();
    }
    throw new IllegalStateException("a part of nothing");
  }

  /** What comes of one thing, by itself and standing as its maker says. */
  Net alone(Object thing) {
    Share share = of(thing);
    List<Integer> own = share.panels().stream().map(p -> p - share.from()).toList();
    return NetMerge.only(share.net(), own, standing(thing, share.net(), own));
  }

  /** How what comes of one thing stands. */
  Stance stance(Object thing) {
    Share share = of(thing);
    List<Integer> own = share.panels().stream().map(p -> p - share.from()).toList();
    return standing(thing, share.net(), own).after(share.from());
  }

  /** Panels of a body stand as the net says where it speaks of them, else on the first. */
  private static Stance standing(Object thing, Net net, List<Integer> body) {
    boolean isSaid = body.contains(net.stance().ring().getFirst().panel());
    if (isSaid || !(thing instanceof CardPanel)) {
      return net.stance();
    }
    int first =
        body.stream()
            .filter(p -> net.panels().get(p).role() == PanelRole.FACET)
            .findFirst()
            .orElse(body.getFirst());
    return Stance.asCalled(net, body, first);
  }

  private static List<Integer> body(Net net, int panel) {
    return Bodies.of(net).stream().filter(b -> b.contains(panel)).findFirst().orElseThrow();
  }
}
