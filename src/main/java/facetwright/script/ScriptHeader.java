package facetwright.script;

import facetwright.script.design.Design;
import facetwright.script.text.Head;
import facetwright.script.text.Known;
import facetwright.words.PlainText;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Reads the comment block at the head of a script: lines such as {@code author: Mirren Oake} inside
 * the first block comment. A line without a word and colon goes on with the entry above it. Lines
 * that begin with {@code setting:} are for {@link DialSetting}.
 */
public final class ScriptHeader {
  private static final Set<String> KEYS = Set.of("title", "author", "licence", "tags", "notes");
  private static final int LONGEST = 20_000;

  private static final Known<Design.Header> KNOWN = new Known<>(ScriptHeader::header);

  private ScriptHeader() {}

  /** What the block says; empty entries where there is none. */
  public static Design.Header read(String source) {
    return KNOWN.of(source);
  }

  private static Design.Header header(String source) {
    Map<String, String> entries = new LinkedHashMap<>();
    Head head = Head.of(source);
    String entry = null;
    for (Head.Line line : head.end() > LONGEST ? List.<Head.Line>of() : head.lines()) {
      String key = line.key().toLowerCase(Locale.ROOT);
      if (DialSetting.isIn(line)) {
        entry = null;
      } else if (KEYS.contains(key)) {
        entry = key;
        entries.put(key, PlainText.lines(line.value()));
      } else if (entry != null && !line.text().isEmpty()) {
        entries.merge(entry, PlainText.lines(line.text()), (a, b) -> (a + " " + b).strip());
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
