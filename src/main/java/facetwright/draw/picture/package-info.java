/** Pictures that stand on pages: blocks of marks with a size, each made from what it shows. */
package facetwright.draw.picture;
