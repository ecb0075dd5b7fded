/** What a cutting machine does: lines only, joined, in the order in which they are run. */
package facetwright.draw.machine;
