package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Finding.Severity;
import facetwright.check.finding.Outlines;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.geom.Polygon2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Optional;

/**
 * A lid whose corners are others than those of all that it could go over.
 *
 * @param box what it comes nearest to going over
 * @param mouth the lid's opening
 * @param open what is left of it by what is glued inside
 * @param full the box seen from its rim, with what is glued outside
 * @param turned how the one goes round the other at best
 */
record OtherShape(
    Subject subject,
    Part lid,
    Part box,
    Part.Mouth mouth,
    Polygon2 open,
    Polygon2 full,
    Turned turned) {

  /** The box that a lid goes over best; empty where no box shows its rim. */
  static Optional<OtherShape> of(Subject subject, Part lid, List<Part> boxes) {
    double caliper = subject.laid().stock().caliper();
    OtherShape best = null;
    for (Part box : boxes) {
      for (Part.Mouth mouth : lid.mouths()) {
        Polygon2 open = mouth.lining().narrowed(mouth.outline(), caliper);
        for (Part.Section section : box.sections()) {
          if (!section.isFaceOn()) {
            continue;
          }
          Polygon2 full = section.lining().widened(section.outline(), caliper);
          Turned turned = Turned.of(open, full);
          if (best == null || turned.room() > best.turned().room()) {
            best = new OtherShape(subject, lid, box, mouth, open, full, turned);
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private double caliper() {
    return subject.laid().stock().caliper();
  }

  /** How much the lid lacks on a side, in mm; below 0 where it has more than it needs. */
  private double lacks() {
    return caliper() - turned.room();
  }

  /** An opening with inward corners may hold what it can't be compared with. */
  Severity severity() {
    if (lacks() <= Slip.LEAST) {
      return Severity.NOTE;
    }
    boolean isCertain = open.isConvex() && lacks() > Slip.LEAST + turned.finer();
    return isCertain ? Severity.ERROR : Severity.WARNING;
  }

  private String boxWord() {
    return box.word().isEmpty() ? "box" : box.word();
  }

  /** In the design's first sentence. */
  private Message verdict() {
    return Message.of(
        "the %s with %s does not go over the %s", lid.word(), subject.name(lid.panel()), boxWord());
  }

  Finding finding() {
    Message corners =
        Message.of(
            "The %s with %s has %s corners and the %s with %s has %s",
            lid.word(),
            subject.name(lid.panel()),
            open.size(),
            boxWord(),
            subject.name(box.panel()),
            full.size());
    Message what =
        severity() == Severity.ERROR
            ? Message.of(
                "%s. However it is turned, it lacks %s on a side to go over it.",
                corners, Value.atLeast(lacks()))
            : Message.of("%s, so whether the one goes over the other can't be told.", corners);
    Finding found =
        new Finding(
            FitRule.NAME,
            severity(),
            what,
            remedy(),
            new Place.AtPanel(lid.panel()),
            subject.panel(lid.panel()).site());
    return severity() == Severity.ERROR ? found.telling(verdict()) : found;
  }

  /**
   * Where tabs come to lie in a lid of another size is not known: there may be one on each wall.
   */
  private Message remedy() {
    Message shape =
        Outlines.isRegular(full)
            ? Message.of(
                "Give the %s %s sides of %s, as its %s has with room for the card",
                lid.word(), full.size(), Value.atLeast(side()), boxWord())
            : Message.of("Give the %s the sides and angles of its %s", lid.word(), boxWord());
    return severity() == Severity.ERROR
        ? Message.of(
            "%s; or make it %s times as large across.",
            shape,
            Decimals.places(
                turned.times(
                    t -> Lining.throughout(open.size()).narrowed(mouth.outline(), t, caliper()),
                    full,
                    caliper() + Slip.EASY / 2),
                4))
        : shape.plus(".");
  }

  /** A side of the box where the card, a layer glued to every wall, and easy room are added. */
  private double side() {
    double across = 4 * caliper() + Slip.EASY;
    return full.side(0).length() + across * Math.tan(Math.PI / full.size());
  }
}
