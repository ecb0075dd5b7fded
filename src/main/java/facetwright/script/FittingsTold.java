package facetwright.script;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.Fittings;
import facetwright.net.fitting.Moment;
import facetwright.net.wrap.WrapDraft;
import facetwright.script.api.FittingDraft;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Session;
import facetwright.script.api.Source;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What goes in and on, its panels found by the names that the script gave them. */
final class FittingsTold {
  private static final int FEW = 12;

  private final Net net;
  private final List<Integer> own;
  private final Site site;

  private FittingsTold(Net net, List<Integer> own, Site site) {
    this.net = net;
    this.own = own;
    this.site = site;
  }

  /**
   * The net with all of it.
   *
   * @param net the whole, its panels called as each way in calls them
   * @throws NetException where no panel has such a name, or a hole to thread is missing
   */
  static Net in(Session session, Owned owned, Net net) {
    List<Fitting> all = new ArrayList<>();
    for (FittingDraft draft : withImages(session, owned)) {
      List<Integer> own = owned.of(draft.of()).panels();
      all.add(new FittingsTold(net, own, draft.site()).read(draft));
    }
    return net.with(net.fittings().and(new Fittings(List.of(), all)));
  }

  /** All drafts, those of what has a mirror image for that, too. */
  private static List<FittingDraft> withImages(Session session, Owned owned) {
    List<FittingDraft> all = new ArrayList<>(session.fittings());
    for (Source source : session.sources()) {
      if (source instanceof Source.Image(Object image, PartDraft like)) {
        List<Integer> own = owned.of(like.of()).panels();
        all.addAll(
            all.stream()
                .filter(d -> owned.of(d.of()).panels().equals(own))
                .map(d -> d.of(image))
                .toList());
      }
    }
    return all;
  }

  private Fitting read(FittingDraft draft) {
    Extra thing = draft.thing();
    if (thing instanceof Extra.Ribbon ribbon) {
      List<Integer> through = holed(found(draft.through()));
      if (through.isEmpty() && (!draft.through().isEmpty() || ribbon.tied().isEmpty())) {
        throw new NetException(
            Message.of(
                "there is no hole to thread the ribbon through%s: punch one with hole, or say where"
                    + " it is tied: tie: \"round the box\"",
                draft.through().isEmpty()
                    ? ""
                    : Message.of(" in %s", Value.name(String.join("\", \"", draft.through())))),
            site);
      }
      thing =
          new Extra.Ribbon(
              ribbon.length(),
              ribbon.width(),
              draft.through().isEmpty() && !ribbon.tied().isEmpty() ? List.of() : through,
              ribbon.tied());
    }
    Moment moment = new Moment(draft.when(), found(ends(draft)));
    return new Fitting(thing, own, moment, site);
  }

  /** "top" and "bottom" of a wrap mean what closes it there, unless panels are called so. */
  private List<String> ends(FittingDraft draft) {
    Object of = draft.of() instanceof PartDraft part ? part.of() : draft.of();
    if (!(of instanceof WrapDraft wrap)) {
      return draft.names();
    }
    return draft.names().stream()
        .flatMap(
            word ->
                own.stream().anyMatch(p -> isMeant(name(p), word))
                    ? Stream.of(word)
                    : wrap.closing(word).stream())
        .toList();
  }

  /** Those with holes; of all where none are named. */
  private List<Integer> holed(List<Integer> named) {
    return (named.isEmpty() ? own : named)
        .stream()
            .filter(
                p ->
                    net.panels().get(p).openings().stream()
                        .anyMatch(Opening.Hole.class::isInstance))
            .toList();
  }

  private List<Integer> found(List<String> names) {
    List<Integer> all = new ArrayList<>();
    for (String word : names) {
      List<Integer> meant = own.stream().filter(p -> isMeant(name(p), word)).toList();
      if (meant.isEmpty()) {
        List<String> known = own.stream().map(this::name).distinct().toList();
        throw new NetException(
            Message.text(
                "no panel is called \""
                    + word
                    + "\""
                    + NearName.nearest(word, known)
                        .map(n -> ". Did you mean \"" + n + "\"?")
                        .orElse(": its panels are " + listed(known))),
            site,
            NearName.mends(word, known));
      }
      all.addAll(meant);
    }
    return all.stream().distinct().toList();
  }

  private String name(int panel) {
    return net.panels().get(panel).name();
  }

  /** "side" means "side 2", "rim 1" means "rim 1 (row 4)", "row 4" means all of that row. */
  private static boolean isMeant(String name, String word) {
    return word.equals("all")
        || name.equals(word)
        || name.startsWith(word + " ")
        || name.endsWith("(" + word + ")");
  }

  private static String listed(List<String> names) {
    return names.size() <= FEW
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, FEW)) + " and " + (names.size() - FEW) + " more";
  }
}
