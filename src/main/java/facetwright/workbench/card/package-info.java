/** The card: the script as text, with marks where something is wrong and help where one types. */
package facetwright.workbench.card;
