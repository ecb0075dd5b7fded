package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.script.sandbox.ScriptException;
import facetwright.words.Site;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.net.URI;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FramesTest {
  static List<Message> messages() {
    return List.of(
        new Message.Ready(),
        new Message.Cancel(7),
        new Message.Ask(1, new Request("ä.js", "say(1)", Map.of("sides", "8", "wall", "48 mm"))),
        new Message.Answer(2, new Reply.Stopped(), false),
        new Message.Answer(
            3,
            new Reply.Failed(ScriptException.Kind.TIME, "too long", new Site(4, 2), "less"),
            true),
        new Message.Answer(4, new Reply.Done(TrialWorker.card("card")), false));
  }

  @ParameterizedTest
  @MethodSource("messages")
  void aMessageComesBackEqual(Message message) throws IOException {
    assertThat(Frames.read(new ByteArrayInputStream(Frames.frame(message)))).isEqualTo(message);
  }

  @ParameterizedTest
  @MethodSource("messages")
  void aMessageCutShortIsAnError(Message message) throws IOException {
    byte[] frame = Frames.frame(message);
    byte[] cut = Arrays.copyOf(frame, frame.length - 1);
    assertThatThrownBy(() -> Frames.read(new ByteArrayInputStream(cut)))
        .isInstanceOf(EOFException.class);
  }

  @Test
  void aMessageTooLongIsNotMade() {
    Message message = new Message.Ask(1, new Request("a", "x".repeat(Frames.LONGEST), Map.of()));
    assertThatThrownBy(() -> Frames.frame(message)).isInstanceOf(Frames.TooLong.class);
  }

  @Property(tries = 300, seed = "20261125")
  void garbageIsAnErrorNotAMessage(@ForAll byte[] bytes) {
    byte[] frame = ByteBuffer.allocate(bytes.length + 4).putInt(bytes.length).put(bytes).array();
    assertThatThrownBy(() -> Frames.read(new ByteArrayInputStream(frame)))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(() -> Frames.read(new ByteArrayInputStream(bytes)))
        .isInstanceOf(IOException.class);
  }

  @Property(tries = 300, seed = "20261125")
  void aSpoiledMessageIsAnErrorOrAMessage(@ForAll int place, @ForAll byte value)
      throws IOException {
    byte[] frame = Frames.frame(messages().get(2));
    frame[4 + Math.floorMod(place, frame.length - 4)] = value;
    try {
      assertThat(Frames.read(new ByteArrayInputStream(frame))).isNotNull();
    } catch (IOException e) {
      assertThat(e).isNotNull();
    }
  }

  static List<Serializable> strangers() {
    return List.of(
        new ArrayList<>(List.of("a")),
        URI.create("http://localhost"),
        new java.util.HashMap<>(Map.of("a", "b")),
        new java.util.Random(1),
        new IllegalStateException("x"),
        new int[Math.toIntExact(PlainData.MOST_ITEMS) + 1],
        nested(Math.toIntExact(PlainData.DEEPEST) + 2));
  }

  private static Serializable nested(int depth) {
    Object inner = "core";
    for (int i = 0; i < depth; i++) {
      inner = new Object[] {inner};
    }
    return (Serializable) inner;
  }

  @ParameterizedTest
  @MethodSource("strangers")
  void nothingButPlainDataIsLetIn(Serializable stranger) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(stranger);
    }
    byte[] frame =
        ByteBuffer.allocate(bytes.size() + 4).putInt(bytes.size()).put(bytes.toByteArray()).array();
    assertThatThrownBy(() -> Frames.read(new ByteArrayInputStream(frame)))
        .isInstanceOf(IOException.class)
        .hasStackTraceContaining("REJECTED");
  }
}
