package facetwright.net.blank;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Backing;
import facetwright.net.PanelRole;
import facetwright.net.fitting.Lettered;
import facetwright.words.Site;
import java.util.List;

/** Something said of the panel at a point. */
sealed interface Mark {
  record Waste(Vec2 at, Site site) implements Mark {}

  record Name(Vec2 at, String name, Site site) implements Mark {}

  record Role(Vec2 at, PanelRole role, Site site) implements Mark {}

  record Layered(Vec2 at, double reveal, String paper, Site site) implements Mark {}

  record Window(Polygon2 outline, Site site) implements Mark {}

  record Bordered(Vec2 at, double border, Site site) implements Mark {}

  /**
   * @param kind null to leave it as it is
   * @param fold null to leave it as it is
   */
  record Folded(List<Vec2> a, List<Vec2> b, LineKind kind, LineFold fold, Site site)
      implements Mark {}

  record Backed(Vec2 at, Backing backing) implements Mark {}

  record Written(Vec2 at, Lettered words) implements Mark {}

  record Hole(Vec2 at, double diameter, Site site) implements Mark {}

  record Base(Vec2 at, Site site) implements Mark {}

  record Joined(Vec2 a, Vec2 b, Vec2 tab, Site site) implements Mark {}

  record Lapped(Vec2 under, Vec2 over, Site site) implements Mark {}
}
