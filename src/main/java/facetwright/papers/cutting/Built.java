package facetwright.papers.cutting;

/** A rectangle put together from wanted pieces, smallest first: one piece, or two built ones. */
sealed interface Built {
  /** Longer by the kerf, as all lengths inside. */
  long w();

  long h();

  long value();

  /** How many of each wanted it holds. */
  Counts counts();

  /** One wanted piece. */
  record One(Problem.Fit fit, Counts counts) implements Built {
    @Override
    public long w() {
      return fit.w();
    }

    @Override
    public long h() {
      return fit.h();
    }

    @Override
    public long value() {
      return fit.value();
    }
  }

  /** Two beside each other, or one above the other, flush at the lower left. */
  record Two(FromEdge way, Built a, Built b, long w, long h, long value, Counts counts)
      implements Built {}

  static Built of(Problem problem, Problem.Fit fit) {
    return new One(fit, Counts.one(fit.kind(), problem.limit.length));
  }

  /** The two put together, whether or not there are enough copies; see {@link #allowed}. */
  static Built together(FromEdge way, Built a, Built b) {
    long w = way == FromEdge.LEFT ? a.w() + b.w() : Math.max(a.w(), b.w());
    long h = way == FromEdge.LEFT ? Math.max(a.h(), b.h()) : a.h() + b.h();
    return new Two(way, a, b, w, h, a.value() + b.value(), a.counts().plus(b.counts()));
  }

  /** Whether the two together take no more than is wanted of anything. */
  static boolean allowed(Built a, Built b, int[] limit) {
    return a.counts().allows(b.counts(), limit);
  }

  /** The same without what is more than wanted; nothing where nothing of it is wanted. */
  static Built within(Built built, int[] limit) {
    return take(built, limit.clone());
  }

  private static Built take(Built built, int[] left) {
    if (built.counts().within(left)) {
      built.counts().takeFrom(left);
      return built;
    }
    if (!(built instanceof Two two) || !built.counts().meets(left)) {
      return null;
    }
    Built a = take(two.a, left);
    Built b = take(two.b, left);
    return a == null ? b : b == null ? a : together(two.way, a, b);
  }

  /** How a part at least this large is cut to give it. */
  static Part part(Problem problem, Built built, long w, long h) {
    Part inner =
        switch (built) {
          case One one -> problem.piece(one.fit());
          case Two two when two.way() == FromEdge.LEFT ->
              problem.cut(
                  two.w(),
                  two.h(),
                  FromEdge.LEFT,
                  two.a().w(),
                  part(problem, two.a(), two.a().w(), two.h()),
                  part(problem, two.b(), two.b().w(), two.h()));
          case Two two ->
              problem.cut(
                  two.w(),
                  two.h(),
                  FromEdge.BOTTOM,
                  two.a().h(),
                  part(problem, two.a(), two.w(), two.a().h()),
                  part(problem, two.b(), two.w(), two.b().h()));
        };
    return problem.trimmed(w, h, built.w(), built.h(), inner);
  }
}
