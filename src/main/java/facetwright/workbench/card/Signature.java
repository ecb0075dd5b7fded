package facetwright.workbench.card;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.text.Text;

/** How a call is written, to be shown where one writes it. */
final class Signature {
  private Signature() {}

  /** How a call is written, its argument at the caret in bold. */
  static List<Text> pieces(Fn<?> fn, Optional<Arg<?>> arg) {
    String signature = fn.signature();
    String name = arg.map(Arg::name).orElse("");
    int at = name.isEmpty() ? -1 : find(signature, fn.name().length(), name);
    Stream<Text> pieces =
        at < 0
            ? Stream.of(new Text(signature))
            : Stream.of(
                new Text(signature.substring(0, at)),
                strong(name),
                new Text(signature.substring(at + name.length())));
    return pieces.peek(t -> t.getStyleClass().add("hint-text")).toList();
  }

  private static int find(String signature, int from, String name) {
    int at = signature.indexOf(name, from);
    while (at >= 0
        && (Character.isJavaIdentifierPart(signature.charAt(at - 1))
            || Character.isJavaIdentifierPart(signature.charAt(at + name.length())))) {
      at = signature.indexOf(name, at + 1);
    }
    return at;
  }

  private static Text strong(String name) {
    Text text = new Text(name);
    text.getStyleClass().add("hint-now");
    return text;
  }
}
