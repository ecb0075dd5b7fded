package facetwright.fold.touch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Which of panels that lie on each other lies over which, found from what is known and from what is
 * asked: each {@link Crossing}, and that of three panels that share a place none lies over the one
 * that is over the one over it. What is known is followed; what that leaves open is tried, up to a
 * bound, one way and the other.
 */
final class Orders {
  /** So many trials are made among panels that hang together; what takes more is let be. */
  private static final int TRIALS = 2000;

  private final Predicate<int[]> shares;
  private final Map<Long, Integer> numbers = new LinkedHashMap<>();
  private final List<int[]> panels = new ArrayList<>();
  private final Map<Integer, Map<Integer, Integer>> with = new HashMap<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<List<Rule>> rulesOf = new ArrayList<>();
  private final Map<List<Integer>, Boolean> shared = new HashMap<>();

  /**
   * For each pair 1 where the panel of the smaller number lies over the other, −1 under, 0 open.
   */
  private int[] order = new int[16];

  private final Deque<Integer> trail = new ArrayDeque<>();
  private int trials;
  private Optional<Crossing.Pair> round = Optional.empty();

  /**
   * @param pairs numbers of pairs
   * @param product what their orders have to come to when multiplied
   */
  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never told apart.
  private record Rule(int[] pairs, int product, Crossing of) {}

  /**
   * @param shares whether three panels share a place
   */
  Orders(Predicate<int[]> shares) {
    this.shares = shares;
  }

  /** Counts in two panels that share a place. */
  int pair(int a, int b) {
    return numbers.computeIfAbsent(
        Crossings.key(a, b),
        _ -> {
          int number = panels.size();
          panels.add(new int[] {Math.min(a, b), Math.max(a, b)});
          rulesOf.add(new ArrayList<>());
          with.computeIfAbsent(a, _ -> new TreeMap<>()).put(b, number);
          with.computeIfAbsent(b, _ -> new TreeMap<>()).put(a, number);
          order = panels.size() > order.length ? Arrays.copyOf(order, 2 * order.length) : order;
          return number;
        });
  }

  /** Asks for something. */
  void ask(Crossing crossing) {
    int[] pairs = new int[crossing.pairs().size()];
    int product = crossing.even() ? 1 : -1;
    for (int i = 0; i < pairs.length; i++) {
      Crossing.Pair p = crossing.pairs().get(i);
      pairs[i] = pair(p.a(), p.b());
      product = p.a() < p.b() ? product : -product;
    }
    Rule rule = new Rule(pairs, product, crossing);
    rules.add(rule);
    for (int p : pairs) {
      rulesOf.get(p).add(rule);
    }
  }

  /** Takes orders as known, first over second, and follows them all together. */
  void know(List<Crossing.Pair> known) {
    Deque<Integer> open = new ArrayDeque<>();
    for (Crossing.Pair p : known) {
      Integer pair = numbers.get(Crossings.key(p.a(), p.b()));
      if (pair != null && order[pair] == 0) {
        put(pair, p.a() < p.b() ? 1 : -1, open);
      }
    }
    follow(open, new LinkedHashSet<>());
  }

  /**
   * Takes one more as known and follows it; pairs that do not share a place have no order.
   *
   * @return whether it agrees with what was known before
   */
  boolean tell(int over, int under) {
    Integer pair = numbers.get(Crossings.key(over, under));
    return pair == null || set(pair, over < under ? 1 : -1, new LinkedHashSet<>());
  }

  /** What is asked and can't be any more. */
  List<Collision> broken() {
    return rules.stream().filter(r -> product(r) == -r.product).map(r -> r.of.otherwise()).toList();
  }

  /** Two panels each of which is known to be over the other by way of a third; empty where none. */
  Optional<Crossing.Pair> round() {
    return round;
  }

  /**
   * What is asked of panels that can't lie as they do however what is left open is ordered: what
   * fails first, first.
   */
  List<List<Crossing>> stuck() {
    List<List<Crossing>> found = new ArrayList<>();
    for (List<Integer> pairs : together()) {
      Set<Rule> broken = new LinkedHashSet<>();
      trials = TRIALS;
      if (!isPossible(pairs, broken)) {
        Set<Integer> own = Set.copyOf(pairs);
        rules.stream().filter(r -> own.contains(r.pairs[0])).forEach(broken::add);
        found.add(broken.stream().map(Rule::of).toList());
      }
    }
    return found;
  }

  private int product(Rule rule) {
    int product = 1;
    for (int p : rule.pairs) {
      product *= order[p];
    }
    return product;
  }

  /** Sets an order and all that follows; false where that can't be, what breaks is kept. */
  private boolean set(int first, int value, Set<Rule> broken) {
    if (order[first] != 0) {
      return order[first] == value;
    }
    Deque<Integer> open = new ArrayDeque<>();
    put(first, value, open);
    return follow(open, broken);
  }

  private boolean follow(Deque<Integer> open, Set<Rule> broken) {
    boolean can = true;
    while (!open.isEmpty()) {
      int pair = open.poll();
      for (Rule rule : rulesOf.get(pair)) {
        can &= follow(rule, open, broken);
      }
      can &= passOn(pair, open);
    }
    return can;
  }

  private void put(int pair, int value, Deque<Integer> open) {
    order[pair] = value;
    trail.push(pair);
    open.add(pair);
  }

  private boolean follow(Rule rule, Deque<Integer> open, Set<Rule> broken) {
    int left = -1;
    int product = rule.product;
    for (int p : rule.pairs) {
      if (order[p] == 0 && left >= 0) {
        return true;
      }
      left = order[p] == 0 ? p : left;
      product *= order[p] == 0 ? 1 : order[p];
    }
    if (left >= 0) {
      put(left, product, open);
      return true;
    }
    if (product < 0) {
      broken.add(rule);
    }
    return product > 0;
  }

  /** What follows where a third panel shares a place with both. */
  private boolean passOn(int pair, Deque<Integer> open) {
    int a = panels.get(pair)[0];
    int b = panels.get(pair)[1];
    boolean can = true;
    Map<Integer, Integer> withB = with.get(b);
    for (Map.Entry<Integer, Integer> entry : with.get(a).entrySet()) {
      int c = entry.getKey();
      Integer third = withB.get(c);
      if (c == b || third == null) {
        continue;
      }
      int ab = order[pair];
      int bc = over(third, b, c);
      int ca = over(entry.getValue(), c, a);
      boolean isRound = ab == bc && ab == ca;
      boolean tells = bc + ca != 0 && (bc == 0 || ca == 0) && ab == bc + ca;
      if ((isRound || tells) && share(a, b, c)) {
        if (isRound) {
          can = false;
          round = Optional.of(new Crossing.Pair(a, b));
        }
        if (bc == 0) {
          put(third, b < c ? -ab : ab, open);
        } else if (ca == 0) {
          put(entry.getValue(), c < a ? -ab : ab, open);
        }
      }
    }
    return can;
  }

  private int over(int pair, int a, int b) {
    return a < b ? order[pair] : -order[pair];
  }

  private boolean share(int a, int b, int c) {
    return shared.computeIfAbsent(
        IntStream.of(a, b, c).sorted().boxed().toList(),
        s -> shares.test(s.stream().mapToInt(Integer::intValue).toArray()));
  }

  /** Whether the open ones of these can be ordered. */
  private boolean isPossible(List<Integer> pairs, Set<Rule> broken) {
    Integer open = null;
    for (int p : pairs) {
      if (order[p] == 0 && (open == null || rulesOf.get(p).size() > rulesOf.get(open).size())) {
        open = p;
      }
    }
    if (open == null || trials-- <= 0) {
      return true;
    }
    int known = trail.size();
    for (int value : new int[] {1, -1}) {
      boolean can = set(open, value, broken) && isPossible(pairs, broken);
      if (can) {
        return true;
      }
      while (trail.size() > known) {
        order[trail.pop()] = 0;
      }
    }
    return false;
  }

  /** Pairs that have to do with each other, those that nothing is asked of left out. */
  private List<List<Integer>> together() {
    int[] root = new int[panels.size()];
    for (int p = 0; p < root.length; p++) {
      root[p] = p;
    }
    for (Rule rule : rules) {
      for (int p : rule.pairs) {
        root[find(root, p)] = find(root, rule.pairs[0]);
      }
    }
    for (int p = 0; p < root.length; p++) {
      Map<Integer, Integer> withB = with.get(panels.get(p)[1]);
      for (Map.Entry<Integer, Integer> entry : with.get(panels.get(p)[0]).entrySet()) {
        if (withB.containsKey(entry.getKey())) {
          root[find(root, entry.getValue())] = find(root, p);
          root[find(root, withB.get(entry.getKey()))] = find(root, p);
        }
      }
    }
    Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
    for (int p = 0; p < root.length; p++) {
      groups.computeIfAbsent(find(root, p), _ -> new ArrayList<>()).add(p);
    }
    return groups.values().stream()
        .filter(g -> g.stream().anyMatch(p -> !rulesOf.get(p).isEmpty()))
        .toList();
  }

  private static int find(int[] root, int p) {
    int at = p;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }
}
