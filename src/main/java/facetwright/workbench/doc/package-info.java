/** The program's documents, read in the window: text with headings, lists, tables and code. */
package facetwright.workbench.doc;
