package facetwright.adjust.write;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.chart.Measure;
import facetwright.script.DialSetting;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.scope.DesignCall;
import facetwright.script.scope.Scope;
import facetwright.script.text.Call;
import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A script whose plain numbers count another unit. Lengths on a ruler's marks are written by them,
 * all others in quotes with the unit they were in, so that the design stays the same to the
 * hundredth of a millimetre; where it would not, for the script reckons with a plain number as a
 * length, there is none.
 */
public final class OtherUnit {
  /**
   * Numbers written in another unit are rounded, and lengths reckoned from several of them add that
   * up.
   */
  private static final LengthTolerance SAME = new LengthTolerance(1e-2);

  private final Unit from;
  private final Ruler ruler;

  private OtherUnit(Unit from, Ruler ruler) {
    this.from = from;
    this.ruler = ruler;
  }

  /**
   * The script in a ruler's unit.
   *
   * @param source which makes a design
   * @param lengths the dials that are lengths, by name
   * @return empty where that is not the same design
   * @throws ScriptException when the script has to be given up
   */
  public static Optional<String> of(WhatIf what, String source, Ruler ruler, Set<String> lengths)
      throws ScriptException {
    Optional<Design> now = what.written(source);
    if (now.isEmpty()) {
      return Optional.empty();
    }
    Unit from = now.get().unit();
    Optional<String> text = new OtherUnit(from, ruler).write(source, now.get(), lengths);
    Optional<Design> then = text.isPresent() ? what.written(text.get()) : Optional.empty();
    return then.filter(d -> isSame(now.get(), d, lengths) && d.unit() == ruler.unit())
        .flatMap(_ -> text);
  }

  private Optional<String> write(String source, Design design, Set<String> lengths) {
    Scope scope = Scope.of(source);
    Optional<Edit> unit = unit(scope);
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    List<Edit> edits = new ArrayList<>(List.of(unit.get()));
    for (Literal literal : Literals.lengths(scope, lengths)) {
      if (literal.length(from).mm() != 0) {
        edits.add(literal.edit(written(literal)));
      }
    }
    if (Call.of(scope.reading(), "sheet").isEmpty()) {
      SheetSizes.list().stream()
          .filter(s -> s.isOf(design.laid().stock()))
          .findFirst()
          .flatMap(s -> Writing.sheet(source, s))
          .ifPresent(edits::add);
    }
    return Optional.of(settings(Edit.all(source, edits), lengths));
  }

  private Optional<Edit> unit(Scope scope) {
    Optional<DesignCall> design = DesignCall.in(scope);
    Optional<Span> units = design.flatMap(DesignCall::units);
    Reading reading = scope.reading();
    String symbol = '"' + ruler.unit().symbol() + '"';
    if (units.isPresent()) {
      return units
          .filter(u -> u.is(reading, Kind.TEXT))
          .map(u -> Edit.replace(u.stretch(reading), symbol));
    }
    return design
        .filter(d -> d.options().isEmpty())
        .map(
            d ->
                Edit.insert(
                    reading.token(d.call().close()).start(), ", { units: " + symbol + " }"));
  }

  private String written(Literal literal) {
    Length length = literal.length(from);
    Measure reads = Measure.of(length.mm(), ruler);
    if (!literal.isArgument()) {
      return Decimals.places(length.in(ruler.unit()), 6);
    }
    return '"'
        + (reads.isOnRuler() ? reads.reading().text() : literal.said() + " " + from.symbol())
        + '"';
  }

  /** The settings in its head, lengths with their unit. */
  private String settings(String source, Set<String> lengths) {
    String text = source;
    for (DialSetting setting : DialSetting.read(source)) {
      Map<String, String> values = new LinkedHashMap<>(setting.values());
      values.replaceAll(
          (dial, value) ->
              lengths.contains(dial) && Character.isDigit(value.charAt(value.length() - 1))
                  ? value + " " + from.symbol()
                  : value);
      if (!values.equals(setting.values())) {
        text = new DialSetting(setting.name(), values).addedTo(text);
      }
    }
    return text;
  }

  private static boolean isSame(Design a, Design b, Set<String> lengths) {
    return a.laid().stock().equals(b.laid().stock())
        && a.laid().sheets() == b.laid().sheets()
        && areSame(a, b, lengths)
        && isSame(a.net(), b.net());
  }

  private static boolean areSame(Design a, Design b, Set<String> lengths) {
    boolean same = a.dials().size() == b.dials().size();
    for (int i = 0; same && i < a.dials().size(); i++) {
      Dial was = a.dials().get(i);
      Dial is = b.dials().get(i);
      boolean isLength = lengths.contains(was.name());
      double wasMm = isLength ? a.unit().mm() : 1;
      double isMm = isLength ? b.unit().mm() : 1;
      same =
          was.name().equals(is.name())
              && SAME.same(was.value() * wasMm, is.value() * isMm)
              && SAME.same(was.from() * wasMm, is.from() * isMm)
              && SAME.same(was.to() * wasMm, is.to() * isMm)
              && SAME.same(was.step() * wasMm, is.step() * isMm);
    }
    return same;
  }

  private static boolean isSame(Net a, Net b) {
    List<Vec2> was = corners(a);
    List<Vec2> is = corners(b);
    boolean same = a.panels().size() == b.panels().size() && was.size() == is.size();
    for (int i = 0; same && i < was.size(); i++) {
      same = SAME.same(was.get(i), is.get(i));
    }
    return same;
  }

  /** As each piece is seen from its first side, wherever it lies on the sheet. */
  private static List<Vec2> corners(Net net) {
    List<Vec2> corners = new ArrayList<>();
    int[] piece = net.pieceOfPanel();
    List<Motion2> motions = new ArrayList<>();
    for (int p = 0; p < piece.length; p++) {
      Panel panel = net.panels().get(p);
      if (piece[p] == motions.size()) {
        Segment2 side = panel.outline().side(0);
        motions.add(Motion2.carrying(side.from(), side.to(), Vec2.ZERO, new Vec2(1, 0)));
      }
      Motion2 motion = motions.get(piece[p]);
      corners.addAll(motion.apply(panel.outline()).corners());
      panel.openings().forEach(o -> corners.addAll(motion.apply(o.outline()).corners()));
    }
    net.layers().forEach(l -> corners.add(new Vec2(l.reveal(), 0)));
    net.fittings().sizes().forEach(size -> corners.add(new Vec2(size, 0)));
    return corners;
  }
}
