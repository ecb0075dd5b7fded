package facetwright.papers.handout;

import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The order of joins in words. */
final class AssemblyText {
  private AssemblyText() {}

  static List<String> lines(Net net, List<Assembly.Turn> turns) {
    List<String> lines = new ArrayList<>();
    for (Assembly.Turn turn : turns) {
      String words =
          turn.joins().stream()
              .map(j -> words(net, net.joins().get(j)))
              .collect(Collectors.joining("; opposite, "));
      lines.add(
          words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".");
    }
    return lines;
  }

  private static String words(Net net, Join join) {
    return switch (join) {
      case Join.Lap l -> "glue " + name(net, l.under()) + " under " + name(net, l.over());
      case Join.Seam s when s.tab() == Join.Seam.NO_TAB ->
          "bring "
              + name(net, s.a().panel())
              + " and "
              + name(net, s.b().panel())
              + " together, edge to edge";
      case Join.Seam s ->
          "glue the tab of " + name(net, s.a().panel()) + " under " + name(net, s.b().panel());
    };
  }

  private static String name(Net net, int panel) {
    return "\"" + net.panels().get(panel).name() + "\"";
  }
}
