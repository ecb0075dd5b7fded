/** Rules about what is glued and what goes together: tabs, lids, sleeves, layers of card. */
package facetwright.check.fit;
