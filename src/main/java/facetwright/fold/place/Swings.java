package facetwright.fold.place;

import facetwright.fold.pose.Together;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** How what is hinged opens, once all is together. */
final class Swings {
  private final Net net;
  private final List<Together.Stage> stages;

  Swings(Net net, List<Together.Stage> stages) {
    this.net = net;
    this.stages = stages;
  }

  /**
   * @param hinges for placings their hinges, as what they are hinged to stands by itself
   * @param stands for a part the motion from how it stands by itself to where it is, all shut; null
   *     for what is not of the whole
   */
  List<Together.Swing> of(Map<Integer, HingeLine> hinges, IntFunction<Motion3> stands) {
    List<Together.Swing> swings = new ArrayList<>();
    hinges.forEach(
        (index, line) -> {
          Placing.Hinged hinged = (Placing.Hinged) net.parts().placings().get(index);
          Motion3 to = stands.apply(hinged.onto());
          if (to != null) {
            swings.add(
                new Together.Swing(
                    index,
                    moved(hinged.part()),
                    to.apply(line.from()),
                    to.apply(line.to()),
                    to.direction(line.away()),
                    Math.toRadians(hinged.open())));
          }
        });
    // What is hinged to what is hinged is turned first, so that the other takes it along.
    swings.sort(Comparator.comparingInt(s -> s.panels().size()));
    return swings;
  }

  /** The panels of a part and of all that has gone to it. */
  private List<Integer> moved(int part) {
    List<Integer> parts = new ArrayList<>(List.of(part));
    for (int i = 0; i < parts.size(); i++) {
      for (Together.Stage stage : stages) {
        Placing placing = stage.as();
        if (placing.onto() == parts.get(i)) {
          parts.add(placing.part());
        }
      }
    }
    return parts.stream()
        .map(net.parts().all()::get)
        .map(Parts.Part::panels)
        .flatMap(List::stream)
        .toList();
  }
}
