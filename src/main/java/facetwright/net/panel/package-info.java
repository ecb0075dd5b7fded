/** The way in panel by panel: each hung on an edge of one that is there. */
package facetwright.net.panel;
