package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.Moment.When;
import java.io.Serializable;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The moment of one fitting among the stages of gluing. Where none is named it is the last at which
 * the thing still goes in: a light or a filling while the {@link #way} is wide enough, a ribbon
 * before a panel whose hole it goes through is glued under another, and while a hand reaches in.
 */
public final class Moments {
  /** Two fingers reach through so much, in mm; common practice, no source. */
  public static final double HAND = 20;

  private final Net net;
  private final FoldedForm form;
  private final List<Gluing.Stage> stages;
  private final Fitting fitting;
  private final List<Integer> own;
  private final int glued;
  private final Held held;
  private final Hollow hollow;

  private Moments(Net net, FoldedForm form, List<Gluing.Stage> stages, Fitting fitting) {
    this.net = net;
    this.form = form;
    this.stages = stages;
    this.fitting = fitting;
    this.own =
        IntStream.range(0, stages.size())
            .filter(s -> fitting.panels().contains(first(stages.get(s))))
            .boxed()
            .toList();
    this.glued = (int) own.stream().filter(s -> !isTuck(stages.get(s))).count();
    this.held = new Held(net, form, fitting.panels(), bonds(own.size()));
    this.hollow = new Hollow(net, form.poses(), fitting.panels());
  }

  /** Nothing is lower, in mm. */
  private static final double LOW = 1;

  /**
   * A moment, with what there is room for.
   *
   * @param at the stage it comes before; as many as there are where it comes after all, or when
   *     parts are put together
   * @param needs how wide the way has to be, in mm; 0 for what needs none
   * @param way how wide it is then, in mm; where that is wide enough it may be wider
   * @param room how wide the hollow is for a thing so high, in mm
   * @param low the same for the lowest thing, where none so high stands there
   * @param hole how wide the hole below is by which it falls out when all is made, in mm; 0 where
   *     it does not
   */
  public record Found(int at, double needs, double way, double room, double low, double hole)
      implements Serializable {
    /** Whether it goes through what is left open. */
    public boolean goesIn() {
      return way >= needs - Shadow.WITHIN;
    }

    /** Whether it has room when all is made. */
    public boolean hasRoom() {
      return room >= needs - Shadow.WITHIN;
    }
  }

  /** The moment of a fitting. */
  static Found of(Net net, FoldedForm form, List<Gluing.Stage> stages, Fitting fitting) {
    return new Moments(net, form, stages, fitting).found();
  }

  private Found found() {
    double height = fitting.thing() instanceof Extra.Light light ? light.height() : 0;
    double needs = needs();
    if (WhenTogether.stage(net, form, fitting).isPresent()) {
      DoubleUnaryOperator across = h -> WhenTogether.room(net, form, fitting, h, needs);
      double room = needs > 0 ? across.applyAsDouble(Math.max(height, LOW)) : needs;
      double low = room > 0 ? room : across.applyAsDouble(LOW);
      return new Found(stages.size(), needs, Double.POSITIVE_INFINITY, room, low, 0);
    }
    boolean isReckoned = needs > 0 && !stages.isEmpty();
    Hollow.Room room =
        isReckoned ? hollow.room(Math.max(height, LOW), needs) : new Hollow.Room(null, needs);
    int k =
        switch (fitting.moment().when()) {
          case FIRST -> 0;
          case LAST -> own.size();
          case BEFORE -> touching().stream().min(Integer::compare).orElse(own.size());
          case AFTER ->
              touching().stream().max(Integer::compare).map(s -> s + 1).orElse(own.size());
          case FOUND -> isReckoned ? Math.min(lastOpen(needs, room), uncovered()) : glued;
        };
    double way = isReckoned ? way(k, room, needs) : needs;
    double loose = fitting.thing().loose();
    double hole =
        isReckoned && room.middle() != null && loose > 0 ? hollow.falls(room.middle(), loose) : 0;
    double low = room.across() > 0 ? room.across() : hollow.room(LOW, needs).across();
    return new Found(global(k), needs, way, room.across(), low, hole);
  }

  /** How wide the way has to be. */
  private double needs() {
    return switch (fitting.thing()) {
      case Extra.Light light -> light.across();
      case Extra.Filling filling -> filling.hasSize() ? Math.max(filling.across(), HAND) : HAND;
      case Extra.Ribbon ribbon -> holed(ribbon).isEmpty() ? 0 : HAND;
      case Extra.Note _ -> 0;
    };
  }

  /** The latest stage before which the way is wide enough; 0 where it never is. */
  private int lastOpen(double needs, Hollow.Room room) {
    int low = 0;
    int high = glued;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (way(middle, room, needs) >= needs - Shadow.WITHIN) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** How wide the way is when so many of the body's stages are glued. */
  private double way(int k, Hollow.Room room, double needs) {
    Set<Integer> fast = held.after(bonds(Math.min(k, glued)));
    return room.middle() == null || fast.size() <= 1
        ? Double.POSITIVE_INFINITY
        : hollow.way(fast, room.middle(), needs - Shadow.WITHIN);
  }

  /** The first stage that glues a panel whose hole a ribbon goes through under another. */
  private int uncovered() {
    if (!(fitting.thing() instanceof Extra.Ribbon ribbon)) {
      return glued;
    }
    Set<Integer> holed = holed(ribbon);
    return IntStream.range(0, glued)
        .filter(k -> stages.get(own.get(k)).bonds().stream().anyMatch(b -> covers(b, holed)))
        .findFirst()
        .orElse(glued);
  }

  private boolean covers(Bond bond, Set<Integer> holed) {
    return switch (bond) {
      case Bond.Closing(int tab) -> holed.contains(tab);
      case Bond.Joined(int join) ->
          switch (net.joins().get(join)) {
            case Join.Seam s -> holed.contains(s.tab());
            case Join.Lap l -> holed.contains(l.under());
          };
    };
  }

  /** The panels whose holes a ribbon goes through. */
  private Set<Integer> holed(Extra.Ribbon ribbon) {
    Set<Integer> holed = new TreeSet<>(ribbon.through());
    if (holed.isEmpty() && ribbon.tied().isEmpty()) {
      fitting.panels().stream().filter(this::hasHole).forEach(holed::add);
    }
    return holed;
  }

  private boolean hasHole(int panel) {
    return net.panels().get(panel).openings().stream().anyMatch(Opening.Hole.class::isInstance);
  }

  /** The body's stages that glue a named panel. */
  private List<Integer> touching() {
    IntPredicate isNamed = fitting.moment().panels()::contains;
    return IntStream.range(0, own.size())
        .filter(
            k ->
                stages.get(own.get(k)).bonds().stream()
                    .anyMatch(b -> touched(net, b).stream().anyMatch(isNamed::test)))
        .boxed()
        .toList();
  }

  /** Whether anything is glued at the panels that a moment names. */
  public static boolean isAnythingGlued(Net net, List<Gluing.Stage> stages, Fitting fitting) {
    When when = fitting.moment().when();
    return (when != When.BEFORE && when != When.AFTER)
        || stages.stream()
            .flatMap(s -> s.bonds().stream())
            .anyMatch(b -> touched(net, b).stream().anyMatch(fitting.moment().panels()::contains));
  }

  /** The panels that a bond joins. */
  private static List<Integer> touched(Net net, Bond bond) {
    return switch (bond) {
      case Bond.Closing(int tab) -> List.of(tab);
      case Bond.Joined(int join) ->
          switch (net.joins().get(join)) {
            case Join.Seam s -> List.of(s.a().panel(), s.b().panel(), s.tab());
            case Join.Lap l -> List.of(l.under(), l.over());
          };
    };
  }

  private int global(int k) {
    if (own.isEmpty()) {
      return stages.size();
    }
    return k < own.size() ? own.get(k) : own.getLast() + 1;
  }

  private List<Bond> bonds(int k) {
    return own.stream()
        .limit(k)
        .flatMap(s -> stages.get(s).bonds().stream())
        .filter(b -> !isTuck(b))
        .toList();
  }

  private int first(Gluing.Stage stage) {
    return Gluing.panel(net, stage.bonds().getFirst());
  }

  private boolean isTuck(Gluing.Stage stage) {
    return isTuck(stage.bonds().getFirst());
  }

  private boolean isTuck(Bond bond) {
    return bond instanceof Bond.Joined(int join) && !net.joins().get(join).hold().isGlued();
  }
}
