/** Rules about closing: joins, laps, walls, senses and panels in each other's way. */
package facetwright.check.closing;
