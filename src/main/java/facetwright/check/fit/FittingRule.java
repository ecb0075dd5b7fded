package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Moments;
import facetwright.fold.pose.Closure;
import facetwright.measure.Millilitres;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.Moment.When;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is to go in and has no room, no way in at its moment, or no such moment. */
public final class FittingRule implements Rule {
  /** Narrower than this, in mm, a hollow is none to speak of. */
  private static final double NONE = 1;

  @Override
  public List<Finding> find(Subject subject) {
    List<Fitting> all = subject.net().fittings().all();
    if (all.isEmpty() || subject.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    GlueOrder gluing = subject.gluing();
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Fitting fitting = all.get(i);
      if (!Moments.isAnythingGlued(subject.net(), gluing.stages(), fitting)) {
        found.add(noMoment(subject, fitting));
        continue;
      }
      Moments.Found moment = gluing.moments().get(i);
      if (!moment.hasRoom() && !(fitting.thing() instanceof Extra.Ribbon)) {
        found.add(noRoom(fitting, moment));
      } else if (!moment.goesIn()) {
        found.add(noWay(fitting, moment));
      } else {
        if (moment.hole() > 0) {
          found.add(falls(fitting, moment));
        }
        tooMuch(subject, fitting).ifPresent(found::add);
      }
    }
    return found;
  }

  private static Finding noMoment(Subject subject, Fitting fitting) {
    int panel = fitting.moment().panels().getFirst();
    return told(
        "no-moment",
        Finding.Severity.ERROR,
        Message.of(
            "%s has no moment: nothing is glued at %s",
            fitting.thing().called(), subject.name(panel)),
        Message.text(
            "Name a panel that is glued, such as a tab or what it goes under, or say at: \"first\""
                + " or at: \"last\"."),
        fitting);
  }

  private static Finding noRoom(Fitting fitting, Moments.Found moment) {
    boolean isHollow = moment.room() > NONE;
    return told(
        "no-room",
        Finding.Severity.ERROR,
        Message.of(
            "%s has no room inside: it is %s across, and %s",
            fitting.thing().called(),
            Value.length(moment.needs()),
            isHollow
                ? Message.of(
                    "what stands so high there may be up to %s", Value.atMost(moment.room()))
                : Message.text("nothing so high stands there")),
        isHollow
            ? Message.of(
                "Take one up to %s across, or make the form larger.", Value.atMost(moment.room()))
            : moment.low() >= moment.needs()
                ? Message.text("Take a lower one, or make the form larger.")
                : Message.of(
                    "Take a lower one, up to %s across, or make the form larger.",
                    Value.atMost(moment.low())),
        fitting);
  }

  private static Finding falls(Fitting fitting, Moments.Found moment) {
    return told(
        "falls-out",
        Finding.Severity.WARNING,
        Message.of(
            "%s is held by nothing below: the hole there lets through what is up to %s across",
            fitting.thing().called(), Value.atMost(moment.hole())),
        Message.of(
            "Make the hole less than %s wide, or take one more than %s across; or lift the form"
                + " off what stands on the table.",
            Value.atMost(fitting.thing().loose()), Value.atLeast(moment.hole())),
        fitting);
  }

  private static Finding noWay(Fitting fitting, Moments.Found moment) {
    boolean isFound = fitting.moment().when() == When.FOUND;
    return told(
        "no-way-in",
        Finding.Severity.ERROR,
        Message.of(
            "%s does not go in%s: it needs a way %s wide, and what is left open is %s wide",
            fitting.thing().called(),
            isFound ? "" : " at its moment",
            Value.length(moment.needs()),
            Value.atMost(moment.way())),
        isFound
            ? Message.text(
                "Leave a facet open, cut a window that it goes through, or take a smaller one.")
            : Message.text(
                "Leave the moment out: then it goes in at the last step that leaves room for it."),
        fitting);
  }

  private static Optional<Finding> tooMuch(Subject subject, Fitting fitting) {
    double holds = subject.folded().measures(subject.net(), fitting.panels()).volume();
    return fitting.thing() instanceof Extra.Filling filling
            && filling.hasVolume()
            && filling.volume() > holds
        ? Optional.of(
            told(
                "too-full",
                Finding.Severity.WARNING,
                Message.of(
                    "%s is %s ml, and there is room for %s ml",
                    fitting.thing().called(), ml(filling.volume()), ml(holds)),
                Message.text("Fill in less, or make the form larger."),
                fitting))
        : Optional.empty();
  }

  private static String ml(double mm3) {
    return Decimals.places(Math.max(0, mm3) / Millilitres.ONE, 1);
  }

  private static Finding told(
      String rule, Finding.Severity severity, Message what, Message remedy, Fitting fitting) {
    Finding found =
        new Finding(
            rule,
            severity,
            Message.of("%s.", what).capital(),
            remedy,
            new Place.WholeNet(),
            fitting.site());
    return severity == Finding.Severity.ERROR ? found.telling(what) : found;
  }
}
