/**
 * Commands: everything the window can be told to do, in one table with names, keys and places. The
 * menu bar, the tooltips and the page of keys are made from it.
 */
package facetwright.workbench.command;
