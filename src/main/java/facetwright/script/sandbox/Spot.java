package facetwright.script.sandbox;

import facetwright.script.text.Gathered;
import facetwright.words.InFile;
import facetwright.words.Site;

/**
 * Where a place is in the text it lies in: a script, or a file that it uses.
 *
 * @param text of the script or the file
 * @param site the place in that text alone
 */
public record Spot(String text, Site site) {

  /**
   * @param script with the files that it uses, as they were when the place was told
   */
  public static Spot of(String script, Site site) {
    return of(Gathered.of(script), site);
  }

  static Spot of(Gathered all, Site site) {
    InFile in = site.in();
    return all.piece(in.name())
        .map(
            p ->
                new Spot(
                    p.text(),
                    new Site(in.isGathered() ? in.line() - p.line() + 1 : in.line(), in.column())))
        .orElseGet(() -> new Spot(all.main(), new Site(site.line(), site.column())));
  }
}
