package facetwright.fold.pose;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What several parts are called in one breath: those made alike by their number. */
public final class PartNames {
  private PartNames() {}

  /** "a", "a and b", "both of a", "all 4 of a and b". */
  public static Message of(Parts parts, List<Integer> some) {
    Map<Integer, Integer> alike = new LinkedHashMap<>();
    some.forEach(p -> alike.merge(parts.all().get(p).first(), 1, Integer::sum));
    List<Message> names = new ArrayList<>();
    alike.forEach(
        (first, times) -> {
          if (times > 1) {
            String all =
                times < parts.count(first)
                    ? times + " of"
                    : times == 2 ? "both of" : "all " + times + " of";
            names.add(Message.of("%s %s", all, Value.name(parts.called(first))));
          } else {
            int one =
                some.stream().filter(p -> parts.all().get(p).first() == first).findFirst().get();
            names.add(Message.of("%s", Value.name(parts.all().get(one).name())));
          }
        });
    return Message.list(names);
  }
}
