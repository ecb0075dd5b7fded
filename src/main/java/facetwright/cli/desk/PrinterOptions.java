package facetwright.cli.desk;

import facetwright.language.Language;
import facetwright.measure.Unit;
import facetwright.message.Refused;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.order.Order;
import facetwright.words.Sentence;
import java.util.Locale;
import picocli.CommandLine.Option;

/** What the printer takes, and who reads it: options shared by all commands that write pages. */
public final class PrinterOptions {
  @Option(
      names = "--page",
      paramLabel = "A4|Letter|9x12 in",
      description =
          "what the printer takes, for every page (usual: A4, or Letter for designs in inches);"
              + " templates of larger sheets are printed over several pages")
  private String page = "";

  @Option(
      names = "--language",
      paramLabel = "en|fr|de|es",
      description = "what a learner reads the papers in (usual: en)")
  private String language = Language.ENGLISH.tag();

  @Option(names = "--paper", hidden = true, description = "what --page was called")
  private String paper = "";

  /**
   * Refuses what can't be, before anything is evaluated.
   *
   * @throws Trouble.WrongCall when the printer's page is asked for by its old name, or a language
   *     that papers are not written in
   */
  public void check() {
    language();
    if (!paper.isEmpty()) {
      throw new Trouble.WrongCall(
          paper.contains("=")
              ? "--paper: this takes decorative papers in their usual sheets. Those at hand are"
                  + " planned by facetwright layers and facetwright materials."
              : "--paper is decorative paper. For what the printer takes write --page "
                  + (paper.contains(" ") ? "\"" + paper + "\"" : paper)
                  + ".");
    }
  }

  /**
   * The usual order of a design, on the page that was asked for.
   *
   * @throws Trouble.WrongCall when there is no such page, or it is too small
   */
  public Order order(Unit unit) {
    check();
    Order usual = Order.usual(unit).in(language());
    if (page.isEmpty()) {
      return usual;
    }
    SheetSize size = size(unit);
    if (!Order.isPage(size)) {
      throw new Trouble.WrongCall(
          "--page: "
              + size.name()
              + " is too small: "
              + Order.leastPage(unit)
              + ". Take A4, Letter or larger.");
    }
    return usual.on(size);
  }

  private Language language() {
    return Language.tagged(language.toLowerCase(Locale.ROOT))
        .orElseThrow(
            () ->
                new Trouble.WrongCall(
                    "--language: papers are written in "
                        + Sentence.listed(Language.tags(), "or")
                        + ", not in \""
                        + language
                        + "\"."));
  }

  private SheetSize size(Unit unit) {
    try {
      return SheetSizes.read(page, unit);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--page: " + Refused.text(e, unit) + ".");
    }
  }
}
