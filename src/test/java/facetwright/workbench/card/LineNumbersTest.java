package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Fx;
import facetwright.workbench.desk.Desk;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The numbers beside the lines, whatever is done to the text. */
class LineNumbersTest extends CardRoom {

  static Stream<BiConsumer<CodeArea, Desk>> edits() {
    return Stream.of(
        (area, _) -> area.insertText(0, "\n"),
        (area, _) -> area.insertText(0, "// a\n\n\n// a\n"),
        (area, _) -> area.deleteText(0, 0, 1, 0),
        (area, _) -> area.deleteText(1, 4, 3, 2),
        (area, _) -> area.replaceText(area.getText() + area.getText()),
        (area, _) -> area.insertText(2, 0, area.getText()),
        (area, desk) -> {
          area.insertText(0, "\n");
          desk.undo();
        },
        (area, desk) -> {
          area.deleteText(0, 0, 2, 0);
          desk.undo();
          desk.undo();
          desk.redo();
        },
        (area, _) -> {
          area.selectRange(1, 0, 3, 0);
          area.copy();
          area.moveTo(0, 0);
          area.paste();
          area.paste();
        },
        // From 9 lines to 10 and on to 100, where numbers grow wider.
        (area, _) -> area.insertText(0, "\n".repeat(5)),
        (area, _) -> area.replaceText("\n".repeat(98) + area.getText()));
  }

  @ParameterizedTest
  @MethodSource("edits")
  void everyLineInViewHasItsNumber(BiConsumer<CodeArea, Desk> edit) throws Exception {
    Fx.run(() -> edit.accept(area, desk));
    Fx.pulse();
    Fx.pulse();
    int first = Fx.get(() -> area.firstVisibleParToAllParIndex()) + 1;
    int last = Fx.get(() -> area.lastVisibleParToAllParIndex()) + 1;
    assertThat(last).isGreaterThan(first);
    assertThat(Fx.get(this::numbers))
        .isEqualTo(IntStream.rangeClosed(first, last).boxed().toList());
  }

  @Test
  void aLineKeepsItsLabel() throws Exception {
    List<Label> before = Fx.get(this::labels);
    Fx.run(() -> area.insertText(0, "\n"));
    Fx.pulse();
    List<Label> after = Fx.get(this::labels);
    assertThat(after).hasSize(before.size() + 1);
    assertThat(after.subList(2, after.size()))
        .usingElementComparator((a, b) -> a == b ? 0 : 1)
        .isEqualTo(before.subList(1, before.size()));
  }

  private List<Integer> numbers() {
    return labels().stream().map(label -> Integer.valueOf(label.getText().strip())).toList();
  }

  /** From above to below. */
  private List<Label> labels() {
    return area.lookupAll(".line-number").stream()
        .map(Label.class::cast)
        .filter(label -> label.localToScene(0, 1).getY() < area.localToScene(0, 0).getY() + 700)
        .sorted(Comparator.comparingDouble(label -> label.localToScene(0, 0).getY()))
        .toList();
  }
}
