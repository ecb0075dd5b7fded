package facetwright.workbench;

import facetwright.workbench.Places.Place;
import facetwright.workbench.focus.Parts;
import facetwright.workbench.focus.Parts.Part;
import facetwright.workbench.focus.Reach;
import facetwright.workbench.key.Key;
import facetwright.workbench.notice.Notice;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;

/** Where keys lead in the window: from part to part, and back to where one was. */
final class HouseKeys {
  private final House house;
  private final Node top;
  private final Node notice;
  private final Node unkept;
  private Notice reached;
  private final Parts parts = new Parts(this::parts);

  /**
   * @param top the row of menus and places
   * @param notice what notices show in
   * @param unkept what says that work is not kept
   */
  HouseKeys(House house, Node top, Node notice, Node unkept) {
    this.house = house;
    this.top = top;
    this.notice = notice;
    this.unkept = unkept;
    house.addEventHandler(KeyEvent.KEY_PRESSED, this::comeBack);
    house.addEventHandler(KeyEvent.KEY_PRESSED, house.commands()::pressed);
  }

  /** What has the focus in a place to begin with. */
  static Node first(House house, Place place) {
    return switch (place) {
      case SHELF -> house.shelf().search();
      case TABLE -> house.room().first();
      case PAPERS -> house.papers().first();
    };
  }

  /** Goes to the next part of the window, or the one before; to a notice that is new at once. */
  void leap(boolean onward) {
    Notice now = house.notices().now().get();
    boolean isNew = now != null && !now.equals(reached);
    reached = now;
    Node owner = house.getScene().getFocusOwner();
    if (isNew && !house.pages().isVisible() && (owner == null || !Reach.isIn(owner, notice))) {
      Reach.within(notice).getFirst().requestFocus();
    } else {
      parts.go(house.getScene(), onward);
    }
  }

  /** The parts that show, in the order in which one reads them. */
  private List<Part> parts() {
    if (house.pages().isVisible()) {
      return List.of(Part.of(house.pages()));
    }
    List<Part> open = new ArrayList<>();
    open.add(Part.of(top));
    open.add(Part.of(unkept));
    open.add(Part.of(notice));
    switch (house.places().now().get()) {
      case SHELF -> house.shelf().parts().map(Part::of).forEach(open::add);
      case TABLE -> house.room().parts().forEach(open::add);
      case PAPERS -> house.papers().parts().map(Part::of).forEach(open::add);
    }
    // A note of the tour comes just before what it is about.
    Part note = Part.of(house.tourView());
    int about =
        house
            .tourView()
            .beside()
            .flatMap(n -> open.stream().filter(p -> p.has(n)).findFirst())
            .map(open::indexOf)
            .orElse(open.size());
    open.add(about, note);
    return open;
  }

  /** Esc, where nothing nearer took it, puts away what came up, and then the place. */
  private void comeBack(KeyEvent e) {
    if (!Key.AWAY.is(e)) {
      return;
    }
    if (house.notices().now().get() != null) {
      house.notices().putAway();
    } else if (house.tourView().isRunning()) {
      house.tourView().end();
    } else if (house.places().now().get() != Place.TABLE) {
      house.places().now().set(Place.TABLE);
    } else {
      return;
    }
    e.consume();
  }
}
