package facetwright.papers.copies;

import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;

/** How a sheet is parted with a trimmer, in words; what lies on it by its number from 1. */
public final class PartingText {
  private final Parting parting;
  private final Order order;

  /**
   * @param order by whose ruler measures are told
   */
  public PartingText(Parting parting, Order order) {
    this.parting = parting;
    this.order = order;
  }

  /** One line a step, in the order in which they are made; none where there are none. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Parting.Step step : parting.steps()) {
      lines.add(line(lines.size() + 1, step));
    }
    if (!lines.isEmpty() && !parting.together().isEmpty()) {
      lines.add(
          parting.together().stream().map(PartingText::list).collect(Collectors.joining("; "))
              + ": no straight cut comes between these, part them with a knife.");
    }
    return lines;
  }

  private String line(int number, Parting.Step step) {
    String what =
        number == 1
            ? "The whole sheet"
            : (step.parts().size() == 1 ? "" : "Each of ")
                + step.parts().stream()
                    .map(p -> list(p.into().stream().flatMap(List::stream).sorted().toList()))
                    .collect(Collectors.joining(", "));
    String apart =
        step.parts().stream()
            .map(p -> p.into().stream().map(PartingText::list).collect(Collectors.joining(" | ")))
            .collect(Collectors.joining("; "));
    return number + ". " + what + " " + measures(step) + ": " + apart + ".";
  }

  private String measures(Parting.Step step) {
    List<String> at = step.at().stream().map(order::measure).toList();
    String way = " " + step.way().text();
    if (at.size() == 1) {
      return "at " + at.getFirst() + way;
    }
    boolean isOne = new LinkedHashSet<>(at).size() == 1;
    return (isOne ? at.size() + " times at " + at.getFirst() : "at " + String.join(", then ", at))
        + way
        + ", each from the fresh edge";
  }

  private static String list(List<Integer> items) {
    return items.stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(" + "));
  }
}
