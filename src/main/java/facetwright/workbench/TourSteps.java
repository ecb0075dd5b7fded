package facetwright.workbench;

import facetwright.words.Site;
import facetwright.workbench.Places.Place;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.key.Key;
import facetwright.workbench.tour.TourStep;
import java.util.List;
import javafx.beans.binding.Bindings;

/** The tour's five steps, on a copy of the demo. */
final class TourSteps {
  private static final String SOUND = "dial(\"side\", 28,";
  private static final String BROKEN = "dial(\"side\", 280,";

  private TourSteps() {}

  private static String there() {
    return "By keys: " + Key.NEXT_PART.text() + " leads there";
  }

  private static String back() {
    return Key.FORMER_PART.text() + " leads back here.";
  }

  static List<TourStep> of(House house) {
    Room room = house.room();
    Desk desk = house.desk();
    Runnable toTable = () -> house.places().now().set(Place.TABLE);
    Runnable nothing = () -> {};
    return List.of(
        new TourStep(
            "Turn a dial",
            "These are the dials of this lantern. Drag one, or type a value and press "
                + Key.DIAL_TAKE.text()
                + ". The"
                + " net, the folded form and the sentence above follow at once.",
            there()
                + ", "
                + Key.NEXT.one()
                + " from one to the next, "
                + Key.DIAL_TURN.one()
                + " and "
                + Key.DIAL_TURN.other()
                + " turn it in its field; "
                + back(),
            room.drawer(),
            Bindings.createBooleanBinding(() -> !desk.settings().get().isEmpty(), desk.settings()),
            toTable,
            nothing),
        new TourStep(
            "Open the form",
            "This is the folded form. Drag it to turn it. The knob on its rim goes from made to"
                + " flat: drag it round and watch the card open.",
            there()
                + ", "
                + Key.LENS_TURN.text()
                + " turn it, "
                + Key.LENS_STEP.other()
                + " opens it; "
                + back(),
            room.lens(),
            room.lens().made().lessThan(0.9),
            toTable,
            () -> room.lens().made().set(1)),
        new TourStep(
            "Find a panel's line",
            "Click a panel of the net. It is marked here, in the folded form, and in the script,"
                + " where the line stands that made it.",
            there() + ", " + Key.TABLE_PANEL.one() + " from panel to panel; " + back(),
            room.table(),
            Bindings.createBooleanBinding(
                () -> !(desk.selection().get() instanceof Selection.Nothing), desk.selection()),
            () -> {
              toTable.run();
              desk.selection().set(Selection.nothing());
            },
            nothing),
        new TourStep(
            "Mend a line",
            "I have put a slip into the script: a side of 280 instead of 28. The sentence at the"
                + " top says where and what to do. Mend the line here; the last good net waits"
                + " meanwhile.",
            there() + "; " + Key.MEND.text() + " writes what is offered; " + back(),
            room.card(),
            Bindings.createBooleanBinding(() -> !desk.text().get().contains(BROKEN), desk.text()),
            () -> {
              toTable.run();
              String text = desk.text().get().replace(SOUND, BROKEN);
              desk.text().set(text);
              int at = text.indexOf(BROKEN);
              if (at >= 0) {
                desk.pointTo(new Site((int) text.substring(0, at + 1).lines().count(), 1));
              }
            },
            () -> desk.text().set(desk.text().get().replace(BROKEN, SOUND))),
        new TourStep(
            "Make papers",
            "Here are the papers: the net at true size, to save or print. When you have looked,"
                + " come back with "
                + Key.TO_TABLE.text()
                + ". Save your design with "
                + Key.SAVE.text()
                + ", and find others on the shelf.",
            "By keys: " + Key.TO_PAPERS.text() + " leads there.",
            house.toPapers(),
            house.places().now().isEqualTo(Place.PAPERS),
            toTable,
            nothing));
  }
}
