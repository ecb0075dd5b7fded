package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.export.Exporters;
import facetwright.script.LibraryDesigns;
import facetwright.workbench.Places.Place;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.event.ActionEvent;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers in the window: all that the command line makes, for one piece and for many. */
class PapersTest {
  private static final Path LANTERN = LibraryDesigns.file("harbour-lantern");

  private static final String PIXELS = "Pixels of a picture";

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    Files.writeString(folder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Path mine = Files.copy(LANTERN, folder.resolve("lantern.js"));
    visit = Visit.start(folder, Path.of("").toAbsolutePath(), mine);
    Fx.until("the design is made", () -> visit.house.desk().design().get() != null);
    Fx.run(() -> visit.house.places().now().set(Place.PAPERS));
    Fx.until("the first page shows", () -> says("Page 1 of 1"));
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private boolean says(String words) {
    return Fx.says(visit.house.papers(), words);
  }

  private ListView<?> list() {
    return (ListView<?>) visit.house.papers().lookup(".list-view");
  }

  private void pieces(String typed) throws Exception {
    type("Pieces to make", typed);
  }

  private void type(String where, String typed) throws Exception {
    Fx.run(
        () -> {
          TextField field = field(where);
          field.setText(typed);
          field.fireEvent(new ActionEvent());
        });
  }

  private TextField field(String name) {
    return (TextField)
        visit.house.papers().lookupAll(".text-field").stream()
            .filter(n -> name.equals(n.getAccessibleText()))
            .findFirst()
            .orElseThrow();
  }

  /** How wide a picture is is asked where one is chosen, and is kept in its range. */
  @Test
  void picturesAreAsWideAsIsTyped() throws Exception {
    choose("Template");
    assertThat(Fx.get(() -> field(PIXELS).getParent().isVisible())).isFalse();
    choose("Picture of the net");
    assertThat(Fx.get(() -> field(PIXELS).getParent().isVisible())).isTrue();
    type(PIXELS, "5");
    assertThat(Fx.get(() -> field(PIXELS).getText())).isEqualTo("100");
    type(PIXELS, "99999");
    assertThat(Fx.get(() -> field(PIXELS).getText())).isEqualTo("10000");
    type(PIXELS, "wide");
    assertThat(Fx.get(() -> field(PIXELS).getText())).isEqualTo("10000");
  }

  private void choose(String name) throws Exception {
    Fx.until(
        name + " is listed",
        () ->
            list().getItems().stream().anyMatch(p -> p.toString().contains("name=" + name + ",")));
    Fx.run(
        () -> {
          for (int i = 0; i < list().getItems().size(); i++) {
            if (list().getItems().get(i).toString().contains("name=" + name + ",")) {
              list().getSelectionModel().select(i);
            }
          }
        });
  }

  @Test
  void aHandoutIsLeafedThroughByKeys() throws Exception {
    choose("Handout");
    Fx.until("its pages are drawn", () -> says("Page 1 of") && !says("Page 1 of 1"));
    Fx.run(() -> list().requestFocus());
    Fx.run(() -> Fx.press(visit.house.papers(), "Page Down"));
    assertThat(Fx.get(() -> says("Page 2 of"))).isTrue();
    pieces("24");
    Fx.until("it is drawn anew", () -> says("Page 2 of"));
    assertThat(Fx.get(() -> list().getSelectionModel().getSelectedItem().toString()))
        .contains("name=Handout,");
  }

  @Test
  void aRingIsOfferedWhereOneCanBeMade() throws Exception {
    assertThat(Fx.get(() -> says("Ring of"))).isFalse();
    pieces("8");
    choose("Ring of 8");
    Fx.until("the ring is drawn", () -> says("Page 1 of"));
    visit.answers.add(folder.resolve("out"));
    Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
    Fx.until("it is saved", () -> visit.house.papers().told().startsWith("Saved to"));
    assertThat(folder.resolve("out").resolve("harbour-lantern-ring.pdf")).isNotEmptyFile();
  }

  /** A button that does nothing says why; grey, it would say nothing. */
  @Test
  void printingSaysWhyItCantBe() throws Exception {
    assertThat(Fx.get(() -> Fx.button(visit.house.papers(), "Print …").isDisabled())).isFalse();
    choose("Handout");
    Fx.until("its pages are drawn", () -> says("Page 1 of"));
    Fx.run(() -> Fx.button(visit.house.papers(), "Print …").fire());
    assertThat(visit.house.papers().told()).startsWith("✕ This system knows no printer.");
  }

  @Test
  void whatIsNoNumberIsPutBack() throws Exception {
    pieces("12");
    pieces("a dozen");
    TextField field = Fx.get(() -> (TextField) visit.house.papers().lookup(".text-field"));
    assertThat(Fx.<String>get(field::getText)).isEqualTo("12");
    pieces("0");
    assertThat(Fx.<String>get(field::getText)).isEqualTo("1");
  }

  /** The files of the command line's make, by name. */
  @Test
  void allAreSavedIntoAFolder() throws Exception {
    visit.answers.add(folder.resolve("all"));
    Fx.run(() -> Fx.button(visit.house.papers(), "Save all …").fire());
    Fx.until("they are saved", () -> visit.house.papers().told().startsWith("Saved to"));
    try (var files = Files.list(folder.resolve("all"))) {
      List<String> names = files.map(f -> f.getFileName().toString()).sorted().toList();
      Set<String> wanted =
          Exporters.all().sequencedValues().stream()
              .filter(e -> e.isUsual())
              .map(e -> "harbour-lantern-" + e.ending())
              .collect(Collectors.toSet());
      assertThat(names).containsAll(wanted);
    }
  }

  /** Papers of the same name are replaced unasked only where this design wrote them. */
  @Test
  void othersPapersAreAskedAbout() throws Exception {
    Path out = Files.createDirectories(folder.resolve("out"));
    Path template = Files.writeString(out.resolve("harbour-lantern-template.pdf"), "another's");
    choose("Template");
    visit.answers.add(out);
    Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
    Fx.until(
        "it is asked", () -> Fx.says(visit.house, "There is a harbour-lantern-template.pdf in"));
    assertThat(template).hasContent("another's");
    visit.answers.add(folder.resolve("mine"));
    Fx.run(() -> Fx.button(visit.house, "Another folder …").fire());
    Fx.until("it is saved", () -> visit.house.papers().told().startsWith("Saved to"));
    assertThat(folder.resolve("mine").resolve("harbour-lantern-template.pdf")).isNotEmptyFile();
    assertThat(template).hasContent("another's");
    for (int again = 0; again < 2; again++) {
      visit.answers.add(folder.resolve("mine"));
      Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
      Fx.until("its own", () -> visit.house.papers().told().startsWith("Saved to"));
    }
    visit.answers.add(out);
    Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
    Fx.until(
        "it is asked", () -> Fx.says(visit.house, "There is a harbour-lantern-template.pdf in"));
    Fx.run(() -> Fx.button(visit.house, "Replace it").fire());
    Fx.until("it is saved", () -> visit.house.papers().told().startsWith("Saved to " + out));
    assertThat(Files.readAllBytes(template)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    Path kept = out.resolve("replaced-files");
    assertThat(Fx.get(visit.house.papers()::told)).endsWith("What stood there is kept in " + kept);
    assertThat(kept.resolve("harbour-lantern-template.pdf")).hasContent("another's");
  }

  /** What was saved is said as long as it is what one sees. */
  @Test
  void whatWasSavedIsNotSaidOfAnother() throws Exception {
    choose("Template");
    visit.answers.add(folder.resolve("out"));
    Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
    Fx.until("it is saved", () -> visit.house.papers().told().startsWith("Saved to"));
    Fx.run(visit.house.filing()::fresh);
    Fx.until("another lies there", () -> !visit.house.papers().told().startsWith("Saved to"));
  }

  /** A question about the papers of one design is none about those of the next. */
  @Test
  void aQuestionGoesWithItsDesign() throws Exception {
    Path out = Files.createDirectories(folder.resolve("out"));
    Files.writeString(out.resolve("harbour-lantern-template.pdf"), "another's");
    choose("Template");
    visit.answers.add(out);
    Fx.run(() -> Fx.button(visit.house.papers(), "Save this …").fire());
    Fx.until(
        "it is asked", () -> Fx.says(visit.house, "There is a harbour-lantern-template.pdf in"));
    Fx.run(visit.house.filing()::fresh);
    assertThat(Fx.get(() -> Fx.says(visit.house, "There is a harbour-lantern-template.pdf in")))
        .isFalse();
    assertThat(out.resolve("harbour-lantern-template.pdf")).hasContent("another's");
  }

  /** From paper to paper the buttons stay where they are, pages or none. */
  @Test
  void theButtonsStayWhereTheyAre() throws Exception {
    Fx.until("papers are listed", () -> list().getItems().size() > 8);
    Set<Double> places = new java.util.HashSet<>();
    boolean without = false;
    for (int i = 0; i < Fx.get(() -> list().getItems().size()); i++) {
      int at = i;
      Fx.run(() -> list().getSelectionModel().select(at));
      Fx.until("it is drawn", () -> says("Page 1 of") || says("No pages"));
      Fx.pulse();
      without |= Fx.get(() -> says("No pages"));
      places.add(
          Fx.get(
              () -> {
                var all = Fx.button(visit.house.papers(), "Save all …");
                return all.localToScene(0, 0).getX() + 10_000 * all.localToScene(0, 0).getY();
              }));
    }
    assertThat(without).isTrue();
    assertThat(places).hasSize(1);
  }
}
