package facetwright.script;

import facetwright.check.finding.Bodies;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.NetMerge;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Parts;
import facetwright.net.Stance;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.PanelBuild;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Session;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The nets of a script as one, its parts told apart. Panels of a named part have its name before
 * their own.
 */
final class PartsTold {
  private final Session session;
  private final List<Net> nets;
  private final Net net;

  private PartsTold(Session session) {
    this.session = session;
    this.nets = session.sources().stream().map(s -> s.net().get()).toList();
    this.net = NetMerge.of(nets);
  }

  static Net net(Session session) {
    return new PartsTold(session).told();
  }

  private Net told() {
    List<PartDraft> drafts =
        session.parts().stream().filter(d -> !d.name().isEmpty() || isPlaced(d)).toList();
    List<Parts.Part> parts = new ArrayList<>();
    List<String> names = new ArrayList<>(net.panels().stream().map(Panel::name).toList());
    for (PartDraft draft : drafts) {
      Parts.Part part = part(draft, parts.size() + 1);
      for (Parts.Part other : parts) {
        if (!Collections.disjoint(other.panels(), part.panels())) {
          throw new NetException(
              Message.of(
                  "%s and %s are one: what is attached or joined hangs together",
                  Value.name(other.name()), Value.name(part.name())),
              draft.site());
        }
      }
      parts.add(part);
      if (!draft.name().isEmpty()) {
        part.panels().stream()
            .filter(p -> !names.get(p).equals(draft.name()))
            .forEach(p -> names.set(p, draft.name() + " " + names.get(p)));
      }
    }
    Net named = drafts.isEmpty() ? net : net.renamed(names);
    List<Parts.Placing> placings = placings(drafts);
    return placings.isEmpty() ? named : named.with(new Parts(parts, placings));
  }

  private boolean isPlaced(PartDraft draft) {
    return draft.goes().isPresent()
        || session.parts().stream()
            .anyMatch(p -> p.goes().filter(g -> g.onto() == draft).isPresent());
  }

  private static List<Parts.Placing> placings(List<PartDraft> drafts) {
    return drafts.stream()
        .map(PartDraft::goes)
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingInt(PartDraft.Goes::number))
        .map(
            g -> {
              int part =
                  IntStream.range(0, drafts.size())
                      .filter(i -> drafts.get(i).goes().filter(o -> o == g).isPresent())
                      .findFirst()
                      .orElseThrow();
              return g.reader().placing(part, drafts.indexOf(g.onto()));
            })
        .toList();
  }

  private Parts.Part part(PartDraft draft, int number) {
    String name = draft.name().isEmpty() ? "part " + number : draft.name();
    Object of = draft.of() instanceof CardPanel ? session.panels() : draft.of();
    int by = 0;
    for (int s = 0; s < nets.size(); s++) {
      Net one = nets.get(s);
      if (session.sources().get(s).of() == of) {
        if (draft.of() instanceof CardPanel panel && of instanceof PanelBuild build) {
          List<Integer> body = body(by + build.number(panel));
          return new Parts.Part(name, body, stance(body, by, one), draft.site());
        }
        return new Parts.Part(
            name,
            IntStream.range(by, by + one.panels().size()).boxed().toList(),
            one.stance().after(by),
            draft.site());
      }
      by += one.panels().size();
    }
    throw new IllegalStateException("a part of nothing");
  }

  private List<Integer> body(int panel) {
    return Bodies.of(net).stream().filter(b -> b.contains(panel)).findFirst().orElseThrow();
  }

  /** How panels of a body stand: as the net says where it speaks of them, else on the first. */
  private Stance stance(List<Integer> body, int by, Net build) {
    boolean isSaid = body.contains(by + build.stance().ring().getFirst().panel());
    if (isSaid) {
      return build.stance().after(by);
    }
    int first =
        body.stream()
            .filter(p -> net.panels().get(p).role() == PanelRole.FACET)
            .findFirst()
            .orElse(body.getFirst());
    int n = net.panels().get(first).outline().size();
    return new Stance(
        IntStream.range(0, n).mapToObj(i -> new Stance.Corner(first, n - 1 - i)).toList());
  }
}
