package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What of a drawing lies in a window. Lines and areas are cut off at its edge; a circle that
 * reaches over it becomes a line of short sides; a line of text is kept whole where all of it lies
 * inside, and else left out.
 */
public final class Clip {
  private static final int CIRCLE_SIDES = 120;

  private final Box2 window;

  public Clip(Box2 window) {
    this.window = window;
  }

  public List<Mark> of(List<Mark> marks) {
    List<Mark> kept = new ArrayList<>();
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Stroke s -> stroke(s, kept);
        case Mark.Circle c -> circle(c, kept);
        case Mark.Fill f -> fill(f, kept);
        case Mark.Patch p -> {
          if (p.rings().stream().allMatch(r -> holds(r.box()))) {
            kept.add(p);
          }
        }
        case Mark.Text t -> {
          if (holds(box(t))) {
            kept.add(t);
          }
        }
      }
    }
    return kept;
  }

  private boolean holds(Box2 box) {
    return window.holds(box, LengthTolerance.FINE);
  }

  private static Box2 box(Mark.Text t) {
    Vec2 along = Vec2.polar(1, Math.toRadians(t.angle()));
    Vec2 start = t.at().minus(along.times(t.back()));
    Vec2 end = start.plus(along.times(t.width()));
    return Box2.around(List.of(start, end)).grown(t.size());
  }

  private void circle(Mark.Circle c, List<Mark> kept) {
    Vec2 arm = new Vec2(c.radius(), c.radius());
    if (holds(Box2.around(List.of(c.centre().minus(arm), c.centre().plus(arm))))) {
      kept.add(c);
    } else {
      stroke(
          Mark.Stroke.around(Polygon2.regular(c.centre(), CIRCLE_SIDES, c.radius(), 0), c.kind()),
          kept);
    }
  }

  private void fill(Mark.Fill f, List<Mark> kept) {
    Geometry area = Planar.factory().createPolygon();
    for (Polygon2 ring : f.rings()) {
      area = area.symDifference(Planar.polygon(ring));
    }
    Geometry inside =
        area.intersection(
            Planar.polygon(
                Polygon2.rectangle(window.minX(), window.minY(), window.width(), window.height())));
    Areas.rings(inside).forEach(rings -> kept.add(new Mark.Fill(rings, f.kind())));
  }

  private void stroke(Mark.Stroke s, List<Mark> kept) {
    if (s.points().stream().allMatch(this::holds)) {
      kept.add(s);
      return;
    }
    List<Vec2> points = new ArrayList<>(s.points());
    if (s.closed()) {
      points.add(points.getFirst());
    }
    List<Vec2> run = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      Vec2 a = points.get(i);
      Vec2 b = points.get(i + 1);
      double[] part = inside(a, b);
      if (part[1] - part[0] <= 0) {
        end(run, s.kind(), kept);
        continue;
      }
      if (run.isEmpty()) {
        run.add(a.toward(b, part[0]));
      }
      run.add(part[1] == 1 ? b : a.toward(b, part[1]));
      if (part[1] < 1) {
        end(run, s.kind(), kept);
      }
    }
    end(run, s.kind(), kept);
  }

  private boolean holds(Vec2 p) {
    return p.x() >= window.minX()
        && p.x() <= window.maxX()
        && p.y() >= window.minY()
        && p.y() <= window.maxY();
  }

  private static void end(List<Vec2> run, LineKind kind, List<Mark> kept) {
    if (run.size() > 1) {
      kept.add(new Mark.Stroke(run, false, kind));
    }
    run.clear();
  }

  /** From which part of a line to which it lies inside (the method of Liang and Barsky, 1984). */
  private double[] inside(Vec2 a, Vec2 b) {
    Vec2 d = b.minus(a);
    double[] step = {-d.x(), d.x(), -d.y(), d.y()};
    double[] room = {
      a.x() - window.minX(), window.maxX() - a.x(), a.y() - window.minY(), window.maxY() - a.y()
    };
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (step[i] == 0) {
        if (room[i] < 0) {
          return new double[] {0, 0};
        }
      } else if (step[i] < 0) {
        from = Math.max(from, room[i] / step[i]);
      } else {
        to = Math.min(to, room[i] / step[i]);
      }
    }
    return new double[] {from, to};
  }
}
