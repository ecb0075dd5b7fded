package facetwright.script;

import facetwright.net.Parts.Lie;
import facetwright.net.Parts.Placing;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Session;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the parts of a script go, one after the other. What goes into one opening at once goes in
 * with the last of it that the script names.
 */
final class PlacingsTold {
  private final Session session;
  private final List<PartDraft> drafts;
  private final List<List<Integer>> numbers;
  private final List<Placing> placings = new ArrayList<>();
  private final Map<Integer, Inside> inside = new HashMap<>();

  /** What goes into one part by itself or with others. */
  private record Inside(
      List<Integer> members, Lie lie, PartDraft.Reader reader, List<Placing> placings) {}

  private PlacingsTold(Session session, List<PartDraft> drafts, List<List<Integer>> numbers) {
    this.session = session;
    this.drafts = drafts;
    this.numbers = numbers;
  }

  /**
   * @param numbers for each draft the numbers of its parts
   */
  static List<Placing> of(Session session, List<PartDraft> drafts, List<List<Integer>> numbers) {
    PlacingsTold told = new PlacingsTold(session, drafts, numbers);
    drafts.stream()
        .filter(d -> d.goes().filter(g -> g.reader() != null).isPresent())
        .sorted(Comparator.comparingInt(d -> d.goes().get().number()))
        .forEach(told::add);
    return told.placings;
  }

  private void add(PartDraft draft) {
    PartDraft.Goes goes = draft.goes().get();
    List<Integer> come = numbers(draft);
    List<Integer> there = numbers(goes.onto());
    if (goes.word().equals("into")) {
      int each = Math.max(1, come.size() / there.size());
      for (int i = 0; i < come.size(); i += each) {
        into(goes, come.subList(i, i + each), there.get(i / each));
      }
    } else if (goes.isOverSeveral()) {
      List<Integer> members = new ArrayList<>(there);
      goes.company().others().stream()
          .filter(o -> o.goes().filter(g -> g.reader() != null).isEmpty())
          .forEach(o -> members.addAll(numbers(o)));
      placings.addAll(with(members, goes));
      placings.add(goes.reader().placing(come.getFirst(), there.getFirst(), 0));
    } else {
      for (int i = 0; i < come.size(); i++) {
        int onto = there.get(come.size() == there.size() ? i : 0);
        placings.add(goes.reader().placing(come.get(i), onto, i));
      }
    }
  }

  private List<Integer> numbers(PartDraft draft) {
    return numbers.get(drafts.indexOf(draft));
  }

  private void into(PartDraft.Goes goes, List<Integer> come, int host) {
    List<Integer> members = new ArrayList<>(come);
    Lie lie = goes.company().lie();
    PartDraft.Reader reader = goes.reader();
    Inside before = inside.get(host);
    if (before != null && goes.company().shares()) {
      placings.removeAll(before.placings);
      members.addAll(0, before.members);
      lie = lie == Lie.FOUND ? before.lie : lie;
      reader = before.reader;
    }
    List<Placing> all = new ArrayList<>(with(members, lie, goes));
    all.add(reader.placing(members.getFirst(), host, 0));
    placings.addAll(all);
    if (goes.company().shares()) {
      inside.put(host, new Inside(members, lie, reader, all));
    }
  }

  private List<Placing> with(List<Integer> members, PartDraft.Goes goes) {
    return with(members, goes.company().lie(), goes);
  }

  private List<Placing> with(List<Integer> members, Lie lie, PartDraft.Goes goes) {
    List<Placing> with = new ArrayList<>();
    for (int i = 1; i < members.size(); i++) {
      double gap = (thick(members.get(i - 1)) + thick(members.get(i))) / 2;
      with.add(new Placing.With(members.get(i), members.getFirst(), i, lie, gap, goes.site()));
    }
    return with;
  }

  /** How thick the card of a part is, in mm. */
  private double thick(int part) {
    for (int d = 0; d < drafts.size(); d++) {
      if (numbers.get(d).contains(part)) {
        double own = drafts.get(d).card().thick();
        return Double.isNaN(own) ? session.caliper() : own;
      }
    }
    throw new IllegalStateException("no part " + part);
  }
}
