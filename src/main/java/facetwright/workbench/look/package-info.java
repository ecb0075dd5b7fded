/** Colours, type and how drawings are put on the screen. */
package facetwright.workbench.look;
