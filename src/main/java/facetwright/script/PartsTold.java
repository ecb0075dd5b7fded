package facetwright.script;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.NetMerge;
import facetwright.net.Panel;
import facetwright.net.Parts;
import facetwright.net.Stance;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Session;
import facetwright.script.api.Source;
import facetwright.words.Site;
import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The nets of a script as one, its parts told apart. Panels of a named part have its name before
 * their own; what is made several times is there as often, numbered.
 */
final class PartsTold {
  private final Session session;
  private final Owned owned;
  private final Net net;
  private final List<PartDraft> drafts;

  private final PartsNamed called;

  /** For each draft the numbers of its parts. */
  private final List<List<Integer>> numbers = new ArrayList<>();

  private final List<Spoken> spoken = new ArrayList<>();

  /** Where the maker gave a panel its name; nothing for those that the maker did not name. */
  private final List<Site> named = new ArrayList<>();

  private final List<Parts.Part> parts = new ArrayList<>();
  private final List<PartDraft> draftOf = new ArrayList<>();
  private final List<Finding> found = new ArrayList<>();

  private PartsTold(Session session) {
    this.session = session;
    List<Net> nets = new ArrayList<>();
    for (Source source : session.sources()) {
      switch (source) {
        case Source.Own own -> {
          Net one = made(own, nets);
          nets.add(one);
          for (int p = 0; p < one.panels().size(); p++) {
            spoken.add(own.speaking().of(one, p));
            named.add(own.named(one.panels().get(p)));
          }
        }
        case Source.Image image -> {
          Owned before = new Owned(session, nets);
          before
              .of(image.like().of())
              .panels()
              .forEach(
                  p -> {
                    spoken.add(spoken.get(p));
                    named.add(Site.NONE);
                  });
          nets.add(NetMerge.mirrored(before.alone(image.like().of())));
        }
      }
    }
    this.owned = new Owned(session, nets);
    this.net = FittingsTold.in(session, owned, NetMerge.of(nets));
    this.drafts = session.parts().stream().filter(this::isTold).toList();
    this.called = new PartsNamed(drafts);
  }

  /** One net; what it lets the maker know stands in it, and it stands behind those before. */
  private Net made(Source.Own source, List<Net> before) {
    int known = session.findings().size();
    Net one = source.net().get();
    int panels = before.stream().mapToInt(n -> n.panels().size()).sum();
    int scores = before.stream().mapToInt(n -> n.scores().size()).sum();
    int joins = before.stream().mapToInt(n -> n.joins().size()).sum();
    session.findings().stream()
        .skip(known)
        .map(f -> f.at(f.place().after(panels, scores, joins)))
        .forEach(found::add);
    return one;
  }

  /**
   * What a script comes to.
   *
   * @param drafts for each of the net's parts what the script says of it
   * @param spoken for each panel how the script speaks of it
   * @param found what came up while the nets were made, where it stands in the whole
   */
  record Told(Net net, List<PartDraft> drafts, List<Spoken> spoken, List<Finding> found) {}

  static Told of(Session session) {
    return new PartsTold(session).told();
  }

  private Told told() {
    if (drafts.isEmpty()) {
      findAlike(net.panels().stream().map(Panel::name).toList());
      return new Told(net, List.of(), spoken, found);
    }
    List<String> names = new ArrayList<>(net.panels().stream().map(Panel::name).toList());
    List<Net> all = new ArrayList<>();
    int panels = names.size();
    for (PartDraft draft : drafts) {
      int number = parts.size();
      Parts.Part part = part(draft, number);
      refuseShared(draft, part);
      add(draft, part);
      numbers.add(new ArrayList<>(List.of(number)));
      name(part, draft, names);
    }
    findAlike(names);
    for (int d = 0; d < drafts.size(); d++) {
      PartDraft draft = drafts.get(d);
      Parts.Part first = parts.get(d);
      for (int copy = 2; copy <= draft.card().count(); copy++) {
        Net like = NetMerge.only(net, first.panels(), first.stance());
        int by = panels + all.stream().mapToInt(n -> n.panels().size()).sum();
        all.add(like);
        like.panels().forEach(p -> names.add(p.name()));
        first.panels().forEach(p -> spoken.add(spoken.get(p)));
        numbers.get(d).add(parts.size());
        Parts.Part made =
            new Parts.Part(
                called.of(d, copy),
                IntStream.range(by, by + like.panels().size()).boxed().toList(),
                like.stance().after(by),
                first.first(),
                first.imageOf(),
                first.caliper(),
                first.site());
        add(draft, made);
        name(made, draft, names);
      }
    }
    all.addFirst(net);
    Net named = NetMerge.of(all).renamed(names);
    List<Parts.Placing> placings = PlacingsTold.of(session, drafts, numbers);
    boolean isPlain =
        placings.isEmpty()
            && drafts.stream().noneMatch(d -> d.card().isOwn() || d.card().count() > 1)
            && parts.stream().allMatch(p -> p.imageOf() == Parts.Part.NO_IMAGE)
            && IntStream.range(0, parts.size()).allMatch(p -> parts.get(p).first() == p);
    return new Told(
        isPlain ? named : named.with(new Parts(parts, placings)), draftOf, spoken, found);
  }

  /** Panels that the maker gave one name, by which they are told. */
  private void findAlike(List<String> names) {
    Map<String, Site> seen = new HashMap<>();
    Set<String> told = new HashSet<>();
    for (int p = 0; p < named.size(); p++) {
      Site first = named.get(p).isKnown() ? seen.putIfAbsent(names.get(p), named.get(p)) : null;
      if (first != null && told.add(names.get(p))) {
        found.add(Repeated.named(names.get(p), new Place.AtPanel(p), first, named.get(p)));
      }
    }
  }

  private void add(PartDraft draft, Parts.Part part) {
    parts.add(part);
    draftOf.add(draft);
  }

  /** The part's name before those of its panels, but where these say it themselves. */
  private static void name(Parts.Part part, PartDraft draft, List<String> names) {
    if (draft.name().isEmpty() && draft.card().count() == 1) {
      return;
    }
    String said = draft.name().isEmpty() ? part.name() : draft.name();
    String number = part.name().equals(said) ? "" : "( \\d+)?";
    Pattern own = Pattern.compile("^" + Pattern.quote(said) + number + "( |$)");
    for (int p : part.panels()) {
      String panel = own.matcher(names.get(p)).replaceFirst("");
      names.set(p, panel.isEmpty() ? part.name() : part.name() + " " + panel);
    }
  }

  private void refuseShared(PartDraft draft, Parts.Part part) {
    for (Parts.Part other : parts) {
      if (!Collections.disjoint(other.panels(), part.panels())) {
        throw new NetException(
            Message.of(
                "%s and %s are one: what is attached or joined hangs together",
                Value.name(other.name()), Value.name(part.name())),
            draft.site());
      }
    }
  }

  /** Whether the script says anything of a part. */
  @SuppressWarnings("ReferenceEquality") // One thing is no other, however alike.
  private boolean isTold(PartDraft draft) {
    return !draft.name().isEmpty()
        || draft.card().isOwn()
        || draft.card().count() > 1
        || draft.goes().isPresent()
        || session.sources().stream()
            .anyMatch(s -> s instanceof Source.Image(_, PartDraft like) && like == draft)
        || session.parts().stream()
            .anyMatch(p -> p.goes().filter(g -> g.onto() == draft).isPresent());
  }

  private Parts.Part part(PartDraft draft, int number) {
    Owned.Share share = owned.of(draft.of());
    return new Parts.Part(
        called.of(number, 1),
        share.panels(),
        owned.stance(draft.of()),
        likeness(draft, share.panels(), number),
        imageOf(draft),
        thick(draft),
        draft.site());
  }

  /** The first part of its name that is made as it is; its own number where none is. */
  private int likeness(PartDraft draft, List<Integer> panels, int number) {
    for (int d = 0; d < number && !draft.name().isEmpty(); d++) {
      PartDraft other = drafts.get(d);
      Parts.Part before = parts.get(d);
      if (before.first() == d
          && other.name().equals(draft.name())
          && other.card().counted(1).equals(draft.card().counted(1))
          && before.imageOf() == imageOf(draft)
          && MadeAlike.are(alone(panels), alone(before.panels()))) {
        return d;
      }
    }
    return number;
  }

  private Net alone(List<Integer> panels) {
    List<Stance.Corner> any =
        IntStream.range(0, 3).mapToObj(c -> new Stance.Corner(panels.getFirst(), c)).toList();
    return NetMerge.only(net, panels, new Stance(any));
  }

  /** The part that it is the mirror image of, where that is told apart. */
  @SuppressWarnings("ReferenceEquality") // One thing is no other, however alike.
  private int imageOf(PartDraft draft) {
    for (Source source : session.sources()) {
      if (source instanceof Source.Image(Object image, PartDraft like) && image == draft.of()) {
        return drafts.indexOf(like);
      }
    }
    return Parts.Part.NO_IMAGE;
  }

  /** How thick its card is; of all parts, where any has a card of its own. */
  private double thick(PartDraft draft) {
    double own = draft.card().thick();
    return Double.isNaN(own) && drafts.stream().anyMatch(d -> d.card().isOwn())
        ? session.caliper()
        : own;
  }
}
