package facetwright.script.sandbox;

import com.oracle.truffle.api.instrumentation.SourceSectionFilter;
import com.oracle.truffle.api.instrumentation.TruffleInstrument;
import com.oracle.truffle.api.instrumentation.provider.TruffleInstrumentProvider;
import com.oracle.truffle.api.nodes.Node;
import com.oracle.truffle.js.nodes.access.ArrayLiteralNode;
import com.oracle.truffle.js.nodes.instrumentation.JSTags.LiteralTag;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.util.Collection;
import java.util.List;
import org.graalvm.polyglot.Engine;
import org.graalvm.polyglot.Instrument;

/**
 * Has the engine reckon the items of every list as it reckons everything else.
 *
 * <p>Left to itself it takes a short cut: of a list that came out as numbers not all whole, it asks
 * each item for a number with a fraction the next time. An item reckoned from whole numbers alone
 * then counts each of them as 0: of {@code const W = 160} the second {@code [W / 2, 1.5]} is {@code
 * [NaN, 1.5]}. From the third time on the engine knows that a whole number may come, and goes the
 * plain way. Here every list is told so before it runs. Only lists ask their items for something
 * else than what each came out as before, so nothing else needs it.
 */
final class PlainLists extends TruffleInstrument {
  private static final String ID = "plain-lists";

  /** A list written out in a script, whose items are not all written numbers. */
  private static final Class<?> LIST;

  /** Whether such a list goes the plain way. */
  private static final VarHandle PLAIN;

  static {
    try {
      LIST = Class.forName(ArrayLiteralNode.class.getName() + "$DefaultArrayLiteralBaseNode");
      PLAIN =
          MethodHandles.privateLookupIn(LIST, MethodHandles.lookup())
              .findVarHandle(LIST, "seenUnexpectedInteger", boolean.class);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("lists may come out wrong in this script engine", e);
    }
  }

  /** For all scripts that the engine is going to read. */
  static void in(Engine engine) {
    Instrument lists = engine.getInstruments().get(ID);
    if (lists == null || lists.lookup(PlainLists.class) == null) {
      throw new IllegalStateException("lists would come out wrong: " + ID + " is not registered");
    }
  }

  @Override
  protected void onCreate(Env env) {
    SourceSectionFilter literals = SourceSectionFilter.newBuilder().tagIs(LiteralTag.class).build();
    env.getInstrumenter()
        .attachLoadSourceSectionListener(literals, loaded -> tell(loaded.getNode()), true);
    env.registerService(this);
  }

  private static void tell(Node literal) {
    if (LIST.isInstance(literal)) {
      PLAIN.set(literal, true);
    }
  }

  /** By which the engine finds it; named in {@code META-INF/services}. */
  @Registration(id = ID, name = "Plain lists", services = PlainLists.class)
  public static final class Provider extends TruffleInstrumentProvider {
    @Override
    protected String getInstrumentClassName() {
      return PlainLists.class.getName();
    }

    @Override
    protected Object create() {
      return new PlainLists();
    }

    @Override
    protected Collection<String> getServicesClassNames() {
      return List.of(PlainLists.class.getName());
    }
  }
}
