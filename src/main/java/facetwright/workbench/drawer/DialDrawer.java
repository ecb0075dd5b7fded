package facetwright.workbench.drawer;

import facetwright.script.Design;
import facetwright.script.Dial;
import facetwright.workbench.desk.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;

/** All dials of the design. */
public final class DialDrawer extends FlowPane {
  /** More than so many in a row would be too many to look through. */
  private static final double MOST_ASIDE = 6;

  private final Desk desk;
  private Consumer<String> compare = _ -> {};
  private final List<DialRow> rows = new ArrayList<>();

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
    List<Dial> dials = design.dials();
    boolean same = dials.size() == rows.size();
    for (int i = 0; same && i < rows.size(); i++) {
      same = rows.get(i).isOf(dials.get(i), design.unit());
    }
    if (same) {
      for (int i = 0; i < rows.size(); i++) {
        rows.get(i).show(dials.get(i), design.unit());
      }
      return;
    }
    rows.clear();
    dials.forEach(d -> rows.add(new DialRow(desk, d, design.unit(), name -> compare.accept(name))));
    getChildren().setAll(rows);
    if (rows.isEmpty()) {
      Label none =
          new Label(
              "This design has no dials. A line such as  const side = dial(\"side\", 28)  makes"
                  + " one.");
      none.getStyleClass().add("quiet");
      getChildren().setAll(none);
    }
  }
}
