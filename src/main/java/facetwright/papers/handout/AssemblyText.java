package facetwright.papers.handout;

import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Numbers;
import facetwright.fold.making.Step;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The order of gluing in words; places are told by their {@link Numbers}, as pictures show them.
 */
final class AssemblyText {
  private final Net net;
  private final FittingText fittings;
  private final GlueOrder gluing;
  private final Numbers numbers;
  private final Map<Integer, Faces.Face> faces;

  /**
   * @param gluing in which order the whole net is made up
   */
  AssemblyText(Net net, GlueOrder gluing, FittingText fittings) {
    this.net = net;
    this.fittings = fittings;
    this.gluing = gluing;
    this.numbers = gluing.numbers();
    this.faces = gluing.faces();
  }

  /** Some of the steps as actions. */
  List<Action> actions(List<Step> own) {
    return gluing.actions(own);
  }

  /** What each action does, in sentences. */
  List<String> lines(List<Action> actions) {
    List<String> lines = new ArrayList<>();
    List<Integer> folded = new ArrayList<>();
    for (Action action : actions) {
      switch (action) {
        case Action.Fitted(int fitting, boolean isLater) ->
            lines.add(fittings.of(net.fittings().all().get(fitting), isLater));
        case Action.Pinched(_, boolean isAll) -> {
          folded.clear();
          lines.add(
              "Push the gussets in along their scores"
                  + (isAll ? "" : ", those of this opening only")
                  + ". Their edges meet of themselves and take no glue.");
        }
        case Action.Bonded(List<Bond> bonds, boolean isOpposite) -> {
          Bond first = bonds.getFirst();
          if (!(first instanceof Bond.Closing(int tab)) || faces.get(tab) == Faces.Face.NONE) {
            folded.clear();
          }
          lines.add(Sentence.capital(text(first, folded)) + "." + also(bonds, isOpposite));
          bonds.forEach(b -> folded.add(numbers.of(b)));
        }
      }
    }
    return lines;
  }

  /** What is done alike after the first. */
  private String also(List<Bond> bonds, boolean isOpposite) {
    List<String> more = bonds.stream().skip(1).map(numbers::of).map(String::valueOf).toList();
    if (more.isEmpty()) {
      return "";
    }
    if (!isOpposite) {
      return " Do the same with " + Sentence.listed(more) + ".";
    }
    String opposite = " Do the same with " + more.getFirst() + ", opposite";
    return more.size() == 1
        ? opposite + "."
        : opposite + ", then with " + Sentence.listed(more.subList(1, more.size())) + ".";
  }

  private String text(Bond bond, List<Integer> folded) {
    int number = numbers.of(bond);
    return switch (bond) {
      case Bond.Joined(int join) -> text(net.joins().get(join), number);
      case Bond.Closing(int tab) when faces.get(tab) == Faces.Face.NONE ->
          "fold tab " + number + " in over the opening, without glue yet";
      case Bond.Closing _ ->
          "fold tab "
              + number
              + " over the opening and glue its inner face to "
              + (folded.isEmpty()
                  ? "what lies there"
                  : (folded.size() == 1 ? "tab " : "tabs ")
                      + Sentence.listed(folded.stream().map(String::valueOf).toList()));
    };
  }

  private String text(Join join, int n) {
    return switch (join) {
      case Join.Seam s when s.hold() == Hold.HOOK ->
          "push hook " + n + " in behind edge " + n + ", cut into cut; no glue";
      case Join.Seam s when s.hold() == Hold.LATCH ->
          "lay the flap with tongue "
              + n
              + " in behind edge "
              + n
              + " and push the tongue out through its slot; no glue";
      case Join.Lap l when l.hold() == Hold.TONGUE ->
          "push tongue "
              + n
              + " through its slot in the panel marked "
              + n
              + " and fold it over; no glue";
      case Join.Lap l when l.hold() == Hold.FLAP ->
          "fold flap " + n + " in under the panel marked " + n + "; no glue";
      case Join.Seam s when !s.hold().isGlued() ->
          "tuck flap " + n + " in behind edge " + n + "; no glue";
      case Join.Lap l when !l.hold().isGlued() ->
          "tuck flap " + n + " in behind the panel marked " + n + "; no glue";
      case Join.Lap l when faces.get(l.under()) == Faces.Face.INSIDE ->
          "glue the inner faces of flap " + n + " and of the panel marked " + n + " together";
      case Join.Lap l -> "glue flap " + n + " under the panel marked " + n;
      case Join.Seam s when s.tab() == Join.Seam.NO_TAB ->
          "bring the two edges " + n + " together, edge to edge, and tape them inside";
      case Join.Seam s -> "glue tab " + n + " under edge " + n;
    };
  }
}
