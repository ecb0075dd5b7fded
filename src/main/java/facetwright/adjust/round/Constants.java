package facetwright.adjust.round;

import facetwright.adjust.write.Literal;
import facetwright.adjust.write.Literals;
import facetwright.geom.LengthTolerance;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.Measure;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the numbers in a script that keep measures between marks: each is changed by a hair, and
 * what moves by as much, half or twice as much goes by it. A change is told only where it leaves
 * fewer measures between marks and comes to a mark itself, or to the middle between two.
 */
final class Constants {
  /** So far a constant is moved to see which measures move with it: little beside any mark. */
  private static final LengthTolerance HAIR = new LengthTolerance(2e-3);

  /**
   * Ratios, and the millimetres that they lead to, that differ by less are one: the move is so
   * coarse.
   */
  private static final double NEAR = 1e-3;

  private static final double[] RATIOS = {1, 2, 0.5};
  private static final int MOST = 60;

  /** A constant is changed by no more than this part of it. */
  private static final double PART = 0.2;

  private final WhatIf what;
  private final Draft draft;
  private final Ruler ruler;
  private final Ruler halves;
  private final Unit unit;
  private int count;

  Constants(WhatIf what, Draft draft, Ruler ruler) {
    this.what = what;
    this.draft = draft;
    this.ruler = ruler;
    this.halves = Rounding.halves(ruler);
    this.unit = what.design().unit();
  }

  int count() {
    return count;
  }

  /** In the order of the script; each on top of those before it. */
  List<Constant> find() throws ScriptException {
    List<Constant> found = new ArrayList<>();
    Reading reading = Reading.of(what.source());
    Draft here = draft;
    for (Literal literal : Literals.besideDials(what.source()).stream().limit(MOST).toList()) {
      if (here.isOnRuler()) {
        break;
      }
      for (double to : targets(here, literal, found)) {
        String becomes = literal.written(new Length(to), halves, unit);
        Optional<Draft> next = draft(with(found, literal, becomes));
        if (next.isPresent() && next.get().isAsSoundAs(draft) && isBetter(next.get(), here)) {
          int fewer = off(here) - off(next.get());
          found.add(new Constant(site(reading, literal.start()), literal, becomes, to, fewer));
          here = next.get();
          break;
        }
      }
    }
    return found;
  }

  private static int off(Draft draft) {
    return draft.toSet().formOff() + draft.toSet().cutsOff();
  }

  private static boolean isBetter(Draft a, Draft b) {
    return a.toSet().formOff() == b.toSet().formOff()
        ? a.toSet().cutsOff() < b.toSet().cutsOff()
        : a.toSet().formOff() < b.toSet().formOff() && off(a) <= off(b);
  }

  /** What the literal would have to be for measures that go by it to lie on marks, in mm. */
  private List<Double> targets(Draft here, Literal literal, List<Constant> before)
      throws ScriptException {
    Optional<Draft> beside = draft(with(before, literal, hair(literal)));
    List<Measure> all = here.toSet().all();
    if (beside.isEmpty() || beside.get().raw().length != all.size()) {
      return List.of();
    }
    double[] moved = beside.get().raw();
    List<Double> targets = new ArrayList<>();
    for (int m = 0; m < all.size(); m++) {
      double ratio = (moved[m] - all.get(m).mm()) / HAIR.mm();
      for (double r : RATIOS) {
        if (!all.get(m).isOnRuler() && Math.abs(Math.abs(ratio) - r) <= NEAR) {
          double to =
              literal.length(unit).mm() + all.get(m).reading().errorMm() / Math.copySign(r, ratio);
          boolean isNew = targets.stream().noneMatch(t -> Math.abs(t - to) < NEAR);
          boolean isPlain = Measure.of(to, halves).isOnRuler();
          if (isNew
              && isPlain
              && Math.abs(to - literal.length(unit).mm()) <= PART * literal.length(unit).mm()) {
            targets.add(to);
          }
        }
      }
    }
    return targets.stream().limit(3).toList();
  }

  private String hair(Literal literal) {
    double mm = literal.length(unit).mm() + HAIR.mm();
    return literal.isText() ? "\"" + mm + " mm\"" : Double.toString(new Length(mm).in(unit));
  }

  private String with(List<Constant> before, Literal literal, String text) {
    List<Edit> edits = new ArrayList<>();
    before.forEach(c -> edits.add(c.edit()));
    edits.add(literal.edit(text));
    return Edit.all(what.source(), edits);
  }

  private Optional<Draft> draft(String text) throws ScriptException {
    count++;
    return what.rewritten(text, draft.dials()).map(d -> Draft.of(draft.dials(), d, ruler));
  }

  private static Site site(Reading reading, int start) {
    return new Site(reading.line(start), reading.column(start));
  }
}
