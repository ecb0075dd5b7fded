package facetwright.draw.picture;

import facetwright.draw.Viewpoint;
import facetwright.fold.making.Action;
import java.util.ArrayList;
import java.util.List;

/**
 * From where the scenes of a making are seen: as long as what moves shows, and the face of it that
 * takes glue, from where the scene before was; else from where they show best.
 */
final class Views {
  /** So much of what moves has to show, as part of its area; more counts no more. */
  static final double WELL = 0.45;

  private static final double STAY = 0.68;
  private static final double STEEP = Math.toRadians(52);
  private static final int ROUND = 8;

  /** What turning the piece upside down costs, and turning it at all. */
  private static final double OVER = 0.25;

  private static final double TURN = 0.1;

  /** An opening is looked at from where it opens to, from no lower than this, by the cosine. */
  private static final double LEVEL = 0.2;

  /** What it costs to look at it from behind. */
  private static final double CLOSED = 0.5;

  private Views() {}

  /** One for each scene; the last, where all is made, as always. */
  static List<Viewpoint> of(List<Scene> scenes) {
    List<Viewpoint> views = new ArrayList<>();
    Viewpoint last = Viewpoint.USUAL;
    for (Scene scene : scenes) {
      last = scene.action().isEmpty() ? Viewpoint.USUAL : next(scene, last);
      views.add(last);
    }
    return List.copyOf(views);
  }

  private static Viewpoint next(Scene scene, Viewpoint last) {
    double stay = value(scene, last);
    if (stay >= STAY) {
      return last;
    }
    Viewpoint best = last;
    double most = stay + TURN;
    for (boolean over : new boolean[] {false, true}) {
      for (double tilt : new double[] {Viewpoint.USUAL.tilt(), STEEP}) {
        for (int i = 0; i < ROUND; i++) {
          Viewpoint from =
              new Viewpoint(Viewpoint.USUAL.turn() + 2 * Math.PI * i / ROUND, tilt, over);
          double value = value(scene, from) - (over == last.isOver() ? 0 : OVER);
          if (value > most) {
            most = value;
            best = from;
          }
        }
      }
    }
    return best;
  }

  /** How well what is done shows, 0 to 1. */
  private static double value(Scene scene, Viewpoint from) {
    if (scene.mouth().isPresent()) {
      return 0.5
          + 0.5 * scene.mouth().get().unit().dot(from.toward())
          + (from.isOver() ? -0.2 : 0.2);
    }
    if (scene.action().orElse(null) instanceof Action.Pinched(List<Integer> gussets, boolean _)) {
      double shown = gussets.stream().mapToDouble(p -> scene.share(p, from)).average().orElse(0);
      return Math.min(1, shown / 0.25);
    }
    Scene.Move move = scene.moves().getFirst();
    double own = Math.min(scene.share(move.panel(), from), WELL) / WELL;
    double host = move.host().map(h -> Math.min(scene.share(h, from), 0.2) / 0.2).orElse(1.0);
    double open = move.host().isEmpty() && move.outward().dot(from.toward()) < LEVEL ? CLOSED : 0;
    return 0.65 * own + (isGlueSeen(scene, move, from) ? 0.2 : 0) + 0.15 * host - open;
  }

  /** Whether the face that takes glue is turned to the viewer; so where none does. */
  static boolean isGlueSeen(Scene scene, Scene.Move move, Viewpoint from) {
    boolean isOutside = scene.drawing().isOutsideSeen(scene.local(move.panel()), from);
    return switch (move.face()) {
      case OUTSIDE -> isOutside;
      case INSIDE -> !isOutside;
      case NONE -> true;
    };
  }
}
