/** What a script comes to: the design, its dials, and what it aims at. */
package facetwright.script.design;
