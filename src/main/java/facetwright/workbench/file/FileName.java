package facetwright.workbench.file;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** File names made of titles. */
public final class FileName {
  private static final Pattern TITLE = Pattern.compile("design\\s*\\(\\s*([\"'`])(.*?)\\1");

  private FileName() {}

  /** The title that a script gives its design, as far as can be seen without running it. */
  public static String title(String script) {
    Matcher m = TITLE.matcher(script);
    return m.find() ? m.group(2).strip() : "";
  }

  /** A plain file name: small letters, digits and hyphens. */
  public static String of(String title) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return (plain.isEmpty() ? "design" : plain) + ".js";
  }
}
