package facetwright.workbench;

import javafx.beans.property.BooleanProperty;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Folds the card beside the table away to a sliver, and lays it open again as wide as it was. */
final class CardFold extends BorderPane {
  private final ToggleButton sliver = new ToggleButton("Script");
  private final SplitPane split;
  private double divider = 0.66;

  /** What had the focus in the card when it was folded away; null for nothing. */
  private Node left;

  CardFold(SplitPane split, Region card) {
    this.split = split;
    setCenter(split);
    sliver.getStyleClass().add("sliver");
    sliver.setRotate(90);
    VBox edge = new VBox(new Group(sliver));
    edge.getStyleClass().add("sliver-edge");
    setRight(edge);
    sliver.setAccessibleText("Fold the script away");
    sliver
        .selectedProperty()
        .addListener(
            (_, _, away) -> {
              if (away) {
                divider = split.getDividerPositions()[0];
                left = card.isFocusWithin() ? card.getScene().getFocusOwner() : null;
                if (left != null) {
                  sliver.requestFocus();
                }
                split.getItems().remove(card);
              } else {
                split.getItems().add(card);
                split.setDividerPositions(divider);
                if (left != null && sliver.isFocused()) {
                  left.requestFocus();
                }
              }
            });
  }

  BooleanProperty away() {
    return sliver.selectedProperty();
  }

  /** Puts the divider somewhere. */
  void divide(double at) {
    divider = at;
    if (!away().get()) {
      split.setDividerPositions(at);
    }
  }

  ToggleButton sliver() {
    return sliver;
  }

  /** Where the divider stands, or stood when the card was folded away; 0 left to 1 right. */
  double divider() {
    return away().get() ? divider : split.getDividerPositions()[0];
  }
}
