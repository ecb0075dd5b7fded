package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.text.Reading;
import facetwright.workbench.Fx;
import java.lang.reflect.Proxy;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.StyleSpans;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Inks of long scripts, in steps. */
class RepaintTest {
  private static final String LINE = "const wall = panel(\"wall\", { width: 2.5 }); // a wall\n";

  @BeforeAll
  static void start() throws Exception {
    Fx.start();
  }

  /** How often a span of the wanted inks is looked at when one line of so many has changed. */
  private static long looks(int lines) throws Exception {
    return Fx.get(
        () -> {
          String script = LINE.repeat(lines);
          CodeArea area = new CodeArea();
          area.replaceText(script);
          Repaint.of(area, Inks.of(Reading.of(script), List.of()));
          String changed = script + "let a = 1;";
          area.appendText("let a = 1;");
          AtomicLong looks = new AtomicLong();
          StyleSpans<Collection<String>> wanted = Inks.of(Reading.of(changed), List.of());
          Repaint.of(area, counted(wanted, looks));
          for (int i = 0; i < area.getParagraphs().size(); i += 97) {
            assertThat(area.getStyleSpans(i).getStyleSpan(0).getStyle())
                .containsExactly("ink-keyword");
          }
          return looks.get();
        });
  }

  @SuppressWarnings("unchecked")
  private static StyleSpans<Collection<String>> counted(
      StyleSpans<Collection<String>> spans, AtomicLong looks) {
    return (StyleSpans<Collection<String>>)
        Proxy.newProxyInstance(
            RepaintTest.class.getClassLoader(),
            new Class<?>[] {StyleSpans.class},
            (_, method, arguments) -> {
              if (method.getName().equals("getStyleSpan")) {
                looks.incrementAndGet();
              }
              return method.invoke(spans, arguments);
            });
  }

  @Test
  void tenTimesAsManyLinesTakeTenTimesAsManyLooks() throws Exception {
    long few = looks(98);
    assertThat(few).isPositive();
    assertThat(looks(980)).isLessThan(11 * few);
  }
}
