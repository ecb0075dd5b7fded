package facetwright.script;

import facetwright.geom.PlainText;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the comment block at the head of a script: lines such as {@code author: Mirren Oake} inside
 * the first block comment. A line without a word and colon goes on with the entry above it. Lines
 * that begin with {@code setting:} are for {@link DialSetting}.
 */
public final class ScriptHeader {
  static final Pattern BLOCK = Pattern.compile("\\A\\s*/\\*(.*?)\\*/", Pattern.DOTALL);
  private static final Pattern ENTRY =
      Pattern.compile("(title|author|licence|tags|notes)\\s*:\\s*(.*)", Pattern.CASE_INSENSITIVE);

  private ScriptHeader() {}

  /** What the block says; empty entries where there is none. */
  public static Design.Header read(String source) {
    Map<String, String> entries = new LinkedHashMap<>();
    Matcher block = BLOCK.matcher(source.length() > 20_000 ? source.substring(0, 20_000) : source);
    if (block.find()) {
      String entry = null;
      for (String raw : PlainText.lines(block.group(1)).lines().toList()) {
        String line = raw.strip().replaceFirst("^\\*+\\s?", "").strip();
        Matcher m = ENTRY.matcher(line);
        if (DialSetting.isLine(line)) {
          entry = null;
        } else if (m.matches()) {
          entry = m.group(1).toLowerCase(Locale.ROOT);
          entries.put(entry, m.group(2).strip());
        } else if (entry != null && !line.isEmpty()) {
          entries.merge(entry, line, (a, b) -> (a + " " + b).strip());
        }
      }
    }
    List<String> tags =
        Arrays.stream(entries.getOrDefault("tags", "").split(","))
            .map(String::strip)
            .filter(t -> !t.isEmpty())
            .toList();
    return new Design.Header(
        entries.getOrDefault("author", ""),
        entries.getOrDefault("licence", ""),
        tags,
        entries.getOrDefault("notes", ""));
  }
}
