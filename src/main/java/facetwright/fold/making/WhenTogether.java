package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Whether a thing goes in or round when parts come together, rather than while its own part is
 * glued: what goes round parts or comes last, after all of them; what has room only in the hollow
 * that parts make, or would fall out of a part that stands on another, before that hollow closes.
 */
public final class WhenTogether {
  private final Net net;
  private final FoldedForm form;
  private final Fitting fitting;
  private final int part;
  private final Set<Integer> mates;

  private WhenTogether(Net net, FoldedForm form, Fitting fitting) {
    this.net = net;
    this.form = form;
    this.fitting = fitting;
    int first = fitting.panels().getFirst();
    List<Parts.Part> all = net.parts().all();
    this.part =
        IntStream.range(0, all.size())
            .filter(p -> all.get(p).panels().contains(first))
            .findFirst()
            .orElse(-1);
    this.mates = mates(stages().size());
  }

  /**
   * The stage of putting together before which a thing goes in; as many as there are where it comes
   * after all; empty where it is for the making of its own part.
   */
  public static OptionalInt stage(Net net, FoldedForm form, Fitting fitting) {
    if (!form.together().isSome()) {
      return OptionalInt.empty();
    }
    WhenTogether when = new WhenTogether(net, form, fitting);
    return when.part < 0 || !form.together().whole().contains(fitting.panels().getFirst())
        ? OptionalInt.empty()
        : when.stage();
  }

  /** The room, in mm, in what is put together; 0 where parts stay apart. */
  static double room(Net net, FoldedForm form, Fitting fitting, double height, double across) {
    if (!form.together().isSome()
        || !form.together().whole().contains(fitting.panels().getFirst())) {
      return 0;
    }
    WhenTogether when = new WhenTogether(net, form, fitting);
    return when.part < 0 ? 0 : when.hollow(when.mates).room(height, across).across();
  }

  private List<Together.Stage> stages() {
    return form.together().stages();
  }

  private OptionalInt stage() {
    return switch (fitting.moment().when()) {
      case LAST -> OptionalInt.of(stages().size());
      case FOUND -> found();
      case FIRST, BEFORE, AFTER -> OptionalInt.empty();
    };
  }

  private OptionalInt found() {
    return switch (fitting.thing()) {
      case Extra.Ribbon ribbon ->
          goesRound(ribbon) && !isInside() ? OptionalInt.of(stages().size()) : OptionalInt.empty();
      case Extra.Light light -> hollow(light.across(), light.height());
      case Extra.Filling filling when filling.hasSize() -> hollow(filling.across(), 1);
      case Extra.Filling _, Extra.Note _ -> OptionalInt.empty();
    };
  }

  private boolean goesRound(Extra.Ribbon ribbon) {
    return ribbon.through().isEmpty() && !ribbon.tied().isEmpty();
  }

  /** Whether its part goes into another, so that nothing goes round it any more. */
  private boolean isInside() {
    return net.parts().placing(part).filter(Placing.Into.class::isInstance).isPresent();
  }

  private OptionalInt hollow(double across, double height) {
    Hollow alone = new Hollow(net, form.whole(), fitting.panels());
    Hollow.Room own = alone.room(height, across);
    if (own.across() >= across - Shadow.WITHIN) {
      return fallsOut(alone, own.middle(), across) ? standsOn() : OptionalInt.empty();
    }
    if (hollow(mates).room(height, across).across() < across - Shadow.WITHIN) {
      return OptionalInt.empty();
    }
    for (int k = 0; k < stages().size(); k++) {
      Set<Integer> with = mates(k + 1);
      if (with.size() > 1 && hollow(with).room(height, across).across() >= across - Shadow.WITHIN) {
        return OptionalInt.of(k);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether a made part is open below the place of the thing. */
  private boolean fallsOut(Hollow alone, Vec3 middle, double across) {
    return standsOn().isPresent()
        && alone.isOpen(Set.copyOf(fitting.panels()), middle, Vec3.Z.times(-1), across);
  }

  /** The stage at which its part is stood on another. */
  private OptionalInt standsOn() {
    return IntStream.range(0, stages().size())
        .filter(k -> placing(k) instanceof Placing.On on && on.part() == part)
        .findFirst();
  }

  private Placing placing(int stage) {
    return stages().get(stage).as();
  }

  /** The parts that enclose a hollow with its own after so many stages; not those beside it. */
  private Set<Integer> mates(int stages) {
    Set<Integer> all = new HashSet<>(Set.of(part));
    for (boolean isMore = true; isMore; ) {
      isMore = false;
      for (int k = 0; k < stages; k++) {
        Placing placing = placing(k);
        if (!(placing.shut() instanceof Placing.Beside)
            && (all.contains(placing.part()) || all.contains(placing.onto()))) {
          isMore |= all.addAll(List.of(placing.part(), placing.onto()));
        }
      }
    }
    return all;
  }

  private Hollow hollow(Set<Integer> parts) {
    List<Integer> panels =
        parts.stream().flatMap(p -> net.parts().all().get(p).panels().stream()).toList();
    return new Hollow(net, form.whole(), panels);
  }
}
