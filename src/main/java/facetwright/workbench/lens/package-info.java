/** The lens: the folded form, to be turned, opened and closed. */
package facetwright.workbench.lens;
