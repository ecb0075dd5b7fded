package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** The script-side helpers of one context, out of reach of the script. */
final class Prelude implements SiteFinder {
  private final Value stack;
  private final Value fail;
  private final Value dress;
  private final Value using;
  private Position position = new Position(Where.NOWHERE);

  Prelude(Context context) {
    Value helpers = context.eval(Guest.PRELUDE);
    stack = helpers.getMember("stack");
    fail = helpers.getMember("fail");
    dress = helpers.getMember("dress");
    using = helpers.getMember("using");
  }

  /** A script begins. */
  void begin(Position of) {
    position = of;
  }

  /**
   * The function by which the script uses files.
   *
   * @param checks the host's, which gives back the name it is given
   * @param begin gives what a file offers, or a function that does
   * @param end told the file's name, and what that function gave
   * @param lacks told the file's name, and what of it is asked for and not there
   */
  Value using(Value checks, ProxyExecutable begin, ProxyExecutable end, ProxyExecutable lacks) {
    return using.execute(checks, begin, end, lacks);
  }

  /**
   * Puts each host function among the globals into a JavaScript one of the same name, so that what
   * the script can find out about it is the same in every run.
   */
  void dress(Value globals) {
    List<String> functions = new ArrayList<>();
    for (String name : globals.getMemberKeys()) {
      Value value = globals.getMember(name);
      if (value.isProxyObject() && value.canExecute() && !value.hasMembers()) {
        functions.add(name);
      }
    }
    dress.executeVoid(String.join(" ", functions));
  }

  @Override
  public Site here() {
    return position.where().of(stack.execute().asString(), position.script());
  }

  /** Throws a JavaScript error at the call now running; never returns. */
  RuntimeException fail(String message, String fix) {
    fail.executeVoid(message, fix);
    throw new AssertionError("the prelude did not throw");
  }
}
