package facetwright.script.api;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts.Placing;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.List;
import java.util.Optional;

/** A part in the making: what the script calls it, and where it goes. */
public final class PartDraft {
  private final Object of;
  private final String name;
  private final PartCard card;
  private final Site site;
  private Goes goes;

  /**
   * Makes a placing of the two parts' numbers, and of which of several made alike it is, from 0.
   */
  @FunctionalInterface
  public interface Reader {
    Placing placing(int part, int onto, int copy);
  }

  /**
   * Where a part goes.
   *
   * @param word what it does there, such as "over"
   * @param places how many places it names
   * @param number how many parts were placed before it
   */
  public record Goes(
      PartDraft onto, String word, Reader reader, int places, Site site, int number) {}

  /**
   * @param of what it is a part of: a wrap, a blank, a panel, or a form laid flat
   * @param name what the script calls it; empty where it does not
   */
  PartDraft(Object of, String name, PartCard card, Site site) {
    this.card = card;
    this.of = of;
    this.name = name;
    this.site = site;
  }

  public Object of() {
    return of;
  }

  /** What the script calls it; empty where it does not. */
  public String name() {
    return name;
  }

  /** What it is cut from. */
  public PartCard card() {
    return card;
  }

  public Site site() {
    return site;
  }

  /** Where it goes; nothing where others go to it alone. */
  public Optional<Goes> goes() {
    return Optional.ofNullable(goes);
  }

  private Message told() {
    return name.isEmpty()
        ? Message.of("the part made in line %s", site.line())
        : Message.of("%s", Value.name(name));
  }

  /** It goes to another part; once, and not to what goes to it. */
  void go(Goes where) {
    if (where.onto() == this) {
      throw refusal(
          Message.of("%s can't go %s itself", told(), where.word()),
          Message.of("Name another part: lid.%s(box).", where.word()));
    }
    int made = card.count();
    if (made > 1 && made != where.onto().card.count() && made != where.places()) {
      throw refusal(
          Message.of(
              "%s is made %s times, and %s named where it goes",
              told(), made, where.places() == 1 ? "one place is" : where.places() + " places are"),
          where.word().equals("on")
              ? Message.of("Give at as a list of %s places: { at: [[-20, 0], [20, 0]] }.", made)
              : Message.text("Make the others a part of their own, or make as many of the other."));
    }
    if (made == 1 && where.places() > 1) {
      throw refusal(
          Message.of("%s is made once, and %s places are named", told(), where.places()),
          Message.of("Make it as often: count: %s.", where.places()));
    }
    if (goes != null) {
      throw refusal(
          Message.of(
              "%s goes to two places: it goes %s %s in line %s already",
              told(), goes.word, goes.onto.told(), goes.site.line()),
          Message.text("Take one of the two out, or make a second part for the second place."));
    }
    for (PartDraft on = where.onto(); on != null; on = on.goes == null ? null : on.goes.onto) {
      if (on == this) {
        throw refusal(
            Message.of(
                "%s can't go %s %s, which goes to it itself",
                told(), where.word(), where.onto().told()),
            Message.text("Leave one part where it stands, and let the others go to it."));
      }
    }
    goes = where;
  }

  private static CallException refusal(Message told, Message remedy) {
    return new CallException(told.capital(), remedy, List.of());
  }
}
