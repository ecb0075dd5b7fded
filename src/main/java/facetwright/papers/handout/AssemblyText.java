package facetwright.papers.handout;

import facetwright.fold.making.Bond;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/** The order of gluing in words; numbers are those of {@link Gluing#numbered}. */
final class AssemblyText {
  private final Net net;
  private final FittingText fittings;
  private int number;

  private AssemblyText(Net net, FittingText fittings) {
    this.net = net;
    this.fittings = fittings;
  }

  /** One line a step, and one on gussets before the first opening is closed. */
  static List<String> lines(Net net, FittingText fittings, List<Step> steps) {
    return new AssemblyText(net, fittings).lines(steps);
  }

  /** The same of several bodies, one after the other, numbered through. */
  static List<List<String>> bodies(Net net, FittingText fittings, List<List<Step>> bodies) {
    AssemblyText text = new AssemblyText(net, fittings);
    return bodies.stream().map(text::lines).toList();
  }

  private List<String> lines(List<Step> steps) {
    boolean isPinched = net.joins().stream().anyMatch(j -> Gluing.isPinch(net, j));
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof Step.Fit(int fitting)) {
        boolean isLater = steps.stream().skip(i).anyMatch(Step.Glue.class::isInstance);
        lines.add(fittings.of(net.fittings().all().get(fitting), isLater));
        continue;
      }
      Gluing.Stage turn = ((Step.Glue) steps.get(i)).stage();
      if (isPinched && turn.bonds().getFirst() instanceof Bond.Closing) {
        lines.add(pinch());
        isPinched = false;
      }
      List<String> parts = turn.bonds().stream().map(this::text).toList();
      String words = String.join("; then, opposite, ", parts);
      lines.add(Sentence.capital(words) + ".");
    }
    if (isPinched) {
      lines.add(pinch());
    }
    return lines;
  }

  private static String pinch() {
    return "Push the gussets in along their scores. Their edges meet of themselves and take no"
        + " glue.";
  }

  private String text(Bond bond) {
    number++;
    return switch (bond) {
      case Bond.Joined(int join) -> text(net.joins().get(join));
      case Bond.Closing(int tab) ->
          "fold tab "
              + number
              + " ("
              + name(tab)
              + ") over the opening and glue it to what lies there";
    };
  }

  private String text(Join join) {
    return switch (join) {
      case Join.Seam s when s.hold() == Hold.HOOK ->
          "push hook "
              + number
              + " ("
              + name(s.tab())
              + ") in behind "
              + name(s.b().panel())
              + ", cut into cut; no glue";
      case Join.Lap l when l.hold() == Hold.TONGUE ->
          "push "
              + number
              + " ("
              + name(l.under())
              + ") through its slot in "
              + name(l.over())
              + " and fold it over; no glue";
      case Join.Lap l when l.hold() == Hold.FLAP ->
          "fold in " + number + " (" + name(l.under()) + ") under " + name(l.over()) + "; no glue";
      case Join.Lap l when !l.hold().isGlued() ->
          "tuck " + number + " (" + name(l.under()) + ") in behind " + name(l.over()) + "; no glue";
      case Join.Lap l -> "glue " + number + " (" + name(l.under()) + ") under " + name(l.over());
      case Join.Seam s when s.tab() == Join.Seam.NO_TAB ->
          "bring "
              + name(s.a().panel())
              + " and "
              + name(s.b().panel())
              + " together at "
              + number
              + ", edge to edge, and tape them inside";
      case Join.Seam s -> "glue tab " + number + " under " + name(s.b().panel());
    };
  }

  private String name(int panel) {
    return "“" + net.panels().get(panel).name() + "”";
  }
}
