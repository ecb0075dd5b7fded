/** The one table of keys: where each means something, how it is pressed, and what it does. */
package facetwright.workbench.key;
