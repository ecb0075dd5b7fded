/**
 * What a folded form is: where each panel stands, by how much joins miss, how it stands on the
 * table, and whether it lies flat.
 */
package facetwright.fold.pose;
