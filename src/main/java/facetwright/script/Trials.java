package facetwright.script;

import facetwright.aim.Knob;
import facetwright.aim.Trial;
import facetwright.aim.Tried;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Runs of a script with other dials or another text, to learn what would come of it. What is
 * refused is no design; what can't be ended in time ends all.
 */
final class Trials {
  private final String fileName;
  private final String source;
  private final Map<String, String> settings;
  private final Budget budget;
  private final Packing packing;
  private final Runnable each;

  /** What trials have made, by all their settings. */
  private final Map<Map<String, String>, Facetwright.Made> known = new HashMap<>();

  /**
   * @param settings the dial settings that trials start from, as a person types them
   * @param each run before each trial, on the thread that asks
   */
  Trials(
      String fileName,
      String source,
      Map<String, String> settings,
      Budget budget,
      Packing packing,
      Runnable each) {
    this.fileName = fileName;
    this.source = source;
    this.settings = settings;
    this.budget = budget;
    this.packing = packing;
    this.each = each;
  }

  Trials fitting(Packing other) {
    return new Trials(fileName, source, settings, budget, other, each);
  }

  Trials telling(Runnable other) {
    return new Trials(fileName, source, settings, budget, packing, other);
  }

  String source() {
    return source;
  }

  Map<String, String> settings() {
    return settings;
  }

  Packing packing() {
    return packing;
  }

  /** The design of a text with dials turned, without a look for findings. */
  Optional<Design> once(String text, Map<String, Double> turned) throws ScriptException {
    Map<String, String> all = with(turned);
    return unlessRefused(() -> Facetwright.once(fileName, text, all, budget, false).design());
  }

  /** The whole design of a text, its dials where that text and its aim set them. */
  Optional<Design> whole(String text) throws ScriptException {
    return unlessRefused(() -> Facetwright.evaluate(fileName, text, Map.of(), budget));
  }

  /** The whole design with dials set as they are typed. */
  Optional<Design> set(Map<String, String> typed) throws ScriptException {
    return unlessRefused(() -> Facetwright.evaluate(fileName, source, typed, budget));
  }

  /**
   * What was made with dials turned; made now, from settings as they are typed, where it wasn't.
   */
  Facetwright.Made made(Map<String, Double> turned, Map<String, String> typed)
      throws ScriptException {
    Facetwright.Made made = known.get(with(turned));
    return made != null ? made : Facetwright.once(fileName, source, typed, budget, false);
  }

  private Map<String, String> with(Map<String, Double> turned) {
    Map<String, String> all = new LinkedHashMap<>(settings);
    turned.forEach((name, value) -> all.put(name, Double.toString(value)));
    return all;
  }

  /** Runs of the script for a search, which is to be {@link #guarded}. */
  Trial of(List<Knob> knobs) {
    return of(
        knobs,
        all -> {
          Facetwright.Made made = Facetwright.once(fileName, source, all, budget, false);
          known.put(all, made);
          return made;
        });
  }

  /**
   * Runs of the script near to where it stands, {@link #guarded} too: a form that could close in
   * several ways stays on the branch that the design is on, so that what a dial does to it is not
   * mistaken for a leap to another.
   */
  Trial beside(Design design, List<Knob> knobs) {
    return of(knobs, all -> Facetwright.beside(design, fileName, source, all, budget));
  }

  /**
   * Runs of a script that aims, {@link #guarded} too: each time one dial is turned by hand, the
   * script turns those again that it turns itself.
   *
   * @param typed the settings made by hand
   */
  Trial following(List<Knob> knobs, Map<String, String> typed) {
    return turning(
        values -> {
          Map<String, String> all = new LinkedHashMap<>(typed);
          for (int i = 0; i < knobs.size(); i++) {
            Knob knob = knobs.get(i);
            if (values.get(i) != knob.now()) {
              all.put(knob.name(), Double.toString(values.get(i)));
            }
          }
          return Facetwright.settle(fileName, source, all, StrayDials.PASSED_OVER, budget).made();
        });
  }

  private Trial of(List<Knob> knobs, Running running) {
    return turning(
        values -> {
          Map<String, Double> turned = new LinkedHashMap<>();
          for (int i = 0; i < knobs.size(); i++) {
            turned.put(knobs.get(i).name(), values.get(i));
          }
          return running.run(with(turned));
        });
  }

  private Trial turning(Turning turning) {
    return values -> {
      each.run();
      try {
        return Measuring.of(turning.run(values), packing);
      } catch (ScriptException e) {
        if (endsAll(e)) {
          throw new Halted(e);
        }
        return new Tried.Refused(e.getMessage());
      }
    };
  }

  /** A run of the script with all its settings. */
  @FunctionalInterface
  private interface Running {
    Facetwright.Made run(Map<String, String> all) throws ScriptException;
  }

  /** A run of the script with its dials at these values. */
  @FunctionalInterface
  private interface Turning {
    Facetwright.Made run(List<Double> values) throws ScriptException;
  }

  /** A run of the script that may be refused. */
  @FunctionalInterface
  private interface Making {
    Design make() throws ScriptException;
  }

  private Optional<Design> unlessRefused(Making making) throws ScriptException {
    each.run();
    try {
      return Optional.of(making.make());
    } catch (ScriptException e) {
      if (endsAll(e)) {
        throw e;
      }
      return Optional.empty();
    }
  }

  /** Whether there is no use in trying other values. */
  private static boolean endsAll(ScriptException e) {
    return e.isStillRunning()
        || switch (e.kind()) {
          case STOPPED, TIME, MEMORY -> true;
          default -> false;
        };
  }

  /**
   * Does work that tries.
   *
   * @throws ScriptException when a trial ends all
   */
  static <T> T guarded(Supplier<T> work) throws ScriptException {
    try {
      return work.get();
    } catch (Halted e) {
      throw e.cause;
    }
  }

  /** Carries a fault that ends everything through the search. */
  private static final class Halted extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ScriptException cause;

    Halted(ScriptException cause) {
      super(cause);
      this.cause = cause;
    }
  }
}
