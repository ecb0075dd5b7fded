/**
 * Scripts on disk: opening and saving without losing anything, what is remembered between two
 * sittings, and what is kept in case the program ends unexpectedly.
 *
 * <p>The <em>state folder</em> is where the program keeps its own things for one user. A
 * <em>kept</em> text is an unsaved script put aside there while its window is open.
 */
package facetwright.workbench.file;
