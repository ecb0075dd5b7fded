package facetwright.workbench.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A library of others that ships with the program. The list is written by {@code scripts/docs} from
 * what the libraries say of themselves.
 *
 * @param name as its file is called
 * @param licences under which it is to be had
 */
record Shipped(String name, String version, String licences) {
  private static final String LIST = "licences.tsv";

  /** All, in the order of the list. */
  static List<Shipped> all() {
    try (BufferedReader list =
        new BufferedReader(
            new InputStreamReader(
                Shipped.class.getResourceAsStream(LIST), StandardCharsets.UTF_8))) {
      return list.lines().map(line -> line.split("\t")).map(Shipped::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Shipped of(String[] fields) {
    return new Shipped(fields[0], fields[1], fields[2]);
  }

  /** For each licence or licences, what is under them: names with versions. */
  static Map<String, String> byLicences() {
    return all().stream()
        .collect(
            Collectors.groupingBy(
                Shipped::licences,
                TreeMap::new,
                Collectors.mapping(s -> s.name + " " + s.version, Collectors.joining(", "))));
  }
}
