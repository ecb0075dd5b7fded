/** A ring of copies that a design would give with a dial of steps, such as its count of sides. */
package facetwright.adjust.ring;
