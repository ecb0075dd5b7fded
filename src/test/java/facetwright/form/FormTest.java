package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.change.Chamfer;
import facetwright.form.change.Reshape;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Tabs;
import facetwright.geom.FacetFrame;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.words.Site;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What a form refuses, and in what words; facet frames; windows. */
class FormTest {
  private static final List<Vec3> CUBE = Solids.box(20, 20, 20).corners();

  private static Form facets(List<List<Integer>> facets) {
    return Solids.mesh(CUBE, facets);
  }

  private static void refuses(ThrowingCallable call, String... words) {
    assertThatThrownBy(call).isInstanceOf(FormException.class).hasMessageContainingAll(words);
  }

  @Test
  void facetsThatCannotBe() {
    refuses(() -> facets(List.of(List.of(0, 1))), "facet 1", "at least three");
    refuses(() -> facets(List.of(List.of(0, 1, 9))), "facet 1", "from 0 to 7");
    refuses(() -> facets(List.of(List.of(0, 1, 1, 2))), "facet 1", "twice");
    refuses(() -> facets(List.of(List.of(0, 1, 2, 7))), "facet 1", "not flat", "triangles");
    List<Vec3> bow =
        List.of(Vec3.ZERO, new Vec3(40, 0, 0), new Vec3(0, 20, 0), new Vec3(20, 20, 0));
    refuses(() -> Solids.mesh(bow, List.of(List.of(0, 1, 2, 3))), "facet 1", "crosses itself");
    refuses(() -> facets(List.of()), "at least one facet");
    refuses(
        () -> facets(List.of(List.of(3, 2, 1, 0), List.of(4, 5, 6, 7))),
        "facet 2",
        "no chain of edges");
    refuses(
        () -> facets(List.of(List.of(0, 1, 5, 4), List.of(0, 1, 2, 3))),
        "facet 1",
        "facet 2",
        "same way");
    refuses(
        () -> Solids.mesh(List.of(Vec3.ZERO, Vec3.X, Vec3.X.times(2)), List.of(List.of(0, 1, 2))),
        "no area");
    refuses(
        () ->
            Form.of(
                CUBE,
                List.of(
                    Facet.of("wall", List.of(0, 1, 5, 4)), Facet.of("wall", List.of(1, 2, 6, 5)))),
        "two facets are named \"wall\"");
    refuses(
        () ->
            Form.of(
                CUBE, List.of(Facet.of("a", List.of(0, 1, 2)), Facet.of("b", List.of(2, 1, 0)))),
        "no volume");
  }

  @Test
  void inwardFacetsAreTurned() {
    Form box = Solids.box(20, 20, 20);
    List<Facet> inward = box.facets().stream().map(f -> f.on(f.corners().reversed())).toList();
    Form turned = Form.of(box.corners(), inward);
    assertThat(turned.volume()).isCloseTo(8000, within(1e-9));
    assertThat(turned.frame(turned.facet("top")).normal().z()).isCloseTo(1, within(1e-12));
  }

  @Test
  void rangesOfTheMakers() {
    refuses(() -> Solids.prism(2, 10, 10), "3 to 64", "not 2");
    refuses(() -> Solids.prism(65, 10, 10), "not 65");
    refuses(() -> Solids.pyramid(4, 0, 10), "radius", "over 0");
    refuses(() -> Solids.antiprism(4, 10, 10_001), "height", "10000 mm");
    refuses(() -> Solids.prismBySide(4, Double.NaN, 5), "side");
    refuses(() -> Solids.turned(List.of(new Vec2(5, 0)), 6), "2 to 200 points");
    refuses(
        () -> Solids.turned(List.of(new Vec2(5, 0), new Vec2(0, 5), new Vec2(5, 9)), 6),
        "point 2",
        "axis");
    refuses(
        () ->
            Solids.turned(
                List.of(new Vec2(5, 0), new Vec2(20, 20), new Vec2(20, 5), new Vec2(5, 15)), 6),
        "crosses itself");
    refuses(() -> Solids.turned(List.of(new Vec2(5, 1), new Vec2(5, 1)), 6), "repeats");
    refuses(() -> Solids.turned(List.of(new Vec2(0, 1), new Vec2(0, 5)), 6), "radius over 0");
    refuses(() -> Solids.hull(List.of(Vec3.X, Vec3.Y, Vec3.Z)), "4 to 2000");
    refuses(
        () -> Solids.hull(List.of(Vec3.ZERO, Vec3.X, Vec3.Y, Vec3.X.plus(Vec3.Y))), "one plane");
    refuses(
        () -> Solids.hull(List.of(Vec3.ZERO, Vec3.X, Vec3.X.times(2), Vec3.X.times(3))), "line");
    refuses(() -> Tabs.deep(0), "1 mm to 200 mm");
    refuses(() -> Tabs.USUAL.withBevel(2), "5° to 90°");
    refuses(() -> new Tabs(true, 10, 45, 11), "least depth");
    refuses(() -> Solids.box(20, 20, 20).changed(Chamfer.corners(11)), "at most half", "10 mm");
    refuses(() -> Solids.box(20, 20, 20).changed(Reshape.scaled(0)), "factor");
    refuses(() -> Solids.box(20, 20, 20).changed(Reshape.raised("top", 0)), "not by 0");
    refuses(() -> Solids.box(20, 20, 20).withoutFacet("lid"), "there is no facet \"lid\"");
  }

  @Test
  void framesStandUpright() {
    Form prism = Solids.antiprism(5, 30, 40);
    for (int f = 0; f < prism.facets().size(); f++) {
      FacetFrame frame = prism.frame(f);
      assertThat(frame.x().cross(frame.y()).distance(frame.normal())).isLessThan(1e-12);
      assertThat(frame.y().z()).isGreaterThanOrEqualTo(0);
      assertThat(Math.abs(frame.x().z())).isLessThan(1e-9);
      assertThat(prism.flat(f).centroid().length()).isLessThan(1e-9);
      Vec3 corner = prism.outline(f).getFirst();
      assertThat(frame.space(frame.flat(corner)).distance(corner)).isLessThan(1e-9);
    }
    // Side 1 faces the front: x to the right, y up.
    FacetFrame front = Solids.prism(4, 30, 40).frame(1);
    assertThat(front.x().distance(Vec3.X)).isLessThan(1e-12);
    assertThat(front.y().distance(Vec3.Z)).isLessThan(1e-12);
  }

  @Test
  void windowsKeepInside() {
    Form box = Solids.box(60, 60, 60);
    refuses(
        () -> box.withWindow("top", Polygon2.rectangle(-30, -30, 60, 60), Site.NONE),
        "window in facet \"top\"",
        "touches the edge");
    refuses(
        () ->
            box.withHole("top", Vec2.ZERO, 10, Site.NONE)
                .withHole("top", new Vec2(5, 0), 10, Site.NONE),
        "runs into another");
    refuses(() -> box.withHole("top", Vec2.ZERO, -1, Site.NONE), "diameter");
    refuses(() -> box.withWindowInset("top", 30, Site.NONE), "leaves no window");
    refuses(() -> box.withLayer("top", -1, "red", Site.NONE), "reveal");
    refuses(
        () -> box.withWindowInset("top", 5, Site.NONE).changed(Reshape.raised("top", 10)),
        "windows");
  }

  @Test
  void insetOfAHollowFacet() {
    List<Vec3> corners =
        List.of(
            new Vec3(0, 0, 0),
            new Vec3(60, 0, 0),
            new Vec3(60, 20, 0),
            new Vec3(20, 20, 0),
            new Vec3(20, 60, 0),
            new Vec3(0, 60, 0));
    Form bracket = Solids.mesh(corners, List.of(List.of(0, 1, 2, 3, 4, 5)));
    Form open = bracket.withWindowInset(bracket.facets().getFirst().name(), 5, Site.NONE);
    // An L of 10 mm wide arms, 50 mm long.
    assertThat(open.facets().getFirst().openings().getFirst().outline().area())
        .isCloseTo(50 * 10 + 40 * 10, within(1e-6));
    assertThat(bracket.centre().distance(new Vec3(160 / 6.0, 160 / 6.0, 0))).isLessThan(1e-9);
  }

  @Test
  void formsCanBeSent() throws IOException, ClassNotFoundException {
    Form form = Solids.prism(5, 30, 40).withHole("top", Vec2.ZERO, 4, Site.NONE);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(form);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      Form back = (Form) in.readObject();
      assertThat(back.facets()).isEqualTo(form.facets());
      assertThat(back.corners()).isEqualTo(form.corners());
    }
  }
}
