package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.Drawing;
import facetwright.net.Panel;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The handout as a web page, read and used in a browser. */
class HandoutPageTest {
  /** All outlines of the folded view as they are drawn. */
  private static final String VIEW =
      "[...document.querySelectorAll('#view path')].map(p => p.getAttribute('d')).join()";

  private static final String LABEL = "document.getElementById('view').getAttribute('aria-label')";

  @TempDir static Path folder;
  private static Browser browser;
  private static final Map<String, Job> JOBS = new HashMap<>();

  @BeforeAll
  static void start() throws Exception {
    browser = new Browser();
  }

  @AfterAll
  static void end() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  private static Job job(String name) throws Exception {
    if (!JOBS.containsKey(name)) {
      Design d = LibraryDesigns.design(name);
      JOBS.put(
          name,
          Jobs.of(d.title(), d.header().author(), d.laid(), d.folded(), Order.usual(d.unit())));
    }
    return JOBS.get(name);
  }

  private static Path page(String name) throws Exception {
    Path file = folder.resolve(name + ".html");
    if (!Files.exists(file)) {
      Files.write(file, new HtmlWriter().write(job(name)));
    }
    return file;
  }

  private static void show(String id) {
    browser.ask("document.getElementById('" + id + "').scrollIntoView({ block: 'center' })");
  }

  /** The middle of an element in the window, and its width. */
  private static double[] place(String id) {
    JsonNode box =
        browser.ask(
            "(r => [r.x + r.width / 2, r.y + r.height / 2, r.width])(document.getElementById('"
                + id
                + "').getBoundingClientRect())");
    return new double[] {box.path(0).asDouble(), box.path(1).asDouble(), box.path(2).asDouble()};
  }

  @Test
  void thePointerTurnsTheFoldedView() throws Exception {
    browser.open(page("harbour-lantern"), 1000, 900);
    show("view");
    String before = browser.ask(VIEW).asString();
    assertThat(before).contains("M");
    double[] at = place("view");
    browser.drag(at[0], at[1], at[0] + 120, at[1] - 40);
    String turned = browser.ask(VIEW).asString();
    assertThat(turned).isNotEqualTo(before);
    // Let go, it stays as it is.
    browser.drag(5, 5, 60, 60);
    assertThat(browser.ask(VIEW).asString()).isEqualTo(turned);
  }

  @Test
  void theSliderOpensIt() throws Exception {
    browser.open(page("harbour-lantern"), 1000, 900);
    show("open");
    String made = browser.ask(VIEW).asString();
    assertThat(browser.ask(LABEL).asString()).contains("folded 100 %");
    double[] at = place("open");
    browser.drag(at[0] + at[2] / 2 - 8, at[1], at[0], at[1]);
    assertThat(browser.ask("document.getElementById('open').value").asInt()).isBetween(45, 55);
    assertThat(browser.ask(VIEW).asString()).isNotEqualTo(made);
    assertThat(browser.ask(LABEL).asString()).doesNotContain("folded 100 %");
  }

  /**
   * These stand on a floor. Flat and seen from right above, the panels show their full area: what
   * the outlines enclose, less the openings, is the card of the net.
   */
  @ParameterizedTest
  @ValueSource(strings = {"supper-tray", "boathouse"})
  void flatFromAboveItIsTheNet(String name) throws Exception {
    browser.open(page(name), 1000, 900);
    browser.ask("document.getElementById('open').focus()");
    browser.key("Home");
    assertThat(browser.ask(LABEL).asString()).contains("folded 0 %");
    browser.ask("document.getElementById('view').focus()");
    for (int i = 0; i < 20; i++) {
      browser.key("ArrowUp");
    }
    double seen =
        browser
            .ask(
                """
                [...document.querySelectorAll('#view g')]
                  .map(g => g.firstChild.getAttribute('d').split('M').slice(1)
                    .map(r => r.replace('Z', '').split('L').map(p => p.split(',').map(Number)))
                    .map(r => Math.abs(r.reduce((s, p, i) => {
                      const q = r[(i + 1) % r.length];
                      return s + p[0] * q[1] - p[1] * q[0];
                    }, 0) / 2))
                    .reduce((s, a, i) => i === 0 ? a : s - a, 0))
                  .reduce((s, a) => s + a, 0)
                """)
            .asDouble();
    double card = job(name).laid().net().panels().stream().mapToDouble(Panel::cardArea).sum();
    assertThat(seen).isCloseTo(card, within(0.003 * card));
  }

  @Test
  void keysAloneReachAndTurnIt() throws Exception {
    browser.open(page("harbour-lantern"), 1000, 900);
    boolean isReached = false;
    for (int i = 0; i < 12 && !isReached; i++) {
      browser.key("Tab");
      isReached = browser.ask("document.activeElement.id").asString().equals("view");
    }
    assertThat(isReached).isTrue();
    String before = browser.ask(VIEW).asString();
    for (String key : List.of("ArrowLeft", "ArrowUp")) {
      browser.key(key);
      String after = browser.ask(VIEW).asString();
      assertThat(after).as(key).isNotEqualTo(before);
      before = after;
    }
    browser.key("Tab");
    assertThat(browser.ask("document.activeElement.id").asString()).isEqualTo("open");
    browser.key("ArrowLeft");
    assertThat(browser.ask(LABEL).asString()).contains("folded 99 %");
  }

  /** A narrow telephone is 360 pixels wide; from memory. Type is read from 12 pixels up. */
  @ParameterizedTest
  @CsvSource({
    "harbour-lantern, 360",
    "harbour-lantern, 1280",
    "beacon-dodecahedron, 360",
    "supper-tray, 360",
    "hex-favour-box, 360"
  })
  void nothingRunsOverTheEdgeAndWordsAreLegible(String name, int width) throws Exception {
    browser.open(page(name), width, 800);
    assertThat(browser.ask("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    JsonNode small =
        browser.ask(
            """
            [...document.querySelectorAll('main *')]
              .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
              .filter(e => !['SCRIPT', 'TITLE', 'title'].includes(e.tagName))
              .map(e => {
                const svg = e.closest('svg');
                const zoom = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
                return [e.textContent, parseFloat(getComputedStyle(e).fontSize) * zoom];
              })
              .filter(t => t[1] < 11.95)
            """);
    assertThat(small).isEmpty();
  }

  /** The page with its pictures, then each template alone on paper of its own size. */
  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "supper-tray"})
  void printsAllPagesAtTrueSize(String name) throws Exception {
    browser.open(page(name), 1000, 900);
    List<PdfReading.Page> pages = PdfReading.of(browser.print());
    List<Drawing> templates = HandoutContent.of(job(name)).templates();
    int words = pages.size() - templates.size();
    assertThat(words).isBetween(2, 7);
    Order order = job(name).order();
    for (PdfReading.Page page : pages.subList(0, words)) {
      assertThat(page.width()).isCloseTo(order.page().width(), within(0.5));
      assertThat(page.height()).isCloseTo(order.page().height(), within(0.5));
      assertThat(page.letters()).isNotEmpty();
    }
    for (int i = 0; i < templates.size(); i++) {
      PdfReading.Page page = pages.get(words + i);
      assertThat(page.width()).isCloseTo(templates.get(i).width(), within(0.5));
      assertThat(page.height()).isCloseTo(templates.get(i).height(), within(0.5));
      assertThat(ruler(page, 100)).as("100 mm").isTrue();
      assertThat(ruler(page, 4 * 25.4)).as("4 in").isTrue();
    }
    for (PdfReading.Page page : pages) {
      assertThat(page.letters().stream().filter(l -> l.size() < 7.99 && !l.text().isBlank()))
          .isEmpty();
    }
  }

  private static boolean ruler(PdfReading.Page page, double length) {
    return page.lines().stream()
        .anyMatch(l -> l.isStraightOnPage() && Math.abs(l.length() - length) <= 0.2);
  }

  @Test
  void thePageComplainsOfNothing() throws Exception {
    for (String name : List.of("harbour-lantern", "supper-tray")) {
      browser.open(page(name), 1000, 900);
      show("view");
      double[] at = place("view");
      browser.drag(at[0], at[1], at[0] - 60, at[1] + 20);
    }
    assertThat(browser.troubles()).isEmpty();
  }
}
