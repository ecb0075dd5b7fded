package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes round or into parts that are put together has its step among those. */
class FittingsTogetherTest {
  private static final String BOX_AND_LID =
      """
      design("Box");
      const box = prism({ sides: 4, side: 50, height: 30 }).open("top").unfold({ part: "box" });
      const lid = prism({ sides: 4, side: 51, height: 30 }).open("top").unfold({ part: "lid" });
      lid.over(box, { by: 12 });
      """;

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", script, Map.of(), Budget.USUAL);
  }

  /** Every line of the handout with its heading before it. */
  private static List<String> lines(Design d) {
    Works works = Works.of(d.laid(), d.gluing(), Unit.MM, List.of(), 1);
    Handout all =
        Handout.of(
            "Parts",
            "",
            Order.usual(Unit.MM),
            d.laid(),
            d.gluing(),
            Judgement.of(d.laid(), d.folded(), d.findings()),
            works);
    return all.sections().stream()
        .flatMap(
            s ->
                switch (s) {
                  case Section.Ordered o -> o.lines().stream().map(l -> s.heading() + ": " + l);
                  case Section.Steps o ->
                      o.pictures().stream().map(Picture::words).map(l -> s.heading() + ": " + l);
                  case Section.Facts _, Section.Pictures _ -> Stream.<String>empty();
                })
        .toList();
  }

  private static List<String> told(Design design, String what) {
    return lines(design).stream().filter(l -> l.contains(what)).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "box.ribbon({ length: 500, tie: \"round both\" });",
        "box.ribbon({ length: 500, tie: \"round both\", at: \"last\" });",
        "lid.ribbon({ length: 500, tie: \"round both\" });",
        "lid.note(\"Tie the ribbon when it is dry.\", { at: \"last\" });",
      })
  void whatGoesRoundAllOrComesLastComesWhenAllIsTogether(String fitting) throws ScriptException {
    Design design = evaluate(BOX_AND_LID + fitting);
    List<String> told = told(design, "ie the ribbon");
    assertThat(told).singleElement().asString().startsWith("When all is together: Tie the ribbon");
    assertThat(lines(design)).last().isEqualTo(told.getFirst());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "box.note(\"Mark it.\");",
        "box.note(\"Mark it.\", { at: \"first\" });",
        "box.note(\"Mark it.\", { before: \"tab side 1 to side 2\" });"
      })
  void whatIsOfItsPartStaysWithIt(String fitting) throws ScriptException {
    assertThat(told(evaluate(BOX_AND_LID + fitting), "Mark it"))
        .singleElement()
        .asString()
        .startsWith("Glue “box”");
  }

  /** 30 high and 30 high, 12 in each other, are 48 high: 38 stands inside, 49 does not. */
  @Test
  void theHollowOfAllThatIsTogetherCounts() throws ScriptException {
    Design design = evaluate(BOX_AND_LID + "box.light({ height: 38 });");
    assertThat(design.findings()).extracting(Finding::rule).doesNotContain("no-room", "no-way-in");
    assertThat(told(design, "tea light"))
        .containsExactly(
            "Put the parts together: Put the battery tea light in, 38 mm across and 38 mm tall."
                + " Then put “lid” over “box”, 12 mm deep.");
    assertThat(evaluate(BOX_AND_LID + "box.light({ height: 49 });").findings())
        .extracting(Finding::rule)
        .contains("no-room");
    assertThat(evaluate(BOX_AND_LID + "box.light({ across: 52 });").findings())
        .extracting(Finding::rule)
        .contains("no-room");
  }

  /** Whether told of the lamp or of its foot: it would fall out of the lamp by itself. */
  @ParameterizedTest
  @ValueSource(strings = {"lamp", "foot"})
  void aLightOnAFootGoesInBeforeTheLampStandsOnIt(String of) throws ScriptException {
    Design design =
        evaluate(
            """
            design("Lamp on a foot");
            const foot = prism({ sides: 4, side: 80, height: 10 }).unfold({ part: "foot" });
            const lamp = prism({ sides: 4, side: 50, height: 60 }).open("base").unfold({ part: "lamp" });
            lamp.on(foot);
            %s.light();
            """
                .formatted(of));
    assertThat(design.findings()).extracting(Finding::rule).doesNotContain("no-room", "no-way-in");
    assertThat(told(design, "tea light"))
        .singleElement()
        .asString()
        .startsWith("Put the parts together: Put the battery tea light in")
        .contains("Then glue “lamp” on “foot”");
  }

  /** What only stands by it makes no hollow with it. */
  @Test
  void whatStandsBesideEnclosesNothing() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Two blocks");
            const one = prism({ sides: 4, side: 20, height: 60 }).unfold({ part: "one" });
            const two = prism({ sides: 4, side: 20, height: 60 }).unfold({ part: "two" });
            two.beside(one, { by: 50 });
            one.light();
            """);
    assertThat(design.findings()).extracting(Finding::rule).contains("no-room");
  }
}
