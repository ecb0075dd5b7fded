/** What goes behind the windows of a net: which piece covers which, and where it keeps clear. */
package facetwright.net.backing;
