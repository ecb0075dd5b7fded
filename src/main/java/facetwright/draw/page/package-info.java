/** Pages of every paper, put together from words and pictures. */
package facetwright.draw.page;
