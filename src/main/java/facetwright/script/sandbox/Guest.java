package facetwright.script.sandbox;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Engine;
import org.graalvm.polyglot.EnvironmentAccess;
import org.graalvm.polyglot.HostAccess;
import org.graalvm.polyglot.PolyglotAccess;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.io.IOAccess;
import org.graalvm.polyglot.management.ExecutionEvent;
import org.graalvm.polyglot.management.ExecutionListener;

/** The one engine, and how a context in it is shut in. */
final class Guest {
  /** The longest text a script can make, in UTF-16 units. */
  static final int LONGEST_TEXT = 200_000;

  private static final Engine ENGINE =
      Engine.newBuilder("js")
          .option("engine.WarnInterpreterOnly", "false")
          .in(InputStream.nullInputStream())
          .out(OutputStream.nullOutputStream())
          .err(OutputStream.nullOutputStream())
          .build();

  static {
    PlainLists.in(ENGINE);
    note(Where::isScript, ScriptThread::note);
    note(Where::isFile, ScriptThread::noteInFile);
  }

  /** Evaluates to the functions that {@link Prelude} holds. */
  static final Source PRELUDE =
      internal("(() => {\n'use strict';\n" + text("bounds.js") + text("prelude.js") + "})()");

  private Guest() {}

  private static void note(Predicate<String> sources, Consumer<ExecutionEvent> by) {
    ExecutionListener _ =
        ExecutionListener.newBuilder()
            .statements(true)
            .sourceFilter(source -> sources.test(source.getName()))
            .onEnter(by)
            .attach(ENGINE);
  }

  static Context newContext() {
    return Context.newBuilder("js")
        .engine(ENGINE)
        .allowExperimentalOptions(true)
        .allowHostAccess(HostAccess.NONE)
        .allowHostClassLoading(false)
        .allowHostClassLookup(_ -> false)
        .allowNativeAccess(false)
        .allowCreateThread(false)
        .allowCreateProcess(false)
        .allowInnerContextOptions(false)
        .allowPolyglotAccess(PolyglotAccess.NONE)
        .allowEnvironmentAccess(EnvironmentAccess.NONE)
        .allowIO(IOAccess.NONE)
        .option("js.strict", "true")
        .option("js.load", "false")
        .option("js.print", "false")
        .option("js.console", "false")
        .option("js.graal-builtin", "false")
        .option("js.polyglot-builtin", "false")
        .option("js.java-package-globals", "false")
        .option("js.disable-eval", "true")
        .option("js.bigint", "false")
        .option("js.atomics", "false")
        .option("js.shared-array-buffer", "false")
        .option("js.intl-402", "false")
        .option("js.unhandled-rejections", "throw")
        .option("js.timezone", "UTC")
        .option("js.locale", "en-US")
        .option("js.string-length-limit", Integer.toString(LONGEST_TEXT))
        .option("js.max-typed-array-length", "1000")
        .build();
  }

  /** A text of the program's own, out of sight of the script. */
  static Source internal(String text) {
    return Source.newBuilder("js", text, "prelude.js").internal(true).buildLiteral();
  }

  static Source script(String text) {
    return Source.newBuilder("js", text, Where.SCRIPT).buildLiteral();
  }

  private static String text(String resource) {
    try (InputStream in = Guest.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
