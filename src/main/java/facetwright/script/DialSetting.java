package facetwright.script;

import facetwright.script.text.Edit;
import facetwright.script.text.Head;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A setting of all dials that has a name, kept in the comment block at the head of a script, a line
 * each: {@code setting: Tall = wall 70, side 1 1/8 in, top open}. A dial whose name has blanks
 * before digits or commas stands in double quotes, and so does a word of several words.
 *
 * @param name what its maker calls it
 * @param values dial values by name, as a person types them, in the order of the line
 */
public record DialSetting(String name, Map<String, String> values) implements Serializable {
  private static final String KEY = "setting";
  private static final Pattern ENTRY =
      Pattern.compile(
          "\\s*(?:\"([^\"]+)\"|([^\",]+?))\\s+"
              + "(?:\"([^\"]+)\"|([-+]?\\.?\\d[^,]*?|[^\\s\",]+))\\s*(?:,|$)");
  private static final Pattern BARE_NAME = Pattern.compile("[^\\s\",]+(?:\\s+[^\\d\\s\",+.-]+)*");

  private static final Pattern BARE_VALUE = Pattern.compile("[-+]?\\.?\\d[^,\"]*|[^\\s\",]+");

  public DialSetting {
    name = name.strip();
    values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The settings of a script, in their order. Lines that can't be read are left out. */
  public static List<DialSetting> read(String source) {
    List<DialSetting> found = new ArrayList<>();
    for (Head.Line line : Head.of(source).lines()) {
      DialSetting setting = of(line);
      if (setting != null) {
        found.removeIf(s -> s.isCalled(setting.name));
        found.add(setting);
      }
    }
    return List.copyOf(found);
  }

  /**
   * The script with this setting in its head, in place of one of the same name; the head is made
   * where there is none.
   */
  public String addedTo(String source) {
    String cleared = removedFrom(source, name);
    String line = " * setting: " + name + " = " + text() + "\n";
    Head head = Head.of(cleared);
    if (head.end() == 0) {
      return "/*\n" + line + " */\n" + cleared;
    }
    int end = head.end() - "*/".length();
    int start = head.lines().getLast().start();
    if (cleared.substring(start, end).isBlank()) {
      return cleared.substring(0, start) + line + cleared.substring(start);
    }
    String before = cleared.substring(0, end).stripTrailing();
    return before + "\n" + line + " " + cleared.substring(end);
  }

  /** The script without the setting of a name. */
  public static String removedFrom(String source, String name) {
    List<Edit> edits = new ArrayList<>();
    for (Head.Line line : Head.of(source).lines()) {
      DialSetting setting = of(line);
      if (setting != null && setting.isCalled(name) && line.isWhole()) {
        edits.add(Edit.replace(line.start(), line.end(), ""));
      }
    }
    return Edit.all(source, edits);
  }

  /** Whether it has this name, large and small letters alike. */
  boolean isCalled(String other) {
    return name.toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }

  /** What may not stand in a name: it would end the name, the line or the comment. */
  public static String cleanName(String typed) {
    return typed.replaceAll("[=\\v]|\\*/", " ").replaceAll("\\s+", " ").strip();
  }

  /** Whether a line of the head is a setting, so that it is no part of the notes. */
  static boolean isIn(Head.Line line) {
    return line.key().equalsIgnoreCase(KEY) && line.value().contains("=");
  }

  private String text() {
    List<String> parts = new ArrayList<>();
    values.forEach(
        (dial, value) ->
            parts.add(
                (BARE_NAME.matcher(dial).matches() ? dial : "\"" + dial + "\"")
                    + " "
                    + (BARE_VALUE.matcher(value).matches() ? value : "\"" + value + "\"")));
    return String.join(", ", parts);
  }

  private static DialSetting of(Head.Line line) {
    String name = line.value().substring(0, Math.max(0, line.value().indexOf('='))).strip();
    if (!isIn(line) || name.isEmpty()) {
      return null;
    }
    Map<String, String> values = new LinkedHashMap<>();
    Matcher entry = ENTRY.matcher(line.value().substring(line.value().indexOf('=') + 1));
    while (entry.find()) {
      String value = entry.group(3) != null ? entry.group(3) : entry.group(4);
      values.put(entry.group(1) != null ? entry.group(1) : entry.group(2), value.strip());
    }
    return values.isEmpty() ? null : new DialSetting(name, values);
  }
}
