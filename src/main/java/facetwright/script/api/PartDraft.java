package facetwright.script.api;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts.Lie;
import facetwright.net.Parts.Placing;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.ArrayList;
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
   * @param reader none of what goes where another takes it along
   * @param word what it does there, such as "over"
   * @param places how many places it names
   * @param company what goes in with it
   * @param number how many parts were placed before it
   */
  public record Goes(
      PartDraft onto,
      String word,
      Reader reader,
      int places,
      Company company,
      Site site,
      int number) {
    /** Of what goes there alone. */
    public static Goes alone(PartDraft onto, String word, Reader reader, int places, Site site) {
      return new Goes(onto, word, reader, places, Company.NONE, site, 0);
    }

    Goes numbered(int after) {
      return new Goes(onto, word, reader, places, company, site, after);
    }

    /** Whether it goes over all that is made of what it names. */
    public boolean isOverSeveral() {
      return word.equals("over") && company.shares();
    }
  }

  /**
   * What goes into one opening together.
   *
   * @param others those beside the part that it goes over, or beside this one into another
   * @param lie how they lie
   * @param shares of what goes over others whether it goes over all of each that are made; else
   *     whether it goes in side by side with what goes in there after it or before
   */
  public record Company(List<PartDraft> others, Lie lie, boolean shares) {
    /** Of what goes where it goes alone. */
    public static final Company NONE = new Company(List.of(), Lie.FOUND, false);

    public Company {
      others = List.copyOf(others);
    }
  }

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
    if (where.onto() == this || where.company().others().contains(this)) {
      throw refusal(
          Message.of("%s can't go %s itself", told(), where.word()),
          Message.of("Name another part: lid.%s(box).", where.word()));
    }
    int made = card.count();
    int there = where.onto().card.count();
    boolean isSeveral = where.isOverSeveral();
    boolean isShared = where.company().shares() && made % there == 0;
    if (made > 1 && isSeveral) {
      throw refusal(
          Message.of(
              "%s is made %s times, and goes %s several at once", told(), made, where.word()),
          Message.text("Make it once, or leave out the brackets: then each goes over one."));
    }
    if (made > 1 && made != there && made != where.places() && !isShared) {
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
      throw twice();
    }
    refuseRound(where.onto(), where.word());
    List<PartDraft> all = new ArrayList<>(List.of(where.onto()));
    for (PartDraft other : where.company().others()) {
      if (all.contains(other)) {
        throw refusal(
            Message.of("%s is named twice", other.told()),
            Message.text("Name each once; of what is made several times, all go in."));
      }
      all.add(other);
    }
    where.company().others().forEach(o -> o.come(where, this));
    goes = where;
  }

  /** It is taken along by another, with the first of those beside it. */
  private void come(Goes with, PartDraft other) {
    refuseRound(other, with.word());
    if (goes == null) {
      refuseRound(with.onto(), "beside");
    }
    if (goes == null) {
      goes = new Goes(with.onto(), "beside", null, 1, Company.NONE, with.site(), with.number());
    } else if (!goes.word.equals("beside")
        || (goes.onto != with.onto() && !with.company().others().contains(goes.onto))) {
      throw twice();
    }
  }

  private void refuseRound(PartDraft onto, String word) {
    for (PartDraft on = onto; on != null; on = on.goes == null ? null : on.goes.onto) {
      if (on == this) {
        throw round(word, onto);
      }
    }
  }

  private CallException round(String word, PartDraft onto) {
    return refusal(
        Message.of("%s can't go %s %s, which goes to it itself", told(), word, onto.told()),
        Message.text("Leave one part where it stands, and let the others go to it."));
  }

  private CallException twice() {
    return refusal(
        Message.of(
            "%s goes to two places: it goes %s %s in line %s already",
            told(), goes.word, goes.onto.told(), goes.site.line()),
        Message.text("Take one of the two out, or make a second part for the second place."));
  }

  private static CallException refusal(Message told, Message remedy) {
    return new CallException(told.capital(), remedy, List.of());
  }
}
