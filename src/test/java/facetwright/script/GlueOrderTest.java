package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.GlueMarks;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.HandoutPictures;
import facetwright.fold.making.Bond;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Gluing;
import facetwright.geom.Box2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is glued has one number, and its order leaves room for a hand. */
class GlueOrderTest {
  private static final Pattern TOLD =
      Pattern.compile(
          "(?:(?:fold|glue|tuck) (?:tab|flap)|push (?:hook|tongue)|with tongue|two edges|of flap)"
              + " (\\d+)");

  private static final Pattern SAME = Pattern.compile("Do the same with [^.]*");
  private static final Pattern NUMBER = Pattern.compile("\\d+");

  /**
   * Designs of the library, and recipes of several parts or with gussets or laps, with a name to be
   * told by.
   */
  static List<Arguments> designs() throws Exception {
    List<Arguments> all = new ArrayList<>();
    for (Path file : LibraryDesigns.files()) {
      all.add(Arguments.of(file.getFileName().toString(), LibraryDesigns.text(file)));
    }
    Pattern.compile("```js\\R(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(Path.of("docs/recipes.md")))
        .results()
        .filter(r -> r.group(1).matches("(?s).*(gusset|lap\\(|part\\().*"))
        .forEach(r -> all.add(Arguments.of("recipe at " + r.start(), r.group(1))));
    return all;
  }

  private static Design design(String text) throws Exception {
    return Facetwright.evaluate("a.js", text, Map.of(), Budget.USUAL);
  }

  /**
   * The number that stands for others in the words of a step is drawn in its picture, with none
   * that they do not tell; no two lie on each other, and the template bears them all.
   */
  @ParameterizedTest
  @MethodSource("designs")
  void wordsAndPictureTellTheSameNumbers(String name, String text) throws Exception {
    Design d = design(LibraryDesigns.whole(text));
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), 1);
    Order order = Order.usual(d.unit());
    Handout handout =
        Handout.of(
            d.title(),
            "",
            order,
            d.laid(),
            d.gluing(),
            Judgement.of(d.laid(), d.folded(), d.findings()),
            works);
    HandoutPictures pictures =
        new HandoutPictures(d.laid(), handout, Order.usual(d.unit()).telling());
    List<Integer> all = new ArrayList<>();
    for (Section section : handout.sections()) {
      if (!(section instanceof Section.Steps steps)) {
        continue;
      }
      for (Picture picture : steps.pictures()) {
        if (!(picture instanceof Picture.Midway)) {
          continue;
        }
        List<Integer> told = new ArrayList<>();
        for (Matcher m = TOLD.matcher(picture.words().toLowerCase(Locale.ROOT)); m.find(); ) {
          told.add(Integer.parseInt(m.group(1)));
        }
        for (Matcher m = SAME.matcher(picture.words()); m.find(); ) {
          NUMBER.matcher(m.group()).results().forEach(r -> told.add(Integer.parseInt(r.group())));
        }
        all.addAll(told);
        Set<Integer> drawn = new TreeSet<>();
        List<Box2> places = new ArrayList<>();
        for (Mark mark : pictures.of(picture, 58, 44).marks()) {
          if (mark instanceof Mark.Text t && t.content().matches("\\d+")) {
            drawn.add(Integer.parseInt(t.content()));
            Box2 box = box(t);
            assertThat(places).as(t.content()).noneMatch(box::meets);
            places.add(box);
          }
        }
        assertThat(told).as(name + ": " + picture.words()).containsAll(drawn);
        if (!told.isEmpty()) {
          assertThat(drawn).as(name + ": " + picture.words()).contains(told.getFirst());
        }
      }
    }
    assertThat(all).as(name).isEqualTo(IntStream.rangeClosed(1, all.size()).boxed().toList());
    assertThat(template(d)).as(name).containsAll(all);
  }

  private static Box2 box(Mark.Text t) {
    double left = t.at().x() - t.back();
    double high = t.size() * Lettering.CAP_HEIGHT;
    return new Box2(left, t.at().y(), left + t.width(), t.at().y() + high);
  }

  /** The numbers of gluing that the template bears. */
  private static Set<Integer> template(Design d) {
    Set<Integer> printed = new TreeSet<>();
    for (int i = 0; i < d.laid().sheets(); i++) {
      NetDrawing.of(
              SheetPart.of(d.laid(), i), Set.of(NetDrawing.Content.NAMES), GlueMarks.of(d.gluing()))
          .marks()
          .stream()
          .filter(Mark.Text.class::isInstance)
          .map(m -> ((Mark.Text) m).content())
          .filter(t -> t.matches("\\d+"))
          .forEach(t -> printed.add(Integer.parseInt(t)));
    }
    return printed;
  }

  /** The carton of the library: the seam, both rows, the floor, and the fin last of all. */
  @Test
  void theFinIsGluedLast() throws Exception {
    Design d = design(LibraryDesigns.text("chandlers-carton"));
    List<Bond> bonds = Gluing.numbered(d.gluing().stages());
    assertThat(d.net().joins().get(((Bond.Joined) bonds.getLast()).join()))
        .isInstanceOf(Join.Lap.class);
    assertThat(names(d.net(), bonds.get(0))).contains("wall 1");
    assertThat(names(d.net(), bonds.get(1))).contains("gable 1");
    assertThat(names(d.net(), bonds.get(2))).contains("floor");
  }

  /** Whatever the measures of a wrap: seam, floor, and last what closes the top. */
  @Test
  void whatClosesAWrapComesLast() throws Exception {
    Random random = new Random(20);
    for (int i = 0; i < 12; i++) {
      int side = 40 + random.nextInt(30);
      int tall = 30 + random.nextInt(60);
      int gable = side / 2 + 4 + random.nextInt(20);
      int low = 20 + random.nextInt(20);
      boolean isTwo = random.nextBoolean();
      boolean isFlipped = random.nextBoolean();
      String rows = (isTwo ? low + ", " : "") + tall + ", " + gable + ", 12";
      String names = (isTwo ? "\"wall\", " : "") + "\"wall\", \"gable\", \"fin\"";
      int over = isFlipped ? 1 : 3;
      Design d =
          design(
              "design(\"w\");\nconst w = wrap({ columns: 4, width: "
                  + side
                  + ", rows: ["
                  + rows
                  + "], names: ["
                  + names
                  + "], seam: 10 });\n"
                  + "w.columns(\"even\").rows(\"gable\").gusset();\n"
                  + "w.columns(\"even\").rows(\"fin\").remove();\n"
                  + "w.columns("
                  + (4 - over)
                  + ").rows(\"fin\").lap(w.columns("
                  + over
                  + ").rows(\"fin\"));\n"
                  + "w.floor({ tab: 10 });\n");
      List<Bond> bonds = Gluing.numbered(d.gluing().stages());
      int seam = isTwo ? 3 : 2;
      String told = side + " × " + rows;
      assertThat(bonds).as(told).hasSize(seam + 3 + 1);
      for (int k = 0; k < bonds.size(); k++) {
        Join join = d.net().joins().get(((Bond.Joined) bonds.get(k)).join());
        assertThat(join instanceof Join.Lap).as(told).isEqualTo(k == bonds.size() - 1);
        boolean isFloor = names(d.net(), bonds.get(k)).contains("floor");
        assertThat(isFloor).as(told).isEqualTo(k >= seam && k < seam + 3);
      }
    }
  }

  private static String names(Net net, Bond bond) {
    return switch (net.joins().get(((Bond.Joined) bond).join())) {
      case Join.Seam s ->
          Stream.of(s.a().panel(), s.b().panel())
              .map(p -> net.panels().get(p).name())
              .collect(Collectors.joining(", "));
      case Join.Lap l -> net.panels().get(l.under()).name();
    };
  }

  /** A design that was sent from one process to another is made up in the same order. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("designs")
  void isTheSameWhereItIsReckonedAnew(String name, String source) throws Exception {
    Design design = design(LibraryDesigns.whole(source));
    ByteArrayOutputStream sent = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(sent)) {
      out.writeObject(design);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(sent.toByteArray()))) {
      Design come = (Design) in.readObject();
      assertThat(come).as(name).isEqualTo(design);
      GlueOrder anew = GlueOrder.of(design.net(), design.folded());
      assertThat(come.gluing().moments()).as(name).isEqualTo(anew.moments());
      assertThat(come.gluing().steps()).as(name).isEqualTo(anew.steps());
    }
  }
}
