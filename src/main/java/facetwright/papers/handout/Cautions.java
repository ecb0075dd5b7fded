package facetwright.papers.handout;

import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.backing.Backings;
import facetwright.net.fitting.Extra;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to take care of; common practice, no source. */
final class Cautions {
  private Cautions() {}

  /** Words of a title that tell that a light goes in, or behind. */
  private static final List<String> LIT =
      List.of("lantern", "lamp", "light", "beacon", "candle", "luminary", "shade");

  /**
   * @param title of the design
   */
  static List<String> of(Net net, String title, Telling tell) {
    List<String> lines = new ArrayList<>();
    lines.add(tell.say("cautions.sharp", "punched", String.valueOf(hasHole(net))));
    if (isLit(net, title)) {
      lines.add(tell.say("cautions.light"));
    }
    if (hasCell(net)) {
      lines.add(tell.say("cautions.cell"));
    }
    lines.add(tell.say("cautions.infants", "threaded", String.valueOf(isThreaded(net))));
    if (mayTouchFood(net)) {
      lines.add(tell.say("cautions.food"));
    }
    lines.add(tell.say("cautions.rules"));
    return lines;
  }

  /** Whether a light goes in: it is said, or named, or something thin stands behind windows. */
  private static boolean isLit(Net net, String title) {
    String words = title.toLowerCase(Locale.ROOT);
    return hasCell(net)
        || (isUnsaid(net)
            && !net.joins().isEmpty()
            && (LIT.stream().anyMatch(words::contains) || !Backings.of(net).isEmpty()));
  }

  private static boolean hasCell(Net net) {
    return has(net, Extra.Light.class);
  }

  /** Whether it is filled, or nobody says what goes in. */
  private static boolean mayTouchFood(Net net) {
    return has(net, Extra.Filling.class) || isUnsaid(net);
  }

  /** Whether nobody says what goes in: then it may be anything. */
  private static boolean isUnsaid(Net net) {
    return !hasCell(net) && !has(net, Extra.Filling.class) && !has(net, Extra.Ribbon.class);
  }

  private static boolean isThreaded(Net net) {
    return has(net, Extra.Ribbon.class) || hasHole(net);
  }

  private static boolean hasHole(Net net) {
    return net.panels().stream()
        .flatMap(p -> p.openings().stream())
        .anyMatch(Opening.Hole.class::isInstance);
  }

  private static boolean has(Net net, Class<? extends Extra> kind) {
    return net.fittings().all().stream().anyMatch(f -> kind.isInstance(f.thing()));
  }
}
