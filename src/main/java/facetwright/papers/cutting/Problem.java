package facetwright.papers.cutting;

import java.util.ArrayList;
import java.util.List;

/** One sheet and what is wanted from it, in whole millionths of a millimetre. */
final class Problem {
  /** What rounding may take from a sum of shares, as a part: some parts in 1e16. */
  private static final double SUMMED = 1e-15;

  private static final double PER_MM = 1e6;
  static final double PER_VALUE = 1024;

  /** A wanted rectangle as it may lie on the sheet; longer by the kerf. */
  record Fit(int kind, boolean turned, long w, long h, long value) {}

  final Paper paper;
  final long kerf;
  final long width;
  final long height;
  final int[] limit;
  final List<Fit> fits = new ArrayList<>();

  /**
   * @param limit how many of each are still wanted, 0 or more
   */
  Problem(Paper paper, List<Wanted> wanted, int[] limit, double kerf) {
    this.paper = paper;
    this.kerf = whole(kerf);
    this.width = whole(paper.width()) + this.kerf;
    this.height = whole(paper.height()) + this.kerf;
    this.limit = limit.clone();
    for (int k = 0; k < limit.length; k++) {
      Wanted want = wanted.get(k);
      long w = whole(want.width()) + this.kerf;
      long h = whole(want.height()) + this.kerf;
      long value = units(want);
      if (limit[k] > 0) {
        add(new Fit(k, false, w, h, value));
        if (want.mayTurn() && w != h) {
          add(new Fit(k, true, h, w, value));
        }
      }
    }
  }

  /** What one is worth, in whole units. */
  static long units(Wanted want) {
    return Math.max(1, Math.round(want.value() * PER_VALUE));
  }

  private void add(Fit fit) {
    if (fit.w() <= width && fit.h() <= height) {
      fits.add(fit);
    }
  }

  /** The lengths along a side of each kind still wanted. */
  Points.Kind[] kinds(boolean isAcross, boolean isLimited) {
    List<Points.Kind> kinds = new ArrayList<>();
    for (int k = 0; k < limit.length; k++) {
      int kind = k;
      List<Long> lengths =
          fits.stream()
              .filter(f -> f.kind() == kind)
              .map(f -> isAcross ? f.w() : f.h())
              .distinct()
              .toList();
      if (!lengths.isEmpty()) {
        kinds.add(new Points.Kind(lengths, isLimited ? limit[k] : Wanted.UNLIMITED));
      }
    }
    return kinds.toArray(Points.Kind[]::new);
  }

  /** No plan of the sheet is worth more, by its area alone. */
  long valueByArea() {
    double densest = 0;
    for (Fit fit : fits) {
      densest = Math.max(densest, fit.value() / ((double) fit.w() * fit.h()));
    }
    // Rounding may be off by some parts in 1e16 of the sum; a few units are plenty.
    return (long) Math.floor(densest * width * height * (1 + SUMMED)) + 1;
  }

  private static long whole(double mm) {
    return Math.round(mm * PER_MM);
  }

  /** The true length of what is longer by the kerf, in mm; 0 where the blade takes all. */
  double mm(long withKerf) {
    return Math.max(0, withKerf - kerf) / PER_MM;
  }

  /** What everything still wanted is worth together. */
  long valueOfAll() {
    long sum = 0;
    int last = -1;
    for (Fit fit : fits) {
      if (fit.kind() != last) {
        last = fit.kind();
        sum += fit.value() * limit[last];
        if (limit[last] == Wanted.UNLIMITED) {
          return Long.MAX_VALUE;
        }
      }
    }
    return sum;
  }

  Part waste(long w, long h) {
    return new Part.Waste(mm(w), mm(h));
  }

  Part piece(Fit fit) {
    return new Part.Piece(mm(fit.w()), mm(fit.h()), fit.kind(), fit.turned());
  }

  Part cut(long w, long h, FromEdge way, long at, Part first, Part second) {
    return new Part.Cut(mm(w), mm(h), way, mm(at), first, second);
  }

  /** A part that needs less than it has, what is too much of it cut off first. */
  Part trimmed(long w, long h, long needW, long needH, Part inner) {
    Part level =
        h > needH ? cut(needW, h, FromEdge.BOTTOM, needH, inner, waste(needW, h - needH)) : inner;
    return w > needW ? cut(w, h, FromEdge.LEFT, needW, level, waste(w - needW, h)) : level;
  }
}
