/** The papers as pages to leaf through, to save and to print. */
package facetwright.workbench.papers;
