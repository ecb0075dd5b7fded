/**
 * The shelf: the library's and one's own designs by picture, to be found by words and tags, opened
 * or started from. A <em>picture</em> is the folded form as seen, made beside the window by workers
 * of its own and kept by the script it shows.
 */
package facetwright.workbench.shelf;
