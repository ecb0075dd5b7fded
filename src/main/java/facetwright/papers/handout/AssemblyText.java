package facetwright.papers.handout;

import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Numbers;
import facetwright.fold.making.Step;
import facetwright.language.Telling;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The order of gluing in words; places are told by their {@link Numbers}, as pictures show them.
 */
final class AssemblyText {
  private final Net net;
  private final FittingText fittings;
  private final Telling tell;
  private final GlueOrder gluing;
  private final Numbers numbers;
  private final Map<Integer, Faces.Face> faces;

  /**
   * @param gluing in which order the whole net is made up
   * @param tell its reader
   */
  AssemblyText(Net net, GlueOrder gluing, FittingText fittings, Telling tell) {
    this.tell = tell;
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
          lines.add(tell.say("gluing.pinched", "all", String.valueOf(isAll)));
        }
        case Action.Bonded(List<Bond> bonds, boolean isOpposite) -> {
          Bond first = bonds.getFirst();
          if (!(first instanceof Bond.Closing(int tab)) || faces.get(tab) == Faces.Face.NONE) {
            folded.clear();
          }
          lines.add(text(first, folded) + also(bonds, isOpposite));
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
      return " " + tell.say("gluing.same", "rest", tell.listed(more));
    }
    List<String> rest = more.subList(1, more.size());
    return " "
        + tell.say(
            "gluing.opposite",
            "first",
            more.getFirst(),
            "count",
            rest.size(),
            "rest",
            rest.isEmpty() ? "" : tell.listed(rest));
  }

  private String text(Bond bond, List<Integer> folded) {
    int number = numbers.of(bond);
    return switch (bond) {
      case Bond.Joined(int join) -> text(net.joins().get(join), number);
      case Bond.Closing(int tab) when faces.get(tab) == Faces.Face.NONE ->
          numbered("gluing.fold-in", number);
      case Bond.Closing _ ->
          tell.say(
              "gluing.closing",
              "n",
              String.valueOf(number),
              "folded",
              folded.size(),
              "tabs",
              folded.isEmpty() ? "" : tell.listed(folded.stream().map(String::valueOf).toList()));
    };
  }

  private String text(Join join, int n) {
    return switch (join) {
      case Join.Seam s when s.hold() == Hold.HOOK -> numbered("gluing.hook", n);
      case Join.Seam s when s.hold() == Hold.LATCH -> numbered("gluing.latch", n);
      case Join.Lap l when l.hold() == Hold.TONGUE -> numbered("gluing.tongue", n);
      case Join.Lap l when l.hold() == Hold.FLAP -> numbered("gluing.flap", n);
      case Join.Seam s when !s.hold().isGlued() -> numbered("gluing.tuck-edge", n);
      case Join.Lap l when !l.hold().isGlued() -> numbered("gluing.tuck-panel", n);
      case Join.Lap l when faces.get(l.under()) == Faces.Face.INSIDE -> numbered("gluing.faces", n);
      case Join.Lap _ -> numbered("gluing.lap", n);
      case Join.Seam s when s.tab() == Join.Seam.NO_TAB -> numbered("gluing.tape", n);
      case Join.Seam _ -> numbered("gluing.tab", n);
    };
  }

  private String numbered(String key, int n) {
    return tell.say(key, "n", String.valueOf(n));
  }
}
