package facetwright.papers.copies;

import facetwright.language.Telling;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;

/** How a sheet is parted with a trimmer, in words; what lies on it by its number from 1. */
public final class PartingText {
  private final Parting parting;
  private final Order order;
  private final Telling tell;

  /**
   * @param order by whose ruler measures are told
   */
  public PartingText(Parting parting, Order order) {
    this.parting = parting;
    this.order = order;
    this.tell = order.telling();
  }

  /** One line a step, in the order in which they are made; none where there are none. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Parting.Step step : parting.steps()) {
      lines.add(line(lines.size() + 1, step));
    }
    if (!lines.isEmpty() && !parting.together().isEmpty()) {
      lines.add(
          tell.say(
              "cuts.knife",
              "groups",
              tell.apart(parting.together().stream().map(PartingText::list).toList())));
    }
    return lines;
  }

  private String line(int number, Parting.Step step) {
    List<String> at = step.at().stream().map(order::measure).toList();
    boolean isOne = new LinkedHashSet<>(at).size() == 1;
    return tell.say(
        "cuts.parting",
        "number",
        String.valueOf(number),
        "what",
        number == 1 ? "whole" : step.parts().size() == 1 ? "one" : "several",
        "parts",
        step.parts().stream()
            .map(p -> list(p.into().stream().flatMap(List::stream).sorted().toList()))
            .collect(Collectors.joining(", ")),
        "count",
        at.size(),
        "same",
        String.valueOf(isOne && at.size() > 1),
        "measure",
        isOne
            ? at.getFirst()
            : at.stream()
                .reduce((before, next) -> tell.say("cuts.then", "before", before, "next", next))
                .orElseThrow(),
        "way",
        step.way().word(),
        "apart",
        tell.apart(
            step.parts().stream()
                .map(
                    p ->
                        p.into().stream().map(PartingText::list).collect(Collectors.joining(" | ")))
                .toList()));
  }

  private static String list(List<Integer> items) {
    return items.stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(" + "));
  }
}
