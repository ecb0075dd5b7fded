package facetwright.fold.place;

import facetwright.fold.pose.Body;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.fold.pose.OnTable;
import facetwright.fold.pose.Standing;
import facetwright.fold.pose.Together;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts the parts of a net together, in the order in which its maker says so. Each goes with all
 * that has gone to it before, and stops where it touches what is there: card has no thickness here.
 * What goes into an opening too narrow for it is put as if it were narrower.
 *
 * <p>What it does not promise: that parts on one another's sides are clear of each other.
 */
public final class Putting {
  private final Net net;
  private final List<Motion3> apart;
  private final List<List<Integer>> bodies;
  private final List<Motion3> stood = new ArrayList<>();
  private final List<Skin> skins = new ArrayList<>();
  private final Cluster[] cluster;
  private final Motion3[] table;
  private final List<Placing> mates = new ArrayList<>();
  private final List<Together.Stage> stages = new ArrayList<>();
  private final Map<Integer, HingeLine> hinges = new LinkedHashMap<>();
  private final List<Together.Nest> nests = new ArrayList<>();
  private final List<Together.Refused> refused = new ArrayList<>();

  private Putting(Net net, List<Motion3> apart, List<List<Integer>> bodies) {
    this.net = net;
    this.apart = apart;
    this.bodies = bodies;
    int n = net.parts().all().size();
    this.cluster = new Cluster[n];
    this.table = new Motion3[n];
    for (int p = 0; p < n; p++) {
      Parts.Part part = net.parts().all().get(p);
      List<Vec3> points = Body.corners(net, apart, part.panels());
      int upright = part.stance().ring().getFirst().panel();
      Motion3 stands = OnTable.onStance(net, apart, part.stance(), points, upright);
      List<Motion3> poses = apart.stream().map(m -> m.then(stands)).toList();
      stood.add(stands);
      skins.add(Skin.of(net, poses, part.panels()));
      cluster[p] = Cluster.of(p);
      table[p] = stands.inverse();
    }
  }

  /**
   * The form with its parts put together; the same where none go anywhere, or where it is not known
   * how it folds.
   *
   * @param form with its bodies apart
   * @param bodies what hangs together, body by body
   * @param tolerance by which corners that meet may miss
   */
  public static FoldedForm together(
      Net net, FoldedForm form, List<List<Integer>> bodies, LengthTolerance tolerance) {
    if (!net.parts().arePlaced() || form.closure() == Closure.NOT_SOLVED) {
      return form;
    }
    Together together = new Putting(net, form.poses(), bodies).together();
    return form.with(together, measures(net, form, together, tolerance));
  }

  /**
   * What the whole measures, all that is hinged shut: as large as all that is together, its parts'
   * volumes added up, what two fill both counted once. What stands over the rim of one and into a
   * third is counted twice.
   *
   * @param apart the form with its parts apart
   */
  private static Measures measures(
      Net net, FoldedForm apart, Together together, LengthTolerance tolerance) {
    Measures all = new Body(net, together.shut(), together.whole(), tolerance).measure();
    double volume = -together.nests().stream().mapToDouble(Together.Nest::shared).sum();
    for (Parts.Part part : net.parts().all()) {
      if (together.whole().contains(part.panels().getFirst())) {
        volume += new Body(net, apart.poses(), part.panels(), tolerance).measure().volume();
      }
    }
    return new Measures(all.width(), all.depth(), all.height(), volume, all.area());
  }

  private Together together() {
    List<Placing> placings = net.parts().placings();
    for (int i = 0; i < placings.size(); i++) {
      if (placings.get(i) instanceof Placing.With) {
        List<Placing.With> group = Gathered.group(placings, i);
        List<Placing> laid =
            new Gathered(net, skins, cluster, mates).of(group, placings.get(i + group.size()));
        for (Placing placing : laid) {
          go(i++, placing);
        }
      }
      go(i, placings.get(i));
    }
    return standing();
  }

  private void go(int index, Placing placing) {
    try {
      whole(placing.part());
      whole(placing.onto());
      Cluster there = cluster[placing.onto()];
      Way.Found found =
          new Way(net, skins, mates, cluster[placing.part()], there).of(index, placing);
      found.nest().ifPresent(nests::add);
      go(index, placing, found);
      if (placing.shut() instanceof Placing.Beside
          || net.parts().placings().get(index) instanceof Placing.With) {
        mates.add(placing);
      }
    } catch (NoWay no) {
      refused.add(new Together.Refused(index, no.why(), no.remedy()));
    }
  }

  /** Throws where a part is several bodies, or glued to what is none of it. */
  private void whole(int part) throws NoWay {
    List<Integer> panels = net.parts().all().get(part).panels();
    for (List<Integer> body : bodies) {
      if (body.contains(panels.getFirst())) {
        if (!body.containsAll(panels)) {
          throw NoWay.ofSeveral(net, part);
        }
        if (body.size() != panels.size()) {
          throw NoWay.ofGlued(net, part);
        }
      }
    }
  }

  private void go(int index, Placing placing, Way.Found found) {
    Cluster comes = cluster[placing.part()];
    Cluster there = cluster[placing.onto()];
    Motion3 was = comes.pose(placing.part()).then(table[comes.parts().getFirst()]);
    Motion3 onto = there.pose(placing.onto()).then(table[there.parts().getFirst()]);
    Motion3 motion = was.inverse().then(found.motion()).then(onto);
    List<Integer> panels =
        comes.parts().stream().flatMap(p -> net.parts().all().get(p).panels().stream()).toList();
    stages.add(new Together.Stage(index, placing, panels, motion, onto.direction(found.from())));
    found.hinge().ifPresent(line -> hinges.put(index, line));
    boolean isLaid = found.isLaid() && there.parts().getFirst() == placing.onto();
    Cluster all = there.with(comes, placing.part(), placing.onto(), found.motion(), isLaid);
    all.parts().forEach(p -> cluster[p] = all);
  }

  /** All on the table: what holds the first panel that goes anywhere in the middle. */
  private Together standing() {
    Cluster main = main();
    List<Integer> whole = panels(main);
    Motion3[] poses = new Motion3[apart.size()];
    for (int part : main.parts()) {
      Motion3 motion = stood.get(part).then(main.pose(part));
      net.parts().all().get(part).panels().forEach(p -> poses[p] = apart.get(p).then(motion));
    }
    List<Vec3> points = corners(poses, whole);
    Motion3 last = Standing.of(points, main.up(), main.along());
    whole.forEach(p -> poses[p] = poses[p].then(last));
    List<Together.Swing> swings =
        new Swings(net, stages)
            .of(hinges, p -> main.parts().contains(p) ? main.pose(p).then(last) : null);
    Motion3[] open = poses.clone();
    swings.forEach(s -> s.panels().forEach(p -> open[p] = open[p].then(s.turned(s.radians()))));
    double right = Standing.seenFromAbove(corners(open, whole)).maxX();
    for (List<Integer> other : others(whole)) {
      for (int p : other) {
        poses[p] = elsewhere(p);
      }
      Box2 box = Standing.seenFromAbove(corners(poses, other));
      Motion3 aside = Standing.shift(new Vec3(right + OnTable.BESIDE - box.minX(), 0, 0));
      other.forEach(p -> poses[p] = poses[p].then(aside));
      other.forEach(p -> open[p] = poses[p]);
      right += OnTable.BESIDE + box.width();
    }
    return new Together(List.of(open), List.of(poses), whole, stages, swings, nests, refused);
  }

  private Cluster main() {
    int first = net.stance().ring().getFirst().panel();
    for (int p = 0; p < cluster.length; p++) {
      if (cluster[p].parts().size() > 1 && net.parts().all().get(p).panels().contains(first)) {
        return cluster[p];
      }
    }
    return cluster[net.parts().placings().getFirst().onto()];
  }

  private List<Integer> panels(Cluster all) {
    return all.parts().stream()
        .flatMap(p -> net.parts().all().get(p).panels().stream())
        .sorted()
        .toList();
  }

  /** What is not part of the whole, thing by thing. */
  private List<List<Integer>> others(List<Integer> whole) {
    List<List<Integer>> others = new ArrayList<>();
    List<Cluster> seen = new ArrayList<>();
    for (List<Integer> body : bodies) {
      if (whole.contains(body.getFirst())) {
        continue;
      }
      int part = part(body.getFirst());
      if (part < 0 || cluster[part].parts().size() == 1) {
        others.add(body);
      } else if (!seen.contains(cluster[part])) {
        seen.add(cluster[part]);
        others.add(panels(cluster[part]));
      }
    }
    return others;
  }

  private int part(int panel) {
    for (int p = 0; p < cluster.length; p++) {
      if (net.parts().all().get(p).panels().contains(panel)) {
        return p;
      }
    }
    return -1;
  }

  /** Where a panel that is no part of the whole is: as it stands, or by what it went to. */
  private Motion3 elsewhere(int panel) {
    int part = part(panel);
    if (part < 0) {
      return apart.get(panel);
    }
    Cluster its = cluster[part];
    return apart
        .get(panel)
        .then(stood.get(part))
        .then(its.pose(part))
        .then(table[its.parts().getFirst()]);
  }

  private List<Vec3> corners(Motion3[] poses, List<Integer> panels) {
    List<Vec3> points = new ArrayList<>();
    for (int p : panels) {
      net.panels().get(p).outline().corners().forEach(c -> points.add(poses[p].apply(c)));
    }
    return points;
  }
}
