package facetwright.workbench.card.text;

import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;

/**
 * A change of the script's text that puts a fault right.
 *
 * @param label what it does, as a button says it
 * @param at what is wrong now
 * @param edit the change
 */
public record Repair(String label, Stretch at, Edit edit) {}
