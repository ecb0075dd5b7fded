package facetwright.net.draft;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;

/** One side of a panel in the making; it keeps its identity while its neighbours change. */
public final class EdgeDraft {
  private final PanelDraft panel;
  private Vec2 from;
  private String called = "";
  private Bow bow;

  /** An arc that sides in a row stand for: theirs alone, however many others are like it. */
  static final class Bow {
    private final Vec2 centre;

    Bow(Vec2 centre) {
      this.centre = centre;
    }

    Vec2 centre() {
      return centre;
    }
  }

  EdgeDraft(PanelDraft panel, Vec2 from) {
    this.panel = panel;
    this.from = from;
  }

  public PanelDraft panel() {
    return panel;
  }

  /** What scripts call it; none of what nobody named, such as the sides of a notch. */
  String called() {
    return called;
  }

  /** Says what scripts call it; what it is divided into is called so, too. */
  public void call(String name) {
    called = name;
  }

  /** Where the side starts, going counter-clockwise round its panel. */
  public Vec2 from() {
    return from;
  }

  /** Where it ends: where the next side starts. */
  public Vec2 to() {
    return panel.after(this).from;
  }

  public Segment2 segment() {
    return new Segment2(from(), to());
  }

  public double length() {
    return segment().length();
  }

  /** Whether it stands for part of an arc. */
  public boolean isRound() {
    return bow != null;
  }

  Bow bow() {
    return bow;
  }

  void bow(Bow arc) {
    bow = arc;
  }

  void moveStart(Vec2 to) {
    from = to;
  }
}
