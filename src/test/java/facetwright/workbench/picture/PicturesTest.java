package facetwright.workbench.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Site;
import facetwright.workbench.desk.Helpers;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesTest {
  private static final Path DRUM = LibraryDesigns.file("fog-drum");

  @TempDir private Path folder;
  private final List<String> asked = new ArrayList<>();
  private final List<CompletableFuture<Reply>> open = new ArrayList<>();
  private int hired;
  private int letGo;

  private final class Fake implements Helpers {
    @Override
    public CompletableFuture<Reply> ask(Request request) {
      asked.add(request.fileName());
      open.add(new CompletableFuture<>());
      return open.getLast();
    }

    @Override
    public void close() {
      letGo++;
    }
  }

  private Pictures pictures() {
    return new Pictures(
        folder,
        () -> {
          hired++;
          return new Fake();
        },
        Runnable::run,
        Runnable::run);
  }

  private static Reply.Done drum() throws Exception {
    return new Reply.Done(
        Facetwright.evaluate("drum.js", Files.readString(DRUM), Map.of(), Budget.USUAL));
  }

  private static Request request(String name, String script) {
    return new Request(name, script, Map.of());
  }

  @Test
  void oneAfterAnotherAndKeptByScript() throws Exception {
    List<String> shown = new ArrayList<>();
    Pictures.Wall first = pictures().wall();
    first.of(request("a.js", "one"), p -> shown.add("a " + p.size()));
    first.of(request("b.js", "two"), p -> shown.add("b " + p.size()));
    assertThat(asked).containsExactly("a.js");
    open.get(0).complete(drum());
    assertThat(asked).containsExactly("a.js", "b.js");
    open.get(1).complete(new Reply.Failed(ScriptException.Kind.TIME, "no", new Site(3, 1), ""));
    assertThat(shown)
        .containsExactly("a 44 mm tall, about 70 mm wide", "b The script has a fault in line 3");
    assertThat(hired).isEqualTo(1);
    assertThat(letGo).as("nothing is left to do").isEqualTo(1);
    pictures().wall().of(request("other.js", "one"), p -> shown.add("again " + p.patches().size()));
    assertThat(asked).hasSize(2);
    assertThat(shown.getLast()).isNotEqualTo("again 0");
  }

  @Test
  void whatIsNoLongerWishedForIsNotMade() throws Exception {
    Pictures pictures = pictures();
    Pictures.Wall shelf = pictures.wall();
    Pictures.Wall other = pictures.wall();
    shelf.of(request("a.js", "one"), _ -> {});
    shelf.of(request("b.js", "two"), _ -> {});
    other.of(request("c.js", "three"), _ -> {});
    shelf.forget();
    assertThat(other.isAtRest()).isFalse();
    open.getFirst().complete(new Reply.Stopped());
    assertThat(asked).as("what another view wishes for stays").containsExactly("a.js", "c.js");
    open.getLast().complete(new Reply.Stopped());
    assertThat(shelf.isAtRest()).isTrue();
    assertThat(letGo).isEqualTo(1);
  }

  @Test
  void picturesAreReadBackAsTheyWereWritten() throws Exception {
    Picture picture = Picture.of(drum().design());
    Picture again = Picture.read(picture.bytes());
    assertThat(again.size()).isEqualTo(picture.size());
    assertThat(again.patches()).hasSameSizeAs(picture.patches());
    for (int i = 0; i < picture.patches().size(); i++) {
      assertThat(again.patches().get(i).ink()).isEqualTo(picture.patches().get(i).ink());
      assertThat(again.patches().get(i).edges()).isEqualTo(picture.patches().get(i).edges());
      assertThat(again.patches().get(i).rings().getFirst().corners())
          .isEqualTo(picture.patches().get(i).rings().getFirst().corners());
    }
  }

  @Test
  void damagedPicturesAreMadeAnew() throws Exception {
    byte[] bytes = Picture.of(drum().design()).bytes();
    for (int length : new int[] {0, 3, 9, 40, bytes.length - 1}) {
      assertThatThrownBy(() -> Picture.read(Arrays.copyOf(bytes, length)))
          .isInstanceOf(IOException.class);
    }
    bytes[40] = (byte) 0x7F;
    bytes[0] = 5;
    assertThatThrownBy(() -> Picture.read(bytes)).isInstanceOf(IOException.class);
  }
}
