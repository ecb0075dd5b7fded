package facetwright.workbench.card;

import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Hits;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.fxmisc.richtext.CodeArea;

/** Keeps the text painted: inks, marks, the brackets at the caret, what was found, the halo. */
final class Painting {
  private final CardText text;
  private final TextMarks marks;
  private final ObjectProperty<Hits> hits = new SimpleObjectProperty<>(Hits.NONE);
  private final ObjectProperty<Integer> halo = new SimpleObjectProperty<>(0);
  private List<Inks.Over> brackets = List.of();
  private int lines;

  /** Whether a line may have a style of its own. */
  private boolean styled;

  Painting(CardText text, TextMarks marks) {
    this.text = text;
    this.marks = marks;
    text.area().textProperty().addListener((_, _, _) -> changed());
    text.area().caretPositionProperty().addListener((_, _, _) -> pairBrackets());
    marks.all().addListener((_, _, _) -> paint());
    hits.addListener((_, _, _) -> paint());
    halo.addListener((_, _, _) -> paintLines());
    paint();
  }

  /** What was found and is shown. */
  ObjectProperty<Hits> hits() {
    return hits;
  }

  /** The line pointed out, from 1; 0 for none. */
  ObjectProperty<Integer> halo() {
    return halo;
  }

  private void changed() {
    if (lines != text.reading().lineCount()) {
      lines = text.reading().lineCount();
      halo.set(0);
    }
    paint();
  }

  private void pairBrackets() {
    List<Inks.Over> now = bracketsAtCaret();
    if (!now.equals(brackets)) {
      brackets = now;
      paint();
    }
  }

  private List<Inks.Over> bracketsAtCaret() {
    Reading reading = text.reading();
    int caret = Math.min(text.caret(), reading.text().length());
    for (int at : new int[] {caret, caret - 1}) {
      int i = reading.at(at);
      int partner = reading.partner(i);
      if (partner >= 0) {
        return List.of(bracket(reading, i), bracket(reading, partner));
      }
    }
    return List.of();
  }

  private static Inks.Over bracket(Reading reading, int i) {
    int start = reading.token(i).start();
    return new Inks.Over(new Stretch(start, start + 1), "bracket");
  }

  private void paint() {
    Reading reading = text.reading();
    if (reading.text().length() != text.area().getLength()) {
      return;
    }
    if (!reading.text().isEmpty()) {
      brackets = bracketsAtCaret();
      List<Inks.Over> over = new ArrayList<>(brackets);
      hits.get().all().forEach(h -> over.add(new Inks.Over(h, "hit")));
      marks.all().get().forEach(m -> over.add(new Inks.Over(m.at(), "mark-" + m.style())));
      Repaint.of(text.area(), Inks.of(reading, over));
    }
    paintLines();
  }

  private void paintLines() {
    int fault =
        marks.all().get().stream()
            .filter(TextMark::isFault)
            .map(m -> text.reading().line(m.at().start()))
            .findFirst()
            .orElse(0);
    if (halo.get() == 0 && fault == 0 && !styled) {
      return;
    }
    styled = halo.get() > 0 || fault > 0;
    CodeArea area = text.area();
    for (int i = 0; i < area.getParagraphs().size(); i++) {
      List<String> wanted = new ArrayList<>();
      if (i + 1 == halo.get()) {
        wanted.add("halo");
      }
      if (i + 1 == fault) {
        wanted.add("fault-line");
      }
      Collection<String> now = area.getParagraph(i).getParagraphStyle();
      if (!List.copyOf(now).equals(wanted)) {
        area.setParagraphStyle(i, wanted);
      }
    }
  }
}
