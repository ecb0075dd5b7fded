package facetwright.fold.place;

import facetwright.fold.pose.PartNames;
import facetwright.fold.pose.Together;
import facetwright.fold.touch.Collision;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.Parts.Placing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How one part goes to another. */
final class Way {
  /** What goes to a place comes from so much farther than it takes, as a part of its size. */
  private static final double CLEAR_OF = 0.25;

  private final Net net;
  private final List<Skin> skins;
  private final Cluster comes;
  private final Cluster there;
  private final List<Placing> mates;

  /**
   * @param skins of all parts, as they stand by themselves
   * @param mates what stands beside another or lies with it
   * @param comes what goes there, with the part that is said to
   * @param there what is there, with the part it goes to
   */
  Way(Net net, List<Skin> skins, List<Placing> mates, Cluster comes, Cluster there) {
    this.net = net;
    this.skins = skins;
    this.mates = mates;
    this.comes = comes;
    this.there = there;
  }

  /**
   * What was found.
   *
   * @param motion from how the part stands by itself to where it is as the other stands by itself
   * @param from whence it comes at last: direction and length, in mm
   * @param isLaid whether the other lies down for it, so that what goes in stands as by itself
   * @param nest where the one goes into the other
   * @param hinge the line about which it opens, as the other stands by itself
   */
  record Found(
      Motion3 motion,
      Vec3 from,
      boolean isLaid,
      Optional<Together.Nest> nest,
      Optional<HingeLine> hinge) {
    Found(Motion3 motion, Vec3 from, boolean isLaid, Optional<Together.Nest> nest) {
      this(motion, from, isLaid, nest, Optional.empty());
    }
  }

  static Value.Name name(Net net, int part) {
    return Value.name(net.parts().all().get(part).name());
  }

  Found of(int index, Placing placing) throws NoWay {
    return switch (placing) {
      case Placing.Over o -> over(index, o);
      case Placing.Into i -> into(index, i);
      case Placing.On o -> on(o);
      case Placing.Beside b -> beside(b);
      case Placing.With _ -> throw new IllegalArgumentException("it is not told how it lies");
      case Placing.Hinged h -> hinged(of(index, h.shut()), h);
    };
  }

  private Found hinged(Found shut, Placing.Hinged hinged) throws NoWay {
    if (shut.nest.filter(Together.Nest::isTube).isPresent()) {
      throw new NoWay(
          Message.of("%s is open at both ends: it slides and can't open", name(net, hinged.part())),
          Message.text("Leave out hinged, or close one end."));
    }
    HingeLine line =
        HingeLine.of(
            net,
            hinged,
            skins.get(hinged.part()).moved(shut.motion),
            there.faces(hinged.onto(), skins, List.of()),
            hinged.shut() instanceof Placing.On ? Vec3.Z : shut.from.unit());
    return new Found(shut.motion, shut.from, shut.isLaid, shut.nest, Optional.of(line));
  }

  private Found over(int index, Placing.Over o) throws NoWay {
    Nested nested = nest(o, o.part(), comes, o.onto(), there, o.by(), true);
    Motion3 straight = nested.motion().inverse();
    Vec3 out = straight.direction(nested.how().mouth().out().times(-1));
    Motion3 motion = turned(straight, out, o.turn());
    return new Found(
        motion,
        out.times(nested.away()),
        false,
        Optional.of(nested.nest(index, o.part(), o.onto())));
  }

  private Found into(int index, Placing.Into i) throws NoWay {
    Nested nested = nest(i, i.onto(), there, i.part(), comes, i.by(), false);
    Vec3 axis = nested.how().mouth().out();
    Motion3 motion = turned(nested.motion(), axis, i.turn());
    return new Found(
        motion,
        axis.times(nested.away()),
        nested.how().isTube() && Math.abs(motion.ez().z()) < 0.5,
        Optional.of(nested.nest(index, i.onto(), i.part())));
  }

  /** Turned about an axis through the middle of how it stands. */
  private static Motion3 turned(Motion3 motion, Vec3 axis, double degrees) {
    Vec3 middle = motion.origin();
    return degrees == 0
        ? motion
        : motion.then(Motion3.about(middle, middle.plus(axis), Math.toRadians(degrees)));
  }

  private Nested nest(
      Placing placing,
      int outer,
      Cluster round,
      int inner,
      Cluster inside,
      double by,
      boolean isTopFirst)
      throws NoWay {
    Skin open = skins.get(outer);
    List<Integer> all = inside.sideBySide(inner, mates);
    Skin full = inside.skin(inner, skins, all);
    Nesting how =
        Nesting.of(open, full, isTopFirst, all.size() > 1)
            .orElseThrow(
                () ->
                    new NoWay(
                        Message.of("%s has no opening", name(net, outer)),
                        Message.of(
                            "Leave %s open: .open(\"top\") before it is unfolded.",
                            name(net, outer))));
    double times =
        how.narrowed()
            .orElseThrow(
                () ->
                    new NoWay(
                        Message.of(
                            all.size() == 1
                                ? "%s does not go into %s: it is %s across there, the opening %s"
                                : "%s do not go into %s: together they are %s across there, the"
                                    + " opening %s",
                            PartNames.of(net.parts(), all),
                            name(net, outer),
                            size(how.full()),
                            size(how.open())),
                        Message.of(
                            "Make the opening of %s wider, or let %s go to a part that it fits.",
                            name(net, outer), name(net, placing.part()))));
    Motion3 start = how.motion(full, 0);
    double most = most(how, start, times, outer, round, full, all, inside);
    double length = full.reach(how.inner().axis()) + full.reach(how.inner().axis().times(-1));
    if (isTopFirst && !how.isTube()) {
      most = Math.min(most, length);
    }
    if (most <= Collision.HELD) {
      throw new Stopped(net, skins, placing, how).at(start, outer, inside, all);
    }
    double depth = Double.isNaN(by) ? most : by;
    if (!Double.isNaN(by) && !how.isTube() && by > most + Collision.HELD) {
      throw new NoWay(
          Message.of(
              "%s goes %s %s by %s at most, not by %s",
              name(net, placing.part()),
              placing.word(),
              name(net, placing.part() == outer ? inner : outer),
              Value.length(most),
              Value.length(by)),
          Message.of("Leave out by, or make it %s at most.", Value.length(most)));
    }
    Motion3 motion = how.motion(full, depth);
    Vec3 axis = how.outer().axis();
    Skin laid = full.moved(motion);
    double shared =
        laid.volumeBeyond(axis, -how.mouth().at()) - laid.volumeBeyond(axis, open.reach(axis));
    double away = depth + CLEAR_OF * length;
    Shoulder shoulder = new Shoulder(how.full(), full, how.inner());
    return new Nested(
        how,
        motion,
        depth,
        away,
        all,
        Gathered.between(mates, all, how.inner().axis()),
        Math.max(0, shared),
        shoulder);
  }

  private static Value size(Polygon2 outline) {
    return Value.size(outline.box().width(), outline.box().height());
  }

  /** How deep the inner part goes; through a tube until both lie middle on middle. */
  private double most(
      Nesting how,
      Motion3 start,
      double times,
      int outer,
      Cluster round,
      Skin full,
      List<Integer> all,
      Cluster inside) {
    Frame frame = how.outer();
    List<List<Vec3>> moving = new ArrayList<>();
    for (List<Vec3> face : full.faces()) {
      moving.add(how.drawn(face, start, times));
    }
    for (List<Vec3> face : inside.faces(all.getFirst(), skins, all)) {
      moving.add(how.drawn(face, start, 1));
    }
    List<List<Vec3>> still =
        round.faces(outer, skins, List.of()).stream()
            .map(f -> f.stream().map(frame::in).toList())
            .toList();
    double way = Contact.way(moving, still);
    Skin open = skins.get(outer);
    double length = full.reach(how.inner().axis()) + full.reach(how.inner().axis().times(-1));
    double deep = open.reach(frame.axis()) + how.mouth().at();
    return how.isTube() ? Math.min(way, (deep + length) / 2) : Math.min(way, length);
  }

  private Found on(Placing.On o) throws NoWay {
    Frame down = Frame.along(Vec3.Z.times(-1));
    Frame up = Frame.along(Vec3.Z);
    Skin foot = skins.get(o.part());
    Skin host = skins.get(o.onto());
    Vec2 middle = foot.end(down).map(Polygon2::centroid).orElse(Vec2.ZERO);
    Vec3 under = down.place(middle, 0);
    Vec2 at = host.end(up).map(Polygon2::centroid).orElse(Vec2.ZERO).plus(o.at());
    Motion3 turn =
        shift(new Vec3(-under.x(), -under.y(), 0))
            .then(Motion3.about(Vec3.ZERO, Vec3.Z, Math.toRadians(o.turn())));
    double high = host.reach(Vec3.Z);
    Motion3 above = turn.then(shift(new Vec3(at.x(), at.y(), high)));
    List<List<Vec3>> moving =
        comes.faces(o.part(), skins, List.of()).stream()
            .map(f -> f.stream().map(c -> down.in(above.apply(c))).toList())
            .toList();
    List<List<Vec3>> still =
        there.faces(o.onto(), skins, List.of()).stream()
            .map(f -> f.stream().map(down::in).toList())
            .toList();
    double way = Contact.way(moving, still);
    if (Double.isInfinite(way)) {
      throw new NoWay(
          Message.of("%s lies beside %s, not on it", name(net, o.part()), name(net, o.onto())),
          Message.text("Bring at nearer to the middle, or put it beside."));
    }
    Motion3 motion = above.then(shift(new Vec3(0, 0, -way)));
    return new Found(
        motion, Vec3.Z.times((1 + CLEAR_OF) * foot.reach(Vec3.Z)), false, Optional.empty());
  }

  private Found beside(Placing.Beside b) {
    Motion3 turn = Motion3.about(Vec3.ZERO, Vec3.Z, Math.toRadians(b.turn()));
    Skin part = skins.get(b.part()).moved(turn);
    Skin host = skins.get(b.onto());
    Vec3 way =
        switch (b.side()) {
          case RIGHT -> Vec3.X;
          case LEFT -> Vec3.X.times(-1);
          case FRONT -> Vec3.Y.times(-1);
          case BACK -> Vec3.Y;
        };
    double far = host.reach(way) + b.gap() + part.reach(way.times(-1));
    double level = -host.reach(Vec3.Z.times(-1)) + part.reach(Vec3.Z.times(-1));
    Motion3 motion = turn.then(shift(way.times(far).plus(new Vec3(0, 0, level))));
    return new Found(motion, way.times(part.reach(way)), false, Optional.empty());
  }

  private static Motion3 shift(Vec3 by) {
    return new Motion3(Vec3.X, Vec3.Y, Vec3.Z, by);
  }
}
