package facetwright.script;

import facetwright.aim.Aim;
import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.KnobMend;
import facetwright.aim.Lengths;
import facetwright.aim.Measured;
import facetwright.aim.Outcome;
import facetwright.aim.Slopes;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/**
 * What a design would come to with its dials turned: slopes, aims and mends. Every answer runs the
 * script several times, each within the budget.
 */
public final class WhatIf {
  private final Facetwright.Made made;
  private final Trials trials;

  /** The dial settings made by hand. */
  private final Map<String, String> typed;

  private WhatIf(Facetwright.Made made, Trials trials, Map<String, String> typed) {
    this.made = made;
    this.trials = trials;
    this.typed = typed;
  }

  WhatIf(
      String fileName,
      String source,
      Map<String, String> settings,
      Budget budget,
      Facetwright.Made made) {
    this(made, new Trials(fileName, source, settings, budget, Packing.ONE, () -> {}), settings);
  }

  /**
   * Evaluates a script, to ask about it; arguments as for {@link Facetwright#evaluate}.
   *
   * @throws ScriptException as there
   */
  public static WhatIf of(
      String fileName, String source, Map<String, String> settings, Budget budget)
      throws ScriptException {
    return of(fileName, source, settings, StrayDials.REFUSED, budget);
  }

  /**
   * The same.
   *
   * @param stray what becomes of settings that no dial of the script takes; those of dials that are
   *     left out are still among {@link #settings()}
   */
  public static WhatIf of(
      String fileName, String source, Map<String, String> settings, StrayDials stray, Budget budget)
      throws ScriptException {
    Facetwright.Settled settled = Facetwright.settle(fileName, source, settings, stray, budget);
    Trials trials = new Trials(fileName, source, settled.settings(), budget, Packing.ONE, () -> {});
    return new WhatIf(settled.made(), trials, settings);
  }

  /** The same questions, a net counting as fitting a sheet only where this holds, too. */
  public WhatIf fitting(Packing other) {
    return new WhatIf(made, trials.fitting(other), typed);
  }

  /**
   * The same questions, with word of each design that is made to answer them.
   *
   * @param each run before each, on the thread that asks
   */
  public WhatIf telling(Runnable each) {
    return new WhatIf(made, trials.telling(each), typed);
  }

  /** Whether the script itself aims at measures, and so turns dials that nobody sets. */
  public boolean hasAim() {
    return made.aim().isPresent();
  }

  /** The design as it stands. */
  public Design design() {
    return made.design();
  }

  /** All dial settings that lead to what an aim came to, as a person types them. */
  public SequencedMap<String, String> settings(Outcome outcome) {
    SequencedMap<String, String> all = new LinkedHashMap<>(trials.settings());
    all.putAll(outcome.settings());
    return all;
  }

  /**
   * What each dial does to each measure. Where the script aims, it turns its own dials for each
   * that is turned by hand; as it sets them on marks, that is told of a turn by one mark.
   */
  public Slopes slopes() throws ScriptException {
    List<Knob> knobs = Knobs.all(design());
    if (!hasAim()) {
      return Trials.guarded(() -> Slopes.of(knobs, now(), trials.beside(design(), knobs)));
    }
    Grid grid = Grid.usual(design().unit());
    List<Knob> stepped =
        knobs.stream()
            .map(k -> k.isStepped() ? k : k.inStepsOf(grid.apart(k, design().unit())))
            .toList();
    return Trials.guarded(() -> Slopes.of(stepped, now(), trials.following(stepped, typed)));
  }

  /**
   * Solves for dials so that goals are met.
   *
   * @param turn the dials that may be turned; empty to leave the choice
   * @param grid the ruler they are set by
   * @throws IllegalArgumentException when the design has no such dial, or none at all; the message
   *     says which, without a full stop
   * @throws ScriptException when the script has to be given up, as in {@link Facetwright#evaluate}
   */
  public Outcome aim(List<Goal> goals, List<String> turn, Grid grid) throws ScriptException {
    Choice choice = choose(goals, turn, Set.of());
    if (choice.knobs().isEmpty()) {
      throw new IllegalArgumentException("this design has no dials to turn");
    }
    return aim(goals, choice, grid, Aim.USUAL_MOST);
  }

  /**
   * A ring is tried by each pair of its sides in turn, since what leads to one leads away from
   * another. All together may make twice as many designs as one search: what one leaves, the next
   * may take.
   */
  Outcome aim(List<Goal> goals, Choice choice, Grid grid, int most) throws ScriptException {
    Outcome best = null;
    List<List<Goal>> ways = RingWays.of(goals, design());
    int left = ways.size() == 1 ? most : 2 * most;
    for (int i = 0; i < ways.size() && left > 0; i++) {
      Outcome outcome = solve(ways.get(i), choice, grid, Math.min(most, left / (ways.size() - i)));
      left -= outcome.trials();
      best = best == null || RingWays.isNearer(outcome, best) ? outcome : best;
      if (best.isMet() && RingWays.isMet(best)) {
        break;
      }
    }
    return RingWays.asPlanned(best, goals);
  }

  private Outcome solve(List<Goal> goals, Choice choice, Grid grid, int most)
      throws ScriptException {
    List<Knob> knobs = choice.knobs();
    Aim aim = new Aim(goals, knobs, grid, design().unit(), most);
    return Trials.guarded(() -> aim.solve(now(), trials.of(knobs))).after(choice.trials());
  }

  /**
   * Dials to turn.
   *
   * @param trials how many designs were made to choose them
   */
  record Choice(List<Knob> knobs, int trials) {}

  /**
   * The dials named; where none is, those without steps. To fit a sheet, of these only the lengths,
   * for nothing else can be scaled: those declared as lengths, or where there are none, those that
   * behave as lengths.
   *
   * @param but dials to leave alone
   */
  Choice choose(List<Goal> goals, List<String> turn, Set<String> but) throws ScriptException {
    if (!turn.isEmpty()) {
      List<Knob> named = Knobs.named(design(), turn);
      return new Choice(named.stream().filter(k -> !but.contains(k.name())).toList(), 0);
    }
    boolean fit = goals.stream().anyMatch(g -> g instanceof Goal.Fit);
    List<Knob> usual =
        Knobs.usual(design(), but).stream().filter(k -> !fit || k.mayBeLength()).toList();
    List<Knob> declared = usual.stream().filter(Knob::isLength).toList();
    if (!fit || usual.size() < 2 || usual.getFirst().isStepped()) {
      return new Choice(usual, 0);
    }
    if (!declared.isEmpty()) {
      return new Choice(declared, 0);
    }
    Slopes slopes = Trials.guarded(() -> Slopes.of(usual, now(), trials.beside(design(), usual)));
    return new Choice(Lengths.among(slopes), slopes.trials());
  }

  /**
   * The turn of one dial that would help most where the form does not close, or only with strain,
   * or where that is not known; empty where it closes and where no single turn helps.
   */
  public Optional<KnobMend> mend() throws ScriptException {
    Closure closure = design().folded().closure();
    if (closure == Closure.CLOSES) {
      return Optional.empty();
    }
    List<Knob> knobs = Knobs.all(design());
    return Trials.guarded(() -> KnobMend.find(knobs, now(), design().unit(), trials.of(knobs)));
  }

  /** The script's text, as it was given. */
  public String source() {
    return trials.source();
  }

  /** The dial settings that lead to the design as it stands, as a person types them. */
  public Map<String, String> settings() {
    return Collections.unmodifiableMap(new LinkedHashMap<>(trials.settings()));
  }

  /** The dials that are lengths: those declared so, and those that behave so. */
  public List<Knob> lengths() throws ScriptException {
    List<Knob> all = Knobs.all(design());
    List<Knob> declared = all.stream().filter(Knob::isLength).toList();
    if (all.stream().noneMatch(k -> k.mayBeLength() && !k.isLength())) {
      return declared;
    }
    Slopes slopes = Trials.guarded(() -> Slopes.of(all, now(), trials.beside(design(), all)));
    List<Knob> alike = Lengths.among(slopes);
    double mm = design().unit().mm();
    return slopes.all().stream()
        .filter(
            s ->
                s.knob().isLength()
                    || (s.knob().mayBeLength()
                        && (s.knob().isStepped()
                            ? Lengths.isLengthOfNet(s, mm)
                            : alike.contains(s.knob()))))
        .map(Slopes.OfKnob::knob)
        .toList();
  }

  /**
   * The design with dials turned, without a look for findings.
   *
   * @param turned dial values by name, in the design's unit
   * @return empty where there is no such design
   * @throws ScriptException when the script has to be given up, as in {@link Facetwright#evaluate}
   */
  public Optional<Design> turned(Map<String, Double> turned) throws ScriptException {
    return rewritten(source(), turned);
  }

  /**
   * The design with dials turned by another text of the same script, otherwise as {@link #turned}.
   */
  public Optional<Design> rewritten(String text, Map<String, Double> turned)
      throws ScriptException {
    return trials.once(text, turned);
  }

  /** The design of another text of the script, its dials where that text and its aim set them. */
  public Optional<Design> written(String text) throws ScriptException {
    return trials.whole(text);
  }

  /**
   * The whole design with dials set as a person types them, just as it is made where they are
   * taken.
   *
   * @return empty where there is no such design
   * @throws ScriptException when the script has to be given up, as in {@link Facetwright#evaluate}
   */
  public Optional<Design> set(Map<String, String> typed) throws ScriptException {
    return trials.set(typed);
  }

  private Measured now() {
    return Measuring.of(made, trials.packing());
  }

  /**
   * The design an aim came to, without a look for findings; not made once more where a trial has
   * made it.
   */
  Facetwright.Made made(Outcome outcome) throws ScriptException {
    if (outcome.settings().isEmpty()) {
      return made;
    }
    Map<String, Double> turned = new LinkedHashMap<>();
    outcome.turns().forEach(t -> turned.put(t.knob().name(), t.value()));
    return trials.made(turned, settings(outcome));
  }
}
