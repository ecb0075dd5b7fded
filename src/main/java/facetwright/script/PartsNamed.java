package facetwright.script;

import facetwright.script.api.PartDraft;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What each part is called: as the script says; where several have one name, or one is made several
 * times, with a number that no other part bears.
 */
final class PartsNamed {
  private static final String UNNAMED = "part";

  private final List<List<String>> names = new ArrayList<>();

  PartsNamed(List<PartDraft> drafts) {
    Set<String> taken = new HashSet<>();
    drafts.stream().filter(d -> !isNumbered(d, drafts)).forEach(d -> taken.add(d.name()));
    for (PartDraft draft : drafts) {
      List<String> own = new ArrayList<>();
      for (int copy = 1; copy <= draft.card().count(); copy++) {
        own.add(isNumbered(draft, drafts) ? free(draft.name(), taken) : draft.name());
      }
      names.add(own);
    }
  }

  private static boolean isNumbered(PartDraft draft, List<PartDraft> drafts) {
    return draft.name().isEmpty()
        || draft.card().count() > 1
        || drafts.stream().filter(d -> d.name().equals(draft.name())).limit(2).count() > 1;
  }

  private static String free(String name, Set<String> taken) {
    String word = name.isEmpty() ? UNNAMED : name;
    for (int n = 1; ; n++) {
      if (taken.add(word + " " + n)) {
        return word + " " + n;
      }
    }
  }

  /** The name of a draft's copy, counted from 1. */
  String of(int draft, int copy) {
    return names.get(draft).get(copy - 1);
  }
}
