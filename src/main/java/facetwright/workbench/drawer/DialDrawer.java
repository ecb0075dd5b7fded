package facetwright.workbench.drawer;

import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.workbench.desk.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** All dials of the design. */
public final class DialDrawer extends FlowPane {
  /** More than so many in a row would be too many to look through. */
  private static final int MOST_ASIDE = 6;

  private final Desk desk;
  private Consumer<String> compare = _ -> {};
  private final List<Row> rows = new ArrayList<>();

  /** Says that the design has no dials. */
  private final Label none = note();

  /** Tells dials that are turned and that the script does not have now. */
  private final Label gone = note();

  /** Tells dials that are turned to what they can't take now. */
  private final Label yielding = note();

  public DialDrawer(Desk desk) {
    this.desk = desk;
    getStyleClass().add("drawer");
    desk.design().addListener((_, _, design) -> show(design));
    desk.settings()
        .addListener(
            (_, _, _) -> {
              if (desk.design().get() != null) {
                show(desk.design().get());
              }
            });
  }

  /**
   * Dials side by side, each as wide as the next.
   *
   * @param many in a line: as many as there is room for
   * @param wide how wide each of them is
   */
  private record Lines(int many, double wide) {}

  private Lines lines(double free) {
    double least = rows.isEmpty() ? free : rows.getFirst().minWidth(-1);
    int room = (int) Math.floor((free + getHgap()) / (least + getHgap()));
    int many = Math.clamp(room, 1, MOST_ASIDE);
    return new Lines(many, Math.floor((free + getHgap()) / many - getHgap()));
  }

  /** Goes down the dials and then the notes, and says where all of it ends. */
  private double down(double width, Placing placing) {
    double free = Math.max(0, width - snappedLeftInset() - snappedRightInset());
    Lines lines = lines(free);
    double y = snappedTopInset();
    for (int first = 0; first < rows.size(); first += lines.many) {
      List<Row> line = rows.subList(first, Math.min(first + lines.many, rows.size()));
      double high =
          line.stream().mapToDouble(row -> row.prefHeight(lines.wide)).max().orElseThrow();
      for (int i = 0; i < line.size(); i++) {
        double x = snappedLeftInset() + i * (lines.wide + getHgap());
        placing.at(line.get(i), x, y, lines.wide, high);
      }
      y += high + getVgap();
    }
    for (Label note : List.of(none, gone, yielding)) {
      if (note.isManaged()) {
        double high = note.prefHeight(free);
        placing.at(note, snappedLeftInset(), y, free, high);
        y += high + getVgap();
      }
    }
    return y - getVgap() + snappedBottomInset();
  }

  /** What is done with each dial and note on the way down. */
  @FunctionalInterface
  private interface Placing {
    void at(Region each, double x, double y, double wide, double high);
  }

  // To set any width while heights are asked for would have all laid out anew, without an end.
  @Override
  protected double computePrefHeight(double width) {
    return down(width < 0 ? getWidth() : width, (_, _, _, _, _) -> {});
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    down(getWidth(), Region::resizeRelocate);
  }

  /** Who shows a dial over its range, by its name. */
  public void onCompare(Consumer<String> show) {
    compare = show;
  }

  private void show(Design design) {
    if (design == null) {
      rows.clear();
      getChildren().clear();
      return;
    }
    List<Dial> dials = design.dials();
    boolean same = dials.size() == rows.size() && !getChildren().isEmpty();
    for (int i = 0; same && i < rows.size(); i++) {
      same = rows.get(i).isOf(dials.get(i), design.unit());
    }
    if (same) {
      for (int i = 0; i < rows.size(); i++) {
        rows.get(i).show(dials.get(i), design.unit());
      }
    } else {
      rows.clear();
      dials.forEach(d -> rows.add(Row.of(desk, d, design.unit(), name -> compare.accept(name))));
      getChildren().setAll(rows);
      getChildren().addAll(none, gone, yielding);
    }
    say(
        none,
        rows.isEmpty()
            ? "This design has no dials. A line such as  const side = dial(\"side\", 28)  makes"
                + " one."
            : "");
    say(gone, leftOut(dials));
    say(yielding, yielded(design));
  }

  private String leftOut(List<Dial> dials) {
    TreeMap<String, String> left = new TreeMap<>(desk.settings().get());
    dials.forEach(d -> left.remove(d.name()));
    if (left.isEmpty()) {
      return "";
    }
    String each =
        left.entrySet().stream()
            .map(e -> e.getKey() + " at " + e.getValue())
            .collect(Collectors.joining(", "));
    return "Turned, but not in the script now: "
        + each
        + (left.size() == 1 ? ". It holds again once it is back." : ". They hold again once back.");
  }

  private String yielded(Design design) {
    Map<String, String> settings = desk.settings().get();
    StringJoiner all = new StringJoiner(" ");
    for (Dial dial : design.dials()) {
      DialText.yielded(dial, settings, design.unit())
          .ifPresent(
              set -> {
                DoubleFunction<String> text = value -> DialText.angled(dial, value, design.unit());
                all.add(
                    "%s can't be %s: it %s, and stands at %s."
                        .formatted(
                            dial.name(),
                            set,
                            dial.isWord()
                                ? "is one of " + String.join(", ", dial.words())
                                : "goes from %s to %s%s"
                                    .formatted(
                                        text.apply(dial.from()),
                                        text.apply(dial.to()),
                                        dial.step() > 0 ? " by " + text.apply(dial.step()) : ""),
                            text.apply(DialText.wanted(dial, settings, design.unit()))));
              });
    }
    return all.toString();
  }

  private static Label note() {
    Label note = new Label();
    note.getStyleClass().add("quiet");
    note.setWrapText(true);
    note.managedProperty().bind(note.visibleProperty());
    return note;
  }

  private static void say(Label note, String words) {
    note.setText(words);
    note.setVisible(!words.isEmpty());
  }
}
