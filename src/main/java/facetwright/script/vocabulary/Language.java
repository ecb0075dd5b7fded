package facetwright.script.vocabulary;

import facetwright.script.api.Fn;
import facetwright.script.api.Handle;
import facetwright.script.api.Session;
import facetwright.script.api.Thing;
import facetwright.script.api.Things;
import facetwright.script.sandbox.HostClock;
import facetwright.script.sandbox.SiteFinder;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.SequencedSet;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** The whole script language: every kind of thing and its functions. */
public final class Language {
  /** The functions that stand on their own. */
  public static final Thing<Session> TOP =
      Thing.named("script", Session.class, "Functions that stand on their own.");

  private static final List<Thing<?>> ALL = setUp();

  private Language() {}

  private static List<Thing<?>> setUp() {
    TopWords.all().forEach(TOP::with);
    AimWords.all().forEach(TOP::with);
    UseWords.all().forEach(TOP::with);
    SolidWords.all().forEach(TOP::with);
    OutlineWords.all().forEach(TOP::with);
    OutlineChangeWords.all().forEach(Things.OUTLINE::with);
    WrapWords.top().forEach(TOP::with);
    PanelWords.top().forEach(TOP::with);
    PanelWords.onPanel().forEach(Things.PANEL::with);
    PanelJoinWords.all().forEach(Things.PANEL::with);
    PanelHoldWords.all().forEach(Things.PANEL::with);
    PanelCutWords.all().forEach(Things.PANEL::with);
    BlankWords.top().forEach(TOP::with);
    BlankWords.onBlank().forEach(Things.BLANK::with);
    BlankPanelWords.all().forEach(Things.BLANK::with);
    Things.BLANK.with(BlankFoldWords.fold());
    FormWords.all().forEach(Things.FORM::with);
    FacetWords.all().forEach(Things.FORM::with);
    FormJoinWords.all().forEach(Things.FORM::with);
    UnfoldWords.all().forEach(Things.FORM::with);
    WrapWords.onWrap().forEach(Things.WRAP::with);
    WrapWords.onCells().forEach(Things.CELLS::with);
    CellWords.all().forEach(Things.CELLS::with);
    CellCutWords.onCells().forEach(Things.CELLS::with);
    CellCutWords.onWrap().forEach(Things.WRAP::with);
    Things.WRAP.with(PartWords.part());
    Things.PANEL.with(PartWords.part());
    Things.BLANK.with(PartWords.part());
    PartWords.all().forEach(Things.PART::with);
    Things.FORM.with(LabelWords.onForm());
    Things.CELLS.with(LabelWords.onCells());
    Things.PANEL.with(LabelWords.onPanel());
    Things.BLANK.with(LabelWords.onBlank());
    FittingWords.all(Things.WRAP).forEach(Things.WRAP::with);
    FittingWords.all(Things.PANEL).forEach(Things.PANEL::with);
    FittingWords.all(Things.BLANK).forEach(Things.BLANK::with);
    FittingWords.all(Things.PART).forEach(Things.PART::with);
    return List.of(
        TOP,
        Things.FORM,
        Things.OUTLINE,
        Things.WRAP,
        Things.CELLS,
        Things.PANEL,
        Things.BLANK,
        Things.PART);
  }

  /** The functions that stand on their own, for one run of a script. */
  public static SequencedMap<String, ProxyExecutable> globals(
      Session session, SiteFinder sites, HostClock clock) {
    session.connect(sites, clock);
    SequencedMap<String, ProxyExecutable> all = new LinkedHashMap<>();
    for (Fn<Session> fn : TOP.functions()) {
      all.put(fn.name(), Handle.callable(session, fn.name(), fn, session, null));
    }
    return all;
  }

  /** Every kind of thing, the top level first. */
  public static List<Thing<?>> things() {
    return ALL;
  }

  /** The functions of each kind of thing but the top level, by what such a thing is called. */
  public static Map<String, List<String>> functions() {
    Map<String, List<String>> all = new LinkedHashMap<>();
    ALL.stream()
        .filter(t -> t != TOP)
        .forEach(t -> all.put(t.one(), t.functions().stream().map(Fn::name).toList()));
    return all;
  }

  /** Every name a script may call, for suggestions. */
  public static SequencedSet<String> names() {
    SequencedSet<String> names = new LinkedHashSet<>();
    ALL.forEach(t -> t.functions().forEach(f -> names.add(f.name())));
    return names;
  }
}
