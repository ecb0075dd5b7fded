package facetwright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.GlueMarks;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.Folding;
import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.fold.making.Gluing;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Making;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The pictures of gluing of all designs of the library. */
class MidwayPicturesTest {
  /** So much of what moves shows at least, seen, as part of its area. */
  private static final double SHOWS = 0.1;

  static Stream<Path> library() {
    return LibraryDesigns.files().stream();
  }

  private record Made(Design design, Handout handout, MidwayPictures pictures) {
    Net net() {
      return design.net();
    }

    GlueMarks gluing() {
      return GlueMarks.of(design.gluing());
    }
  }

  private static Made made(Path file) throws Exception {
    Design d = LibraryDesigns.design(file);
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), 1);
    Handout handout =
        Handout.of(
            d.title(),
            "",
            Order.usual(d.unit()),
            d.laid(),
            d.gluing(),
            Judgement.of(d.laid(), d.folded(), d.findings()),
            works);
    HandoutPictures pictures =
        new HandoutPictures(d.laid(), handout, Order.usual(d.unit()).telling());
    return new Made(d, handout, pictures.midway());
  }

  private static List<Picture.Midway> shown(Handout handout) {
    return handout.sections().stream()
        .filter(Section.Steps.class::isInstance)
        .flatMap(s -> ((Section.Steps) s).pictures().stream())
        .filter(Picture.Midway.class::isInstance)
        .map(Picture.Midway.class::cast)
        .toList();
  }

  /** All that is glued is done in an action, each of which has its picture; made comes last. */
  @ParameterizedTest
  @MethodSource("library")
  void everyStepHasItsPicture(Path file) throws Exception {
    Made made = made(file);
    List<Picture.Midway> pictures = shown(made.handout());
    List<List<Integer>> at = new ArrayList<>();
    pictures.forEach(p -> at.add(List.of(p.making(), p.at())));
    List<List<Integer>> wanted = new ArrayList<>();
    List<Making> makings = made.handout().makings();
    for (int m = 0; m < makings.size(); m++) {
      for (int i = 0; i <= makings.get(m).actions().size(); i++) {
        if (!makings.get(m).bonds().isEmpty()) {
          wanted.add(List.of(m, i));
        }
      }
    }
    assertThat(at).isEqualTo(wanted);
    assertThat(makings.stream().flatMap(m -> m.bonds().stream()))
        .containsExactlyInAnyOrderElementsOf(
            Gluing.numbered(made.handout().gluing().stages()).stream()
                .filter(b -> isOfFirst(made.net(), Gluing.panel(made.net(), b)))
                .toList());
  }

  /** Parts made alike are told once. */
  private static boolean isOfFirst(Net net, int panel) {
    return net.parts().of(panel).map(p -> net.parts().all().indexOf(p) == p.first()).orElse(true);
  }

  /** The last scene is the made form, panel by panel, seen as everywhere. */
  @ParameterizedTest
  @MethodSource("library")
  void theLastPictureIsWhatIsMade(Path file) throws Exception {
    Made made = made(file);
    FoldPath path = Folding.path(made.design().laid());
    for (Picture.Midway picture : shown(made.handout())) {
      if (made.pictures().scene(picture).action().isEmpty()) {
        assertThat(made.pictures().view(picture)).isEqualTo(Viewpoint.USUAL);
        Scene scene = made.pictures().scene(picture);
        for (int p : scene.shown()) {
          Motion3 pose = path.form().poses().get(p);
          for (Vec2 c : made.net().panels().get(p).outline().corners()) {
            assertThat(scene.at(p, c).distance(pose.apply(c))).isLessThan(1e-6);
          }
        }
      }
    }
  }

  /** What is glued before holds: its sides meet, but for what card gives. */
  @ParameterizedTest
  @MethodSource("library")
  void whatIsGluedHolds(Path file) throws Exception {
    Made made = made(file);
    for (Picture.Midway picture : shown(made.handout())) {
      Scene scene = made.pictures().scene(picture);
      List<Action> before =
          made.handout().makings().get(picture.making()).actions().subList(0, picture.at());
      Making done = new Making(0, before);
      done.bonds().stream()
          .filter(Bond.Joined.class::isInstance)
          .map(b -> made.net().joins().get(((Bond.Joined) b).join()))
          .filter(Join.Seam.class::isInstance)
          .map(Join.Seam.class::cast)
          .forEach(
              s -> {
                Vec3 a = scene.at(s.a().panel(), made.net().segment(s.a()).middle());
                Vec3 b = scene.at(s.b().panel(), made.net().segment(s.b()).middle());
                assertThat(a.distance(b)).as(picture.words()).isLessThan(4);
              });
    }
  }

  /**
   * What moves shows, by the areas of all patches laid over each other; and the points by which it
   * was chosen from where to look tell nearly the same.
   */
  @ParameterizedTest
  @MethodSource("library")
  void whatMovesShows(Path file) throws Exception {
    Made made = made(file);
    for (Picture.Midway picture : shown(made.handout())) {
      Scene scene = made.pictures().scene(picture);
      if (!scene.moves().isEmpty()) {
        Viewpoint from = made.pictures().view(picture);
        int panel = scene.moves().getFirst().panel();
        double exact = share(scene, from, panel);
        assertThat(exact).as(picture.words()).isGreaterThan(SHOWS);
        assertThat(scene.share(panel, from)).as(picture.words()).isCloseTo(exact, within(0.15));
      }
    }
  }

  private static double share(Scene scene, Viewpoint from, int panel) {
    Geometry shown = Planar.factory().createPolygon();
    for (Mark.Patch patch : scene.drawing().seen(from)) {
      boolean isOwn = patch.part() == scene.local(panel);
      int how = isOwn ? OverlayNG.UNION : OverlayNG.DIFFERENCE;
      for (Polygon2 ring : patch.rings().subList(0, 1)) {
        Geometry area = Planar.polygon(ring);
        for (Polygon2 hole : patch.rings().subList(1, patch.rings().size())) {
          area = OverlayNGRobust.overlay(area, Planar.polygon(hole), OverlayNG.DIFFERENCE);
        }
        shown = areas(OverlayNGRobust.overlay(shown, areas(area), how));
      }
    }
    return shown.getArea()
        / scene.drawing().net().panels().get(scene.local(panel)).outline().area();
  }

  private static Geometry areas(Geometry all) {
    return all.buffer(0);
  }

  /**
   * The hatch lies on a face that takes glue: in solid lines on patches of it that are turned to
   * the viewer, else dotted, and nowhere else.
   */
  @ParameterizedTest
  @MethodSource("library")
  void onlyTheFaceThatTakesGlueIsHatched(Path file) throws Exception {
    Made made = made(file);
    for (Picture.Midway picture : shown(made.handout())) {
      Scene scene = made.pictures().scene(picture);
      Viewpoint from = made.pictures().view(picture);
      for (Mark mark : made.pictures().block(picture, 58, 50).marks()) {
        if (!(mark instanceof Mark.Patch patch) || patch.part() == Labels.NO_PART) {
          continue;
        }
        boolean solid = patch.edges().stream().anyMatch(e -> e.kind() == LineKind.GLUE);
        boolean dotted = patch.edges().stream().anyMatch(e -> e.kind() == LineKind.GLUE_INSIDE);
        if (solid || dotted) {
          Scene.Move move = scene.moves().getFirst();
          assertThat(scene.shown().get(patch.part())).isEqualTo(move.panel());
          Faces.Face face = made.gluing().faces().get(move.panel());
          assertThat(face).as(picture.words()).isIn(Faces.Face.OUTSIDE, Faces.Face.INSIDE);
          Vec3 normal = scene.poses().get(move.panel()).ez();
          boolean isTurned =
              normal.times(face == Faces.Face.OUTSIDE ? 1 : -1).dot(from.toward()) > 0;
          assertThat(solid).as(picture.words()).isEqualTo(isTurned);
          assertThat(dotted).as(picture.words()).isEqualTo(!isTurned);
        }
      }
    }
  }
}
