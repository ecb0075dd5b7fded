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

/** All dials of the design. */
public final class DialDrawer extends FlowPane {
  /** More than so many in a row would be too many to look through. */
  private static final double MOST_ASIDE = 6;

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

  /** As many in a row as there is room for, side by side, and each as wide as the next. */
  private void spread(double width) {
    if (rows.isEmpty() || width <= 0) {
      return;
    }
    double free = width - getInsets().getLeft() - getInsets().getRight();
    double least = rows.getFirst().minWidth(-1);
    double many = Math.max(1, Math.floor((free + getHgap()) / (least + getHgap())));
    many = Math.min(many, MOST_ASIDE);
    double each = Math.floor((free + getHgap()) / many - getHgap());
    rows.forEach(row -> row.setPrefWidth(each));
  }

  @Override
  protected double computePrefHeight(double width) {
    spread(width);
    return super.computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    spread(getWidth());
    super.layoutChildren();
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
