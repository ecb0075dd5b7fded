package facetwright.papers.facets;

import facetwright.net.PanelRole;
import facetwright.words.Spoken;
import java.util.Optional;

/**
 * One facet.
 *
 * @param number from 1, in the order of the net
 * @param panel its index in the net
 * @param name what papers, messages and findings call it
 * @param role what it is for
 * @param spoken how a script speaks of it
 * @param corners how many corners it has; between two there may be an arc
 * @param width along its most level side, in mm; where it is not known how it stands, along its
 *     longest
 * @param height square to that, in mm
 * @param facing which way it faces; empty where that is not known
 */
public record FacetLine(
    int number,
    int panel,
    String name,
    PanelRole role,
    Spoken spoken,
    int corners,
    double width,
    double height,
    Optional<Facing> facing) {}
