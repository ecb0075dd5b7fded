package facetwright.fold.close;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The corners of the panels sought, numbered as points: one number where scores and seams bring
 * corners together. A seam whose sides differ, or that would fold any panel onto itself, is left
 * apart.
 */
public final class WeldedVertices {
  private final Net net;
  private final Unknowns unknowns;
  private final int[] first;
  private final int[] root;
  private final int[] number;
  private final List<Join.Seam> apart = new ArrayList<>();
  private int points;

  private WeldedVertices(Net net, Unknowns unknowns) {
    this.net = net;
    this.unknowns = unknowns;
    int panels = net.panels().size();
    first = new int[panels + 1];
    for (int p = 0; p < panels; p++) {
      first[p + 1] = first[p] + net.panels().get(p).outline().size();
    }
    root = IntStream.range(0, first[panels]).toArray();
    number = new int[first[panels]];
  }

  /**
   * @param seams whether seams weld, or only scores
   * @param slack the part of their length by which the sides of a welded seam may differ
   */
  public static WeldedVertices of(Net net, Unknowns unknowns, boolean seams, double slack) {
    WeldedVertices welded = new WeldedVertices(net, unknowns);
    for (Score s : net.scores()) {
      if (unknowns.has(s.a()) && unknowns.has(s.b())) {
        welded.weld(s.a(), s.b());
      }
    }
    for (Join join : net.joins()) {
      if (seams
          && join instanceof Join.Seam seam
          && unknowns.has(seam.a())
          && unknowns.has(seam.b())) {
        welded.seam(seam, slack);
      }
    }
    welded.count();
    return welded;
  }

  private void seam(Join.Seam seam, double slack) {
    double a = net.segment(seam.a()).length();
    double b = net.segment(seam.b()).length();
    int[] before = root.clone();
    weld(seam.a(), seam.b());
    if (Math.abs(a - b) > slack * Math.max(a, b)
        || collapses(corner(seam.a().panel(), seam.a().edge()))
        || collapses(corner(seam.a().panel(), seam.a().edge() + 1))) {
      System.arraycopy(before, 0, root, 0, root.length);
      apart.add(seam);
    }
  }

  /** Whether any panel has two corners where this one is. */
  private boolean collapses(int corner) {
    int here = Unknowns.root(root, corner);
    for (int p = 0; p < net.panels().size(); p++) {
      int there = 0;
      for (int c = first[p]; c < first[p + 1]; c++) {
        there += Unknowns.root(root, c) == here ? 1 : 0;
      }
      if (there > 1) {
        return true;
      }
    }
    return false;
  }

  private void weld(EdgeRef a, EdgeRef b) {
    Unknowns.link(root, corner(a.panel(), a.edge()), corner(b.panel(), b.edge() + 1));
    Unknowns.link(root, corner(a.panel(), a.edge() + 1), corner(b.panel(), b.edge()));
  }

  private void count() {
    int[] numberOf = new int[root.length];
    Arrays.fill(numberOf, -1);
    for (int p = 0; p < net.panels().size(); p++) {
      for (int c = first[p]; c < first[p + 1] && unknowns.seeks(p); c++) {
        int r = Unknowns.root(root, c);
        if (numberOf[r] < 0) {
          numberOf[r] = points++;
        }
        number[c] = numberOf[r];
      }
    }
  }

  public int points() {
    return points;
  }

  /** Seams between panels sought whose corners are not welded. */
  List<Join.Seam> apart() {
    return apart;
  }

  private int corner(int panel, int corner) {
    return first[panel] + Math.floorMod(corner, first[panel + 1] - first[panel]);
  }

  /** The number of a panel's corner, counted round. */
  public int point(int panel, int corner) {
    return number[corner(panel, corner)];
  }

  public Vec3 place(double[] x, int panel, int corner) {
    int p = 3 * point(panel, corner);
    return new Vec3(x[p], x[p + 1], x[p + 2]);
  }

  /** Every point in the middle of where the poses put its corners. */
  public double[] middles(List<Motion3> poses) {
    double[] x = new double[3 * points];
    int[] count = new int[points];
    for (int p = 0; p < net.panels().size(); p++) {
      for (int c = 0; c < first[p + 1] - first[p] && unknowns.seeks(p); c++) {
        Vec3 at = poses.get(p).apply(net.panels().get(p).outline().corner(c));
        int i = point(p, c);
        x[3 * i] += at.x();
        x[3 * i + 1] += at.y();
        x[3 * i + 2] += at.z();
        count[i]++;
      }
    }
    for (int i = 0; i < x.length; i++) {
      x[i] /= count[i / 3];
    }
    return x;
  }
}
