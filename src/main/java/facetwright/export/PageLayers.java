package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The marks of a page sorted by what they mean: areas first, then lines by kind, words on top. */
final class PageLayers {
  private PageLayers() {}

  /**
   * @param id short name without blanks
   * @param label what a reader of the file sees
   */
  record Layer(String id, String label, List<Mark> marks) {}

  static List<Layer> of(Drawing page) {
    List<Layer> layers = new ArrayList<>();
    for (FillKind kind : FillKind.values()) {
      add(layers, kind.id(), page, m -> m instanceof Mark.Fill f && f.kind() == kind);
    }
    for (LineKind kind : LineKind.values()) {
      add(
          layers,
          kind.id(),
          page,
          m ->
              switch (m) {
                case Mark.Stroke s -> s.kind() == kind;
                case Mark.Circle c -> c.kind() == kind;
                case Mark.Fill _, Mark.Patch _, Mark.Text _ -> false;
              });
    }
    add(layers, "picture", page, m -> m instanceof Mark.Patch);
    add(layers, "words", page, m -> m instanceof Mark.Text);
    return layers;
  }

  private static void add(List<Layer> layers, String id, Drawing page, Predicate<Mark> which) {
    List<Mark> marks = page.marks().stream().filter(which).toList();
    if (!marks.isEmpty()) {
      layers.add(new Layer(id, Sentence.capital(id), marks));
    }
  }
}
