package facetwright.script.scope;

import facetwright.measure.Quantity;
import facetwright.script.api.Arg;
import facetwright.script.text.Call;
import facetwright.script.text.Known;
import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a script uses its dials as, where they are declared as plain numbers: told from its text,
 * without running it. A dial that stands alone where a function takes an angle is one; so is one
 * that is only ever turned into radians, or reckoned with into angles. Where the uses disagree, or
 * tell nothing, it stays a plain number.
 */
public final class DialUse {
  private static final int DEEPEST = 8;

  /** What gives back a number that counts what its arguments count. */
  private static final Set<String> KEEPING =
      Set.of("abs", "ceil", "floor", "max", "min", "round", "trunc");

  private static final Known<Map<String, Quantity>> KNOWN = new Known<>(DialUse::read);

  private final Scope scope;
  private final Reading reading;
  private final Reckoning reckoning;
  private final Map<String, List<Integer>> places = new HashMap<>();

  /** Names by the token that their value begins with. */
  private final Map<Integer, Name> made = new HashMap<>();

  private DialUse(Scope scope) {
    this.scope = scope;
    this.reading = scope.reading();
    this.reckoning = new Reckoning(scope);
    scope.names().all().forEach(n -> made.putIfAbsent(n.value(), n));
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.isOwnName(i)) {
        places.computeIfAbsent(reading.word(i), _ -> new ArrayList<>()).add(i);
      }
    }
  }

  /** What each dial is used as, by the dial's name; those of which nothing is told are left out. */
  public static Map<String, Quantity> of(String script) {
    return KNOWN.of(script);
  }

  private static Map<String, Quantity> read(String script) {
    Scope scope = Scope.of(script);
    DialUse use = new DialUse(scope);
    Map<String, Quantity> all = new HashMap<>();
    for (Name name : scope.names().all()) {
      if (scope.meaning(name).equals("dial")) {
        Optional<String> dial =
            Call.at(use.reading, name.value())
                .filter(c -> use.reading.endsBehind(c.close()) || use.reckoning.isListed(c.close()))
                .flatMap(c -> c.arguments(use.reading).stream().findFirst())
                .flatMap(a -> use.reading.said(a.first()));
        dial.ifPresent(d -> use.of(name).ifPresent(q -> all.put(d, q)));
      }
    }
    return Map.copyOf(all);
  }

  private Optional<Quantity> of(Name name) {
    Uses uses = new Uses();
    look(name, true, uses, DEEPEST);
    return uses.told();
  }

  /** What the uses of one dial tell. */
  private static final class Uses {
    private final Set<Quantity> alone = EnumSet.noneOf(Quantity.class);
    private final Set<Quantity> reckoned = EnumSet.noneOf(Quantity.class);
    private boolean isAnyUnknown;

    Optional<Quantity> told() {
      Set<Quantity> all = EnumSet.copyOf(alone);
      all.addAll(reckoned);
      // Of whole numbers much is reckoned: a part of a circle, a width times their number.
      if (alone.equals(EnumSet.of(Quantity.WHOLE))) {
        return Optional.of(Quantity.WHOLE);
      }
      boolean isTold = all.size() == 1 && (!alone.isEmpty() || !isAnyUnknown);
      return isTold ? all.stream().filter(q -> q != Quantity.WHOLE).findFirst() : Optional.empty();
    }
  }

  private void look(Name name, boolean isAlone, Uses uses, int deep) {
    for (int i : places.getOrDefault(name.word(), List.of())) {
      boolean isIt =
          i != name.token()
              && scope
                  .names()
                  .named(name.word(), reading.token(i).start())
                  .filter(name::equals)
                  .isPresent();
      if (isIt) {
        use(i, isAlone, uses, deep);
      }
    }
  }

  private void use(int token, boolean isAlone, Uses uses, int deep) {
    Span span = Span.of(token);
    boolean alone = isAlone;
    while (true) {
      Optional<Span> product = reckoning.product(span);
      if (product.isEmpty()) {
        uses.isAnyUnknown = true;
        return;
      }
      if (reckoning.isRadians(product.get())) {
        uses.reckoned.add(Quantity.ANGLE);
        return;
      }
      Span sum = reckoning.sum(product.get());
      alone &= sum.equals(Span.of(token));
      int open = reading.back(sum.first());
      boolean isGroup = reading.is(open, '(') && reading.partner(open) == reading.forth(sum.last());
      int called = reading.back(open);
      if (isGroup && reckoning.isRadians(Span.of(called))) {
        uses.reckoned.add(Quantity.ANGLE);
        return;
      }
      if (isGroup && !reckoning.isCalled(called)) {
        span = new Span(open, reading.partner(open));
      } else {
        placed(token, sum, alone, uses, deep);
        return;
      }
    }
  }

  /** A sum that stands as an argument, an option, an item of such, or as what a name is made of. */
  private void placed(int token, Span sum, boolean alone, Uses uses, int deep) {
    Name other = made.get(sum.first());
    boolean isWhole = reading.endsBehind(sum.last()) || reckoning.isListed(sum.last());
    if (other != null && isWhole && deep > 0) {
      look(other, alone, uses, deep - 1);
      return;
    }
    Optional<Quantity> taken = isKept(sum) ? taken(token) : Optional.empty();
    if (taken.isPresent()) {
      (alone ? uses.alone : uses.reckoned).add(taken.get());
    } else {
      uses.isAnyUnknown = true;
    }
  }

  /** Whether all that stands between it and the call of the language keeps what it counts. */
  private boolean isKept(Span sum) {
    int before = reading.back(sum.first());
    int behind = reading.forth(sum.last());
    boolean isBounded =
        "([{,:".contains(reading.word(before)) && ")]},".contains(reading.word(behind));
    return isBounded && !reading.word(before).isEmpty();
  }

  private Optional<Quantity> taken(int token) {
    Optional<CallSite> site = CallSite.at(scope, reading.token(token).start());
    if (site.isEmpty() || isInOwnCall(token, site.get())) {
      return Optional.empty();
    }
    CallSite at = site.get();
    Optional<Arg<?>> arg =
        at.atOption()
            ? at.options().stream().filter(o -> o.name().equals(reading.word(token))).findFirst()
            : at.arg();
    return arg.flatMap(a -> a.kind().counts()).filter(q -> q != Quantity.NUMBER);
  }

  /** Whether a call that is not the language's stands between a token and a call that is. */
  private boolean isInOwnCall(int token, CallSite site) {
    for (int i = token - 1; i > reading.forth(site.name()); i--) {
      if (reading.partner(i) >= 0 && reading.partner(i) < i) {
        i = reading.partner(i);
      } else if (reading.is(i, '(')
          && reckoning.isCalled(reading.back(i))
          && !keeps(reading.back(i))) {
        return true;
      } else if (reading.is(i, '[') && reckoning.isCalled(reading.back(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean keeps(int name) {
    return KEEPING.contains(reading.word(name))
        && reading.isDot(reading.back(name))
        && reading.is(reading.back(reading.back(name)), "Math");
  }
}
