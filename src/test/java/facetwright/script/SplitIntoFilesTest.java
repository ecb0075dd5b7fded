package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** However a script is split into files, its net is the same. */
class SplitIntoFilesTest {
  /** What a script makes, each of what stands above it. */
  private static final Map<String, String> MADE = made();

  private static final String END =
      "deco(shell(20)).unfold({ part: \"box\" });\nlid(20).unfold({ part: \"lid\" });\n";

  private static Map<String, String> made() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("wall", "const wall = 40;");
    all.put("sides", "const sides = 6;");
    all.put("golden", "const golden = (1 + Math.sqrt(5)) / 2;");
    all.put("foot", "function foot(side) { return regular({ sides, side: side * golden }); }");
    all.put(
        "Depth",
        "class Depth { constructor(of) { this.of = of; } mm() { return this.of + \" mm\"; } }");
    all.put("body", "const body = (side) => prism({ outline: foot(side), height: wall });");
    all.put("shell", "function shell(side) { return body(side).open(\"top\"); }");
    all.put("deco", "let deco = (form) => form.layer(\"side\", { reveal: new Depth(2).mm() });");
    all.put(
        "lid",
        "function lid(side) { return prism({ outline: foot(side).offset(\"card\"), height: wall / 4"
            + " }).open(\"base\"); }");
    return all;
  }

  @Test
  void theNetIsTheSame() throws ScriptException {
    String one = "design(\"T\");\n" + String.join("\n", MADE.values()) + "\n" + END;
    Design whole = UsedFilesTest.evaluate(one);
    Random random = new Random(11);
    for (int trial = 0; trial < 25; trial++) {
      Gathered split = split(random);
      Design design = UsedFilesTest.evaluate(split.text());
      assertThat(UsedFilesTest.corners(design))
          .as(split.text())
          .isEqualTo(UsedFilesTest.corners(whole));
      assertThat(design.findings().stream().map(f -> f.message()))
          .isEqualTo(whole.findings().stream().map(f -> f.message()).toList());
      assertThat(design.net().layers()).hasSameSizeAs(whole.net().layers());
    }
  }

  /** Each file of a run of what stands one above the other, so that none uses a later one. */
  private static Gathered split(Random random) {
    Piece.State state = random.nextBoolean() ? Piece.State.READ : Piece.State.GATHERED;
    List<Piece> pieces = new ArrayList<>();
    Map<String, String> home = new LinkedHashMap<>();
    List<String> block = new ArrayList<>();
    for (String name : MADE.keySet()) {
      block.add(name);
      if (random.nextInt(3) == 0) {
        String file = "file " + pieces.size() + ".js";
        pieces.add(new Piece(file, state, text(block, "", home)));
        block.forEach(n -> home.put(n, file));
        block.clear();
      }
    }
    String main = "design(\"T\");\n" + text(block, END, home);
    Collections.shuffle(pieces, random);
    return new Gathered(main, pieces);
  }

  private static String text(List<String> block, String end, Map<String, String> home) {
    String own = block.stream().map(MADE::get).collect(Collectors.joining("\n", "", "\n")) + end;
    Map<String, Set<String>> wanted = new LinkedHashMap<>();
    home.forEach(
        (name, file) -> {
          if (own.matches("(?s).*\\b" + name + "\\b.*") && !block.contains(name)) {
            wanted.computeIfAbsent(file, _ -> new LinkedHashSet<>()).add(name);
          }
        });
    StringBuilder uses = new StringBuilder();
    wanted.forEach(
        (file, names) ->
            uses.append("const { ")
                .append(String.join(", ", names))
                .append(" } = use(\"")
                .append(file)
                .append("\");\n"));
    return uses + own;
  }
}
