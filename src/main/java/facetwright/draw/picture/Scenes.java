package facetwright.draw.picture;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.GlueMarks;
import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.fold.making.Midway;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Parts;
import facetwright.papers.handout.Making;
import facetwright.papers.handout.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What pictures of a making show, action by action. */
final class Scenes {
  private final Net net;
  private final FoldedForm form;
  private final GlueMarks marks;
  private final Midway midway;

  Scenes(Net net, FoldPath path, GlueMarks marks) {
    this.net = net;
    this.form = path.form();
    this.marks = marks;
    this.midway = new Midway(net, path);
  }

  /** One scene an action, and one of what is made. */
  List<Scene> of(Making making) {
    List<Scene> scenes = new ArrayList<>();
    for (int i = 0; i <= making.actions().size(); i++) {
      scenes.add(scene(making, i));
    }
    return scenes;
  }

  private Scene scene(Making making, int at) {
    List<Motion3> poses = midway.before(making.actions(), at);
    boolean isAll = making.part() == Picture.Folded.ALL;
    List<Integer> shown =
        isAll
            ? IntStream.range(0, net.panels().size()).boxed().toList()
            : net.parts().all().get(making.part()).panels();
    Optional<Action> action =
        at < making.actions().size() ? Optional.of(making.actions().get(at)) : Optional.empty();
    List<Scene.Move> moves =
        Action.bonds(action.stream().toList()).stream().map(b -> move(b, poses)).toList();
    Net part = isAll ? net : only(making.part());
    List<Motion3> own = of(shown, poses);
    return new Scene(
        new Sight(part, own),
        new FoldedDrawing(part, own, true),
        shown,
        poses,
        action,
        moves,
        mouth(making, at, poses, shown));
  }

  private Net only(int part) {
    Parts.Part of = net.parts().all().get(part);
    return NetMerge.only(net, of.panels(), of.stance());
  }

  private static List<Motion3> of(List<Integer> shown, List<Motion3> poses) {
    return shown.stream().map(poses::get).toList();
  }

  private Scene.Move move(Bond bond, List<Motion3> poses) {
    int panel = Midway.lying(net, bond);
    Optional<Integer> host = Optional.empty();
    Optional<EdgeRef> side = Optional.empty();
    if (bond instanceof Bond.Joined(int join)) {
      switch (net.joins().get(join)) {
        case Join.Seam s -> {
          host = Optional.of(s.b().panel());
          side = Optional.of(s.b());
        }
        case Join.Lap l -> host = Optional.of(l.over());
      }
    }
    Vec2 middle = net.panels().get(panel).outline().centroid();
    Vec3 made = form.poses().get(panel).apply(middle);
    Vec3 goal =
        host.map(h -> form.poses().get(h).inverse().then(poses.get(h)).apply(made)).orElse(made);
    boolean isTaped =
        bond instanceof Bond.Joined(int join)
            && net.joins().get(join) instanceof Join.Seam s
            && s.tab() == Join.Seam.NO_TAB;
    Faces.Face face =
        isTaped ? Faces.Face.NONE : marks.faces().getOrDefault(panel, Faces.Face.NONE);
    return new Scene.Move(bond, panel, face, host, side, goal, form.poses().get(panel).ez());
  }

  /** From the middle of the piece to what is not closed yet. */
  private Optional<Vec3> mouth(Making making, int at, List<Motion3> poses, List<Integer> shown) {
    if (at == making.actions().size()
        || !(making.actions().get(at) instanceof Action.Fitted(int fitting, boolean _))) {
      return Optional.empty();
    }
    List<Integer> own =
        shown.stream().filter(net.fittings().all().get(fitting).panels()::contains).toList();
    Vec3 middle = middle(own, form.poses());
    List<Integer> open =
        Action.bonds(making.actions().subList(at, making.actions().size())).stream()
            .map(b -> Midway.lying(net, b))
            .toList();
    Vec3 way = open.isEmpty() ? Vec3.Z : middle(open, poses).minus(middle);
    return Optional.of(way.length() < 1 ? Vec3.Z : way);
  }

  private Vec3 middle(List<Integer> panels, List<Motion3> poses) {
    Vec3 sum = Vec3.ZERO;
    for (int p : panels) {
      sum = sum.plus(poses.get(p).apply(net.panels().get(p).outline().centroid()));
    }
    return sum.times(1.0 / panels.size());
  }
}
