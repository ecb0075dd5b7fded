package facetwright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.language.Language;
import facetwright.language.Phrases;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of steps over the library, read back, at the sizes of handout and chart. */
class StepPictureTest {
  private static final double[][] SIZES = {{57, 44}, {57, 32}, {80, 50}, {120, 44}};

  private static Stream<Path> library() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("library"))) {
      return files.filter(f -> f.toString().endsWith(".js")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("library")
  void wordsLieApartAndMeasuresAreWhereTheySay(Path file) throws Exception {
    Design d =
        Facetwright.evaluate(file.toString(), Files.readString(file), Map.of(), Budget.USUAL);
    for (Ruler ruler : List.of(Ruler.usual(d.unit()), Ruler.EIGHTHS)) {
      for (PieceChart piece : ScoreChart.of(d.net(), ruler).pieces()) {
        List<Replay.Frame> frames = Replay.frames(piece.steps());
        for (int s = 0; s < piece.steps().size(); s++) {
          for (Language in : Language.values()) {
            // Each language in a size of its own: words are longer in some.
            double[] size = SIZES[Language.tags().indexOf(in.tag())];
            Telling tell = new Telling(Phrases.of(in), d.unit(), ruler);
            StepPicture.Shown shown =
                StepPicture.shown(piece, frames, s, size[0], size[1], !piece.isByTemplate(), tell);
            String where = piece.name() + " step " + (s + 1) + " at " + size[0];
            liesApart(where, shown);
            if (shown.isWhole() && piece.isForBoard()) {
              BlankFrame frame = BlankFrame.of(piece, frames, s, size[0], size[1], tell);
              readBack(where, piece.steps().get(s), frames.get(s), frame, shown);
            }
          }
        }
      }
    }
  }

  private static void liesApart(String where, StepPicture.Shown shown) {
    List<Mark.Text> texts = texts(shown);
    Box2 all = new Box2(0, 0, shown.block().width(), shown.block().height());
    for (int i = 0; i < texts.size(); i++) {
      Box2 box = box(texts.get(i));
      assertThat(all.holds(box, LengthTolerance.FINE))
          .as("%s: %s", where, texts.get(i).content())
          .isTrue();
      for (Mark.Text other : texts.subList(0, i)) {
        assertThat(box.meets(box(other)))
            .as("%s: %s on %s", where, texts.get(i).content(), other.content())
            .isFalse();
      }
    }
  }

  private static void readBack(
      String where, Step step, Replay.Frame added, BlankFrame frame, StepPicture.Shown shown) {
    switch (step) {
      case Step.FullScores s -> aboveTheStop(where, s.lines(), frame, shown);
      case Step.ShortScores s -> aboveTheStop(where, s.lines(), frame, shown);
      case Step.SpotScores _, Step.Punch _, Step.Slits _, Step.Windows _, Step.CutAway _ ->
          atTheirLines(where, added, frame, shown);
      case Step.Trim _, Step.Points _ -> {}
    }
  }

  /** A number above a new line is as far from the left stop as it says. */
  private static void aboveTheStop(
      String where, List<Step.Ruled> lines, BlankFrame frame, StepPicture.Shown shown) {
    List<Mark.Text> above =
        texts(shown).stream()
            .filter(t -> t.angle() == 0 && t.weight() == Mark.Weight.BOLD)
            .filter(t -> t.at().y() > frame.blank().maxY())
            .toList();
    assertThat(above.stream().map(Mark.Text::content))
        .as(where)
        .containsExactlyInAnyOrderElementsOf(
            lines.stream().map(l -> l.measure().mark(frame.tell())).toList());
    for (Mark.Text t : above) {
      double read = (line(t, frame, shown) - frame.blank().minX()) / frame.scale();
      assertThat(lines.stream().filter(l -> l.measure().mark(frame.tell()).equals(t.content())))
          .as("%s: %s at %s", where, t.content(), read)
          .anyMatch(l -> Math.abs(l.measure().mm() - read) < 1e-6);
    }
  }

  /** Where the line is that a number stands above: right below it, or where its leader begins. */
  private static double line(Mark.Text t, BlankFrame frame, StepPicture.Shown shown) {
    Box2 box = box(t);
    return shown.block().marks().stream()
        .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.DONE)
        .map(m -> ((Mark.Stroke) m).points())
        .filter(p -> p.getFirst().y() > frame.blank().maxY())
        .filter(p -> Math.abs(p.getLast().x() - box.centre().x()) < 1e-9)
        .filter(p -> p.getLast().y() < box.minY() && p.getLast().y() > box.minY() - 1)
        .map(p -> p.getFirst().x())
        .findFirst()
        .orElse(box.centre().x());
  }

  /**
   * What is measured beside a line stands there once, at a line as long as it says; two that a
   * coarse ruler reads alike stand once, too.
   */
  private static void atTheirLines(
      String where, Replay.Frame added, BlankFrame frame, StepPicture.Shown shown) {
    Set<String> told = new HashSet<>();
    texts(shown).forEach(t -> told.add(t.content()));
    for (Replay.Dimension d : added.dimensions()) {
      assertThat(told).as(where).contains(d.measure().mark(frame.tell()));
      assertThat(
              shown.block().marks().stream()
                  .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.GUIDE)
                  .map(m -> ((Mark.Stroke) m).points())
                  .map(p -> p.getFirst().distance(p.getLast()) / frame.scale()))
          .as("%s: %s", where, d.measure().mark(frame.tell()))
          .anyMatch(
              mm ->
                  added.dimensions().stream()
                      .filter(
                          o ->
                              o.measure().mark(frame.tell()).equals(d.measure().mark(frame.tell())))
                      .anyMatch(o -> Math.abs(o.measure().mm() - mm) < 1e-6));
    }
  }

  private static List<Mark.Text> texts(StepPicture.Shown shown) {
    return shown.block().marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }

  private static Box2 box(Mark.Text t) {
    double high = t.size() * Lettering.CAP_HEIGHT;
    double back =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> t.width() / 2;
          case END -> t.width();
        };
    double x = t.at().x();
    double y = t.at().y();
    return t.angle() == 0
        ? new Box2(x - back, y, x - back + t.width(), y + high)
        : new Box2(x - high, y - back, x, y - back + t.width());
  }
}
