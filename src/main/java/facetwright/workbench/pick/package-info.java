/** A facet picked on the net or on the folded form: what it is called, written into the script. */
package facetwright.workbench.pick;
