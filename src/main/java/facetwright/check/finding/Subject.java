package facetwright.check.finding;

import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.Stance;
import facetwright.net.sheet.Laid;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the rules look at.
 *
 * @param laid the net on its sheets
 * @param gluing how the same net, folded, is made up
 */
public record Subject(Laid laid, GlueOrder gluing) {

  /** One whose gluing nobody else asks for. */
  public Subject(Laid laid, FoldedForm folded) {
    this(laid, GlueOrder.of(laid.net(), folded));
  }

  public FoldedForm folded() {
    return gluing.form();
  }

  public Net net() {
    return laid.net();
  }

  /** How thick the card is, in mm. */
  public double caliper() {
    return laid.stock().caliper();
  }

  /** How thick the card is that a panel is cut from, in mm. */
  public double caliper(int panel) {
    return laid.cardOf(panel).caliper();
  }

  public Panel panel(int index) {
    return net().panels().get(index);
  }

  /** A panel's name in quotes. */
  public Value.Name name(int index) {
    return panel(index).called();
  }

  /** A panel's name with the script line that made it, where that is known. */
  public Value.Name named(int index) {
    return name(index).made(siteBeside(index).line());
  }

  /**
   * A side as scripts call it: by number, and by its word where it has one; of a blank's panel by
   * its ends.
   */
  public Message side(EdgeRef side) {
    Optional<Panel.OnBlank> drawn = drawn(side.panel());
    if (drawn.isPresent()) {
      Segment2 at = drawn.get().side(side.edge());
      return Message.of(
          "the side from %s to %s of %s",
          Ask.place(at.from()), Ask.place(at.to()), name(side.panel()));
    }
    String called = panel(side.panel()).sides().get(side.edge());
    if (!called.isEmpty()) {
      return Message.of("side %s of %s", called, name(side.panel()));
    }
    List<String> words =
        switch (panel(side.panel()).outline().size()) {
          case 3 -> List.of("bottom", "right", "left");
          case 4 -> List.of("bottom", "right", "top", "left");
          default -> List.of();
        };
    return Message.of(
        "side %s%s of %s",
        side.edge() + 1,
        words.isEmpty() ? "" : " (" + words.get(side.edge()) + ")",
        name(side.panel()));
  }

  /** How a join is called in a message. */
  public Message name(Join join) {
    return switch (join) {
      case Join.Seam s when !s.hold().isGlued() ->
          Message.of(
              "the %s between %s and %s",
              s.hold().word(), name(s.a().panel()), name(s.b().panel()));
      case Join.Seam s ->
          Message.of("the seam between %s and %s", name(s.a().panel()), name(s.b().panel()));
      case Join.Lap l when l.hold() == Join.Hold.TONGUE ->
          Message.of("%s through its slot in %s", name(l.under()), name(l.over()));
      case Join.Lap l when !l.hold().isGlued() ->
          Message.of("the %s of %s into %s", l.hold().word(), name(l.under()), name(l.over()));
      case Join.Lap l -> Message.of("the lap of %s under %s", name(l.under()), name(l.over()));
    };
  }

  /** The script place of a join, or else of a panel it names. */
  public Site site(Join join) {
    return join.site().isKnown() ? join.site() : panel(join.from()).site();
  }

  /**
   * How a score is called in a message; one drawn on a blank by its ends and the line that drew it.
   */
  public Message name(Score score) {
    Optional<Panel.OnBlank> drawn = drawn(score.a().panel());
    if (isDrawn(score) && drawn.isPresent()) {
      Segment2 at = drawn.get().side(score.a().edge());
      return Message.of(
          "the score from %s to %s%s", Ask.place(at.from()), Ask.place(at.to()), drawnBy(score));
    }
    return Message.of(
        "the score between %s and %s%s",
        name(score.a().panel()), name(score.b().panel()), isDrawn(score) ? drawnBy(score) : "");
  }

  private static String drawnBy(Score score) {
    return " (line " + score.site().line() + ")";
  }

  /** Where panels meet: of a blank the place, else what they are. */
  public Message meeting(List<Stance.Corner> corners) {
    return place(corners)
        .orElseGet(
            () -> {
              List<Value.Name> names = new ArrayList<>();
              corners.forEach(c -> names.add(name(c.panel())));
              Value.Name last = names.removeLast();
              return Message.of("where %s and %s meet", Message.join(", ", names), last);
            });
  }

  /** Where on a blank panels meet; empty of others. */
  public Optional<Message> place(List<Stance.Corner> corners) {
    Stance.Corner first = corners.getFirst();
    return drawn(first.panel())
        .map(o -> Message.of("at %s on the blank", Ask.place(o.corners().get(first.corner()))));
  }

  /** A blank's panel where it was drawn. */
  private Optional<Panel.OnBlank> drawn(int panel) {
    return Optional.ofNullable(panel(panel).onBlank())
        .filter(o -> o.corners().size() == panel(panel).outline().size());
  }

  /** Whether it was drawn across a blank: it made the panels beside it, not they it. */
  private boolean isDrawn(Score score) {
    Site panels = panel(score.a().panel()).site();
    return panels.isKnown()
        && score.site().isKnown()
        && panels.equals(panel(score.b().panel()).site())
        && panels.line() != score.site().line();
  }

  /** The script place of a panel: of a score drawn beside it where the panel comes of that. */
  public Site siteBeside(int panel) {
    return net().scores().stream()
        .filter(s -> s.isOf(panel))
        .filter(this::isDrawn)
        .map(Score::site)
        .findFirst()
        .orElse(panel(panel).site());
  }

  /** The side that a tab hangs by, the tab on its left. */
  public Segment2 foot(int tab) {
    for (Score score : net().scores()) {
      if (score.a().panel() == tab) {
        return net().segment(score.a());
      }
      if (score.b().panel() == tab) {
        return net().segment(score.b());
      }
    }
    return panel(tab).outline().side(0);
  }

  /** For each panel its scored sides, in order. */
  public List<List<Segment2>> scoredSides() {
    boolean[][] scored = scored();
    List<List<Segment2>> sides = new ArrayList<>();
    for (int p = 0; p < scored.length; p++) {
      sides.add(sides(p, scored[p], true));
    }
    return sides;
  }

  /** For each panel its sides that are cut, in order. */
  public List<List<Segment2>> cutSides() {
    boolean[][] scored = scored();
    List<List<Segment2>> sides = new ArrayList<>();
    for (int p = 0; p < scored.length; p++) {
      sides.add(sides(p, scored[p], false));
    }
    return sides;
  }

  private List<Segment2> sides(int panel, boolean[] scored, boolean wanted) {
    List<Segment2> sides = new ArrayList<>();
    for (int e = 0; e < scored.length; e++) {
      if (scored[e] == wanted) {
        sides.add(panel(panel).outline().side(e));
      }
    }
    return sides;
  }

  private boolean[][] scored() {
    boolean[][] scored = new boolean[net().panels().size()][];
    for (int p = 0; p < scored.length; p++) {
      scored[p] = new boolean[panel(p).outline().size()];
    }
    for (Score s : net().scores()) {
      scored[s.a().panel()][s.a().edge()] = true;
      scored[s.b().panel()][s.b().edge()] = true;
    }
    return scored;
  }
}
