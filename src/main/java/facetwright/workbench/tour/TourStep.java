package facetwright.workbench.tour;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/**
 * One stop of the tour.
 *
 * @param title what is to be done, in a few words
 * @param words how, and why
 * @param keys how without a mouse
 * @param beside the control it is about
 * @param done becomes true once the user has done it
 * @param enter makes ready for it
 * @param leave clears up after it
 */
public record TourStep(
    String title,
    String words,
    String keys,
    Node beside,
    ObservableValue<Boolean> done,
    Runnable enter,
    Runnable leave) {}
