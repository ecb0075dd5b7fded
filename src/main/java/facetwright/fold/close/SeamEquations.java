package facetwright.fold.close;

import facetwright.fold.solve.Combined;
import facetwright.fold.solve.Equation;
import facetwright.fold.solve.OnLine;
import facetwright.geom.RoundOff;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What brings the sides of seams together that could not be welded. */
final class SeamEquations {
  /**
   * How much it counts that the ends of a seam meet whose sides differ in length. They can't all
   * meet; so little that panels hardly bend for it, and the whole miss is left in that seam.
   */
  private static final double UNEVEN = 0.01;

  private final Net net;
  private final WeldedVertices welded;
  private final List<Equation> all = new ArrayList<>();

  private SeamEquations(Net net, WeldedVertices welded) {
    this.net = net;
    this.welded = welded;
  }

  static List<Equation> of(Net net, WeldedVertices welded) {
    SeamEquations seams = new SeamEquations(net, welded);
    for (Join.Seam seam : welded.apart()) {
      seams.seam(seam.a(), seam.b());
    }
    return List.copyOf(seams.all);
  }

  /** Ends meet; where the sides differ in length, the shorter lies along the longer. */
  private void seam(EdgeRef a, EdgeRef b) {
    double lengthA = net.segment(a).length();
    double lengthB = net.segment(b).length();
    int fromA = welded.point(a.panel(), a.edge());
    int toA = welded.point(a.panel(), a.edge() + 1);
    int fromB = welded.point(b.panel(), b.edge());
    int toB = welded.point(b.panel(), b.edge() + 1);
    if (Math.abs(lengthA - lengthB) <= RoundOff.PART * Math.max(lengthA, lengthB)) {
      meet(fromA, toB, 1);
      meet(toA, fromB, 1);
      return;
    }
    boolean longA = lengthA > lengthB;
    for (int end : longA ? List.of(fromB, toB) : List.of(fromA, toA)) {
      OnLine line = new OnLine(longA ? fromA : fromB, longA ? toA : toB, end);
      if (Set.copyOf(line.points()).size() == line.points().size()) {
        all.add(line);
      }
    }
    if (fromA != toB && toA != fromB) {
      meet(fromA, toB, UNEVEN);
      meet(toA, fromB, UNEVEN);
    }
  }

  private void meet(int p, int q, double weight) {
    if (p != q) {
      all.add(Combined.meet(p, q, weight));
    }
  }
}
