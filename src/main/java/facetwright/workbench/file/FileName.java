package facetwright.workbench.file;

import facetwright.script.scope.DesignCall;
import facetwright.script.text.Reading;
import java.text.Normalizer;
import java.util.Locale;

/** File names made of titles. */
public final class FileName {
  private FileName() {}

  /** The title that a script gives its design, as far as can be seen without running it. */
  public static String title(String script) {
    return DesignCall.title(Reading.of(script)).map(String::strip).orElse("");
  }

  /** A plain file name: small letters, digits and hyphens. */
  static String of(String title) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return (plain.isEmpty() ? "design" : plain) + ".js";
  }
}
