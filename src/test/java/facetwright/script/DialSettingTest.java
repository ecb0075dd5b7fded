package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class DialSettingTest {
  private static final String SCRIPT =
      """
      /*
       * author: Mirren Oake, Tidewell
       * notes: A lantern,
       *   for the walk.
       * setting: Tall = wall 70, side 1 1/8 in
       * setting: For small hands = "side 2" 30 mm, wall -4.5
       */
      design("Lantern", { units: "mm" });
      """;

  @Test
  void readsLinesOfTheHead() {
    List<DialSetting> read = DialSetting.read(SCRIPT);
    assertThat(read).extracting(DialSetting::name).containsExactly("Tall", "For small hands");
    assertThat(read.get(0).values())
        .containsExactly(Map.entry("wall", "70"), Map.entry("side", "1 1/8 in"));
    assertThat(read.get(1).values())
        .containsExactly(Map.entry("side 2", "30 mm"), Map.entry("wall", "-4.5"));
  }

  @Test
  void theNotesDoNotSwallowThem() {
    assertThat(ScriptHeader.read(SCRIPT).notes()).isEqualTo("A lantern, for the walk.");
  }

  @Test
  void leavesOutWhatCannotBeRead() {
    assertThat(
            DialSetting.read("/* setting: = wall 3\n * setting: Odd = wall\n * setting: none\n */"))
        .isEmpty();
    assertThat(DialSetting.read("// setting: Tall = wall 3\n")).isEmpty();
    assertThat(DialSetting.read("")).isEmpty();
  }

  @Test
  void oneOfTheSameNameIsReplacedInPlaceOfBeingDoubled() {
    String next = new DialSetting("tall", Map.of("wall", "65")).addedTo(SCRIPT);
    assertThat(DialSetting.read(next))
        .extracting(DialSetting::name)
        .containsExactly("For small hands", "tall");
    assertThat(next).doesNotContain("wall 70");
  }

  @Test
  void aHeadIsMadeWhereThereIsNone() {
    String next = new DialSetting("Tall", Map.of("wall", "65")).addedTo("design(\"A\");\n");
    assertThat(next).isEqualTo("/*\n * setting: Tall = wall 65\n */\ndesign(\"A\");\n");
    assertThat(new DialSetting("Low", Map.of("wall", "5")).addedTo("/* A lantern. */\nx();\n"))
        .isEqualTo("/* A lantern.\n * setting: Low = wall 5\n */\nx();\n");
  }

  @Test
  void aNameCannotEndItsLineOrTheComment() {
    assertThat(DialSetting.cleanName(" a = b */ c\nd ")).isEqualTo("a b c d");
  }

  @Property(seed = "20261125", tries = 200)
  void whatIsAddedIsReadBackAndTakenOutAgain(@ForAll("settings") Map<String, String> values) {
    DialSetting setting = new DialSetting("Mine", values);
    String next = setting.addedTo(SCRIPT);
    assertThat(DialSetting.read(next)).last().isEqualTo(setting);
    assertThat(DialSetting.removedFrom(next, "MINE")).isEqualTo(SCRIPT);
  }

  @Provide
  Arbitrary<Map<String, String>> settings() {
    Arbitrary<String> name =
        Arbitraries.of("wall", "side", "sides", "side 2", "tall one", "rim, upper", "top+", "w3");
    Arbitrary<String> value = Arbitraries.of("3", "1 1/4 in", "-2.5", ".5", "48 mm", "0.25");
    return Arbitraries.maps(name, value).ofMinSize(1).ofMaxSize(5).map(LinkedHashMap::new);
  }
}
