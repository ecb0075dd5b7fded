package facetwright.script;

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
 * each: {@code setting: Tall = wall 70, side 1 1/8 in}. A dial whose name has blanks before digits
 * or commas stands in double quotes.
 *
 * @param name what its maker calls it
 * @param values dial values by name, as a person types them, in the order of the line
 */
public record DialSetting(String name, Map<String, String> values) implements Serializable {
  private static final Pattern LINE =
      Pattern.compile(
          "\\s*(?:\\*+\\s*|/\\*+\\s*)?setting\\s*:\\s*([^=]*)=(.*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern ENTRY =
      Pattern.compile("\\s*(?:\"([^\"]+)\"|([^\",]+?))\\s+([-+]?\\.?\\d[^,]*?)\\s*(?:,|\\*/|$)");
  private static final Pattern BARE_NAME = Pattern.compile("[^\\s\",]+(?:\\s+[^\\d\\s\",+.-]+)*");

  public DialSetting {
    name = name.strip();
    values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The settings of a script, in their order. Lines that can't be read are left out. */
  public static List<DialSetting> read(String source) {
    List<DialSetting> found = new ArrayList<>();
    for (String line : head(source).lines().toList()) {
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
    String head = head(cleared);
    int end = head.lastIndexOf("*/");
    if (end < 0) {
      return "/*\n" + line + " */\n" + cleared;
    }
    int start = head.lastIndexOf('\n', end) + 1;
    if (head.substring(start, end).isBlank()) {
      return cleared.substring(0, start) + line + cleared.substring(start);
    }
    String before = cleared.substring(0, end).stripTrailing();
    return before + "\n" + line + " " + cleared.substring(end);
  }

  /** The script without the setting of a name. */
  public static String removedFrom(String source, String name) {
    String head = head(source);
    StringBuilder kept = new StringBuilder();
    int at = 0;
    while (at < head.length()) {
      int next = head.indexOf('\n', at) + 1;
      next = next == 0 ? head.length() : next;
      DialSetting setting = of(head.substring(at, next));
      boolean whole = !head.substring(at, next).contains("*/") && !head.startsWith("/*", at);
      if (setting == null || !setting.isCalled(name) || !whole) {
        kept.append(head, at, next);
      }
      at = next;
    }
    return kept + source.substring(head.length());
  }

  /** Whether it has this name, large and small letters alike. */
  public boolean isCalled(String other) {
    return name.toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }

  /** What may not stand in a name: it would end the name, the line or the comment. */
  public static String cleanName(String typed) {
    return typed.replaceAll("[=\\v]|\\*/", " ").replaceAll("\\s+", " ").strip();
  }

  /** Whether a line of the head is a setting, so that it is no part of the notes. */
  static boolean isLine(String line) {
    return LINE.matcher(line).matches();
  }

  private String text() {
    List<String> parts = new ArrayList<>();
    values.forEach(
        (dial, value) ->
            parts.add(
                (BARE_NAME.matcher(dial).matches() ? dial : "\"" + dial + "\"") + " " + value));
    return String.join(", ", parts);
  }

  private static DialSetting of(String line) {
    Matcher m = LINE.matcher(line.strip());
    if (!m.matches() || m.group(1).isBlank()) {
      return null;
    }
    Map<String, String> values = new LinkedHashMap<>();
    Matcher entry = ENTRY.matcher(m.group(2));
    while (entry.find()) {
      values.put(entry.group(1) != null ? entry.group(1) : entry.group(2), entry.group(3).strip());
    }
    return values.isEmpty() ? null : new DialSetting(m.group(1), values);
  }

  /** The first block comment and what stands before it, or nothing where the script has none. */
  private static String head(String source) {
    Matcher block = ScriptHeader.BLOCK.matcher(source);
    return block.find() ? source.substring(0, block.end()) : "";
  }
}
