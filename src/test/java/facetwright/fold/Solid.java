package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Standing;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A convex solid of the reference set (see its licence beside it), edge 100 mm, and its net. */
public record Solid(
    String name, List<Vec3> vertices, List<List<Integer>> faces, JsonNode computed) {
  static final double EDGE = 100;

  @Override
  public String toString() {
    return name;
  }

  static Stream<Solid> all() throws IOException, URISyntaxException {
    Path folder = Path.of(Solid.class.getResource("/reference/solids").toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.getFileName().toString().matches("[pauj]-.*\\.json"))
          .sorted()
          .map(f -> f.getFileName().toString().replace(".json", ""))
          .toList()
          .stream()
          .map(Solid::named);
    }
  }

  public static Solid named(String name) {
    JsonNode tree = json("/reference/solids/" + name + ".json");
    List<Vec3> vertices = new ArrayList<>();
    for (JsonNode v : tree.get("vertices")) {
      vertices.add(
          new Vec3(v.get(0).asDouble(), v.get(1).asDouble(), v.get(2).asDouble()).times(EDGE));
    }
    List<List<Integer>> faces = new ArrayList<>();
    for (JsonNode f : tree.get("faces")) {
      List<Integer> face = new ArrayList<>();
      f.forEach(i -> face.add(i.asInt()));
      faces.add(face);
    }
    return new Solid(name, vertices, faces, tree.get("computed"));
  }

  static JsonNode json(String resource) {
    try (var in = Solid.class.getResourceAsStream(resource)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Vec3 corner(int face, int i) {
    List<Integer> f = faces.get(face);
    return vertices.get(f.get(Math.floorMod(i, f.size())));
  }

  private Vec3 normal(int face) {
    return Standing.normal(faces.get(face).stream().map(vertices::get).toList()).unit();
  }

  private List<Vec2> flat(int face) {
    Vec3 x = corner(face, 1).minus(corner(face, 0)).unit();
    Vec3 y = normal(face).cross(x);
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < faces.get(face).size(); i++) {
      Vec3 d = corner(face, i).minus(corner(face, 0));
      corners.add(new Vec2(d.dot(x), d.dot(y)));
    }
    return corners;
  }

  /** Fold angle over a side of a convex solid, in degrees. */
  double foldAngle(int face, int other) {
    return Math.toDegrees(
        Math.atan2(normal(face).cross(normal(other)).length(), normal(face).dot(normal(other))));
  }

  private int[] across(int face, int side) {
    int from = faces.get(face).get(side);
    int to = faces.get(face).get((side + 1) % faces.get(face).size());
    for (int g = 0; g < faces.size(); g++) {
      List<Integer> f = faces.get(g);
      for (int i = 0; i < f.size(); i++) {
        if (f.get(i) == to && f.get((i + 1) % f.size()) == from) {
          return new int[] {g, i};
        }
      }
    }
    throw new IllegalStateException("an open side");
  }

  /** Unfolded breadth first from the first face; overlaps do not matter here. */
  public Net net() {
    NetDraft draft = new NetDraft();
    PanelDraft[] panels = new PanelDraft[faces.size()];
    panels[0] = draft.panel("face 0", PanelRole.FACET, flat(0), Site.NONE);
    ArrayDeque<Integer> open = new ArrayDeque<>(List.of(0));
    boolean[][] done = new boolean[faces.size()][];
    for (int f = 0; f < done.length; f++) {
      done[f] = new boolean[faces.get(f).size()];
    }
    while (!open.isEmpty()) {
      int face = open.remove();
      for (int i = 0; i < faces.get(face).size(); i++) {
        int[] next = across(face, i);
        if (panels[next[0]] != null) {
          continue;
        }
        EdgeDraft side = panels[face].edge(i);
        List<Vec2> own = flat(next[0]);
        Motion2 move =
            Motion2.carrying(
                own.get(next[1]), own.get((next[1] + 1) % own.size()), side.to(), side.from());
        panels[next[0]] =
            draft.panel(
                "face " + next[0],
                PanelRole.FACET,
                own.stream().map(move::apply).toList(),
                Site.NONE);
        draft.score(
            side,
            panels[next[0]].edge(next[1]),
            Sense.MOUNTAIN,
            FoldAngle.degrees(foldAngle(face, next[0])),
            Site.NONE);
        done[face][i] = true;
        done[next[0]][next[1]] = true;
        open.add(next[0]);
      }
    }
    for (int f = 0; f < done.length; f++) {
      for (int i = 0; i < done[f].length; i++) {
        int[] next = across(f, i);
        if (!done[f][i]) {
          draft.seam(panels[f].edge(i), panels[next[0]].edge(next[1]), null, Site.NONE);
          done[f][i] = true;
          done[next[0]][next[1]] = true;
        }
      }
    }
    return draft.build();
  }

  /** The form has this solid's dihedral angles, each as often, at its scores and seams together. */
  void hasItsDihedrals(Net net, FoldedForm form) {
    List<Double> found = new ArrayList<>(Dihedrals.atScores(net, form));
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      found.add(Dihedrals.between(net, form, seam.a(), seam.b()));
    }
    List<Double> wanted = new ArrayList<>();
    for (JsonNode d : computed.get("dihedrals")) {
      for (int i = 0; i < d.get("count").asInt(); i++) {
        wanted.add(d.get("degrees").asDouble());
      }
    }
    found.sort(null);
    wanted.sort(null);
    assertThat(found).hasSameSizeAs(wanted);
    for (int i = 0; i < wanted.size(); i++) {
      assertThat(found.get(i)).isCloseTo(wanted.get(i), within(1e-8));
    }
  }
}
