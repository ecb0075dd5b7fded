/** The search for the angles at which joins meet, where a net leaves them open. */
package facetwright.fold.close;
