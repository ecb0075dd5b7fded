package facetwright.workbench;

import facetwright.workbench.drawer.DialDrawer;
import facetwright.workbench.drawer.SettingFlags;
import facetwright.workbench.findings.FindingsList;
import facetwright.workbench.goal.Bar;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What lies under the net: notices, questions, dials and findings. It is as high as the dials of
 * the design want it, whatever is asked, told or found, so that the net above neither moves nor
 * changes its size; what has no room scrolls.
 */
final class Band extends VBox {
  /** The part of the height it takes, at least and at most. */
  private static final double LEAST = 0.24;

  private static final double MOST = 0.36;

  /** The part of it that the findings may take, and while something is asked. */
  private static final double NOTES = 0.45;

  private static final double NOTES_ASKING = 0.25;

  /** So much of it stays for the dials and what is asked. */
  private static final double DIALS = 0.3;

  private static final double SEEN = 30;

  private final VBox notices = new VBox();
  private final SettingFlags flags;
  private final DialDrawer drawer;
  private final VBox dials;
  private final Tray asking;
  private final Tray notes;

  /** As high as a finding of two lines: so much is kept beside the dials. */
  private final Region spare = new Region();

  private List<Bar> bars = List.of();

  Band(SettingFlags flags, DialDrawer drawer, FindingsList findings) {
    this.flags = flags;
    this.drawer = drawer;
    getStyleClass().add("band");
    dials = new VBox(flags, drawer);
    notes = new Tray(findings, this::forNotes, () -> Math.min(findings.first(), getHeight() / 2));
    asking = new Tray(dials, this::forDials, () -> 0);
    notes.setMinHeight(SEEN);
    asking.setMinHeight(SEEN);
    setMinHeight(USE_PREF_SIZE);
    setMaxHeight(USE_PREF_SIZE);
    spare.getStyleClass().add("spare");
    spare.setManaged(false);
    spare.setVisible(false);
    getChildren().setAll(notices, asking, notes, spare);
  }

  private double forNotes() {
    return bars.stream().anyMatch(Node::isVisible) ? NOTES_ASKING : NOTES;
  }

  private double forDials() {
    double others =
        notices.prefHeight(getWidth()) + (notes.isManaged() ? notes.prefHeight(getWidth()) : 0);
    return Math.max(DIALS, 1 - others / Math.max(1, getHeight()));
  }

  @Override
  protected double computePrefHeight(double width) {
    double all = getParent() == null ? 0 : getParent().getLayoutBounds().getHeight();
    double wide = width < 0 ? getWidth() : width;
    double wanted = flags.prefHeight(wide) + drawer.prefHeight(wide) + spare.prefHeight(wide);
    return Math.rint(Math.clamp(wanted, LEAST * all, Math.max(LEAST, MOST) * all));
  }

  /** Puts lines that ask something of the design above the dials. */
  void askWith(List<Bar> asked) {
    bars = List.copyOf(asked);
    dials.getChildren().addAll(dials.getChildren().indexOf(drawer), bars);
  }

  /** Shows notices above all else, while one is at the table. */
  VBox notices() {
    return notices;
  }

  /** The findings, to be leapt to. */
  Node notes() {
    return notes;
  }
}
