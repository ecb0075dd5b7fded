package facetwright.script.vocabulary;

import facetwright.form.Form;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Box2;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.Stock;
import java.util.List;

/**
 * Unfolds a form for the smallest sheet that holds any of its nets, of those that it may be cut
 * from. The net that packs small may be a strip too long for a sheet that another net lies on.
 */
final class Smallest {
  private final Nets nets;
  private final List<Stock> sizes;
  private final List<Room> rooms;

  /**
   * @param sizes the sheets it may be cut from, the smallest first; one at least
   * @param rooms that may be kept free round it, the widest first
   */
  Smallest(Form form, Unfolding unfolding, List<Stock> sizes, List<Room> rooms) {
    nets = new Nets(form, unfolding);
    this.sizes = sizes;
    this.rooms = rooms;
  }

  /** The net for the smallest of the sheets, with as much room round it as one of the nets has. */
  UnfoldResult unfold() {
    Room least = rooms.getLast();
    UnfoldResult result = null;
    for (Stock size : sizes) {
      result = on(size, rooms.getFirst());
      if (liesOn(result.net(), size, rooms.getFirst())) {
        return result;
      }
      result = on(size, least);
      if (liesOn(result.net(), size, least)) {
        return roomiest(size);
      }
    }
    return result;
  }

  private UnfoldResult roomiest(Stock size) {
    for (Room room : rooms) {
      UnfoldResult result = on(size, room);
      if (liesOn(result.net(), size, room)) {
        return result;
      }
    }
    throw new IllegalStateException("the last room holds it");
  }

  private UnfoldResult on(Stock size, Room room) {
    double edges = 2 * room.margin();
    return nets.on(Math.max(0, size.width() - edges), Math.max(0, size.height() - edges));
  }

  private static boolean liesOn(Net net, Stock size, Room room) {
    Box2 box = net.box();
    double edges = 2 * room.margin();
    if (Math.max(box.width(), box.height()) <= Math.max(size.width(), size.height()) - edges
        && Math.min(box.width(), box.height()) <= Math.min(size.width(), size.height()) - edges) {
      return true;
    }
    if (edges >= Math.min(size.width(), size.height())) {
      return false;
    }
    Laid laid = SheetLayout.lay(net, size, room);
    return laid.fits() && laid.sheets() == 1;
  }
}
