/** Small pictures of folded forms, made beside the window and kept. */
package facetwright.workbench.picture;
