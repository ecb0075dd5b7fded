package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.picture.HandoutPictures;
import facetwright.measure.Unit;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A handout builds one part after the other, and then puts them together. */
class PartsHandoutTest {
  private static Handout handout(Design d) {
    Works works = Works.of(d.laid(), d.gluing(), Unit.MM, List.of(), 1);
    return Handout.of(
        "Parts",
        "",
        Order.usual(Unit.MM),
        d.laid(),
        d.gluing(),
        Judgement.of(d.laid(), d.folded(), d.findings()),
        works);
  }

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", script, Map.of(), Budget.USUAL);
  }

  @Test
  void onePartIsMadeAfterTheOther() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Box");
            const box = prism({ sides: 4, side: 50, height: 40 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 4, side: 52, height: 15 }).open("top").unfold({ part: "lid" });
            lid.over(box);
            """);
    Handout handout = handout(design);
    assertThat(handout.sections())
        .extracting(Section::heading)
        .containsExactly(
            "Finished size",
            "You need",
            "Take care",
            "Score “box”",
            "Cut “box”",
            "Fold once “box”",
            "Shape of “box”",
            "Glue “box” in this order",
            "Score “lid”",
            "Cut “lid”",
            "Fold once “lid”",
            "Shape of “lid”",
            "Glue “lid” in this order",
            "Put the parts together");
    Section.Steps last = (Section.Steps) handout.sections().getLast();
    assertThat(last.pictures())
        .extracting(Picture::words)
        .containsExactly("Put “lid” over “box”, 15 mm deep.", "All together.");
    HandoutPictures pictures =
        new HandoutPictures(design.laid(), handout, Order.usual(design.unit()).telling());
    for (Section section : handout.sections()) {
      if (section instanceof Section.Pictures shapes) {
        for (Picture picture : shapes.pictures()) {
          Drawing drawing = pictures.of(picture, 80, 80);
          assertThat(drawing.marks()).isNotEmpty();
        }
      }
    }
  }

  @Test
  void numbersRunThroughAllParts() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Tower");
            const one = prism({ sides: 3, side: 50, height: 40 }).unfold({ part: "one" });
            const two = prism({ sides: 3, side: 30, height: 40 }).unfold({ part: "two" });
            two.on(one, { at: [5, -3], turn: 60 });
            """);
    Handout handout = handout(design);
    List<Integer> told =
        handout.sections().stream()
            .filter(Section.Steps.class::isInstance)
            .flatMap(s -> ((Section.Steps) s).pictures().stream())
            .filter(Picture.Midway.class::isInstance)
            .flatMap(
                p ->
                    Pattern.compile("tab (\\d+)|(?:with|and|,) (\\d+)")
                        .matcher(p.words())
                        .results())
            .map(r -> Integer.valueOf(r.group(1) == null ? r.group(2) : r.group(1)))
            .toList();
    int tabs = (int) design.net().panels().stream().filter(p -> p.name().contains(" tab ")).count();
    assertThat(told).isEqualTo(IntStream.rangeClosed(1, tabs).boxed().toList());
    Section.Steps last = (Section.Steps) handout.sections().getLast();
    assertThat(last.pictures().getFirst().words())
        .isEqualTo(
            "Glue “two” on “one”, its middle 5 mm to the right and 3 mm to the front of the middle,"
                + " turned by 60° to the left.");
  }

  @Test
  void whatIsMadeFourTimesIsToldOnce() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Table");
            const top = prism({ sides: 4, side: 100, height: 8 }).unfold({ part: "top" });
            const leg = prism({ sides: 4, side: 10, height: 60 }).unfold({ part: "leg", count: 4 });
            leg.on(top, { at: [[-40, -40], [40, -40], [40, 40], [-40, 40]] });
            """);
    assertThat(handout(design).sections())
        .extracting(Section::heading)
        .containsOnlyOnce("Cut “leg” (make 4)")
        .noneMatch(h -> h.contains("leg 2"));
  }
}
