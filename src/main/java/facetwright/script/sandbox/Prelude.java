package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Value;

/** The script-side helpers of one context, out of reach of the script. */
final class Prelude implements SiteFinder {
  private static final Pattern FRAME =
      Pattern.compile("\\b" + Pattern.quote(Guest.NAME) + ":(\\d+):(\\d+)\\)?(?:\\R|$)");

  private final Value stack;
  private final Value fail;
  private final Value named;

  Prelude(Context context) {
    Value helpers = context.eval(Guest.PRELUDE);
    stack = helpers.getMember("stack");
    fail = helpers.getMember("fail");
    named = helpers.getMember("named");
  }

  /**
   * Puts each host function among the globals into a JavaScript one of the same name, so that what
   * the script can find out about it is the same in every run.
   */
  void dress(Value globals) {
    for (String name : globals.getMemberKeys()) {
      Value value = globals.getMember(name);
      if (value.isProxyObject() && value.canExecute() && !value.hasMembers()) {
        globals.putMember(name, named.execute(value, name));
      }
    }
  }

  @Override
  public Site here() {
    Matcher frame = FRAME.matcher(stack.execute().asString());
    return frame.find()
        ? new Site(Integer.parseInt(frame.group(1)), Integer.parseInt(frame.group(2)))
        : Site.NONE;
  }

  /** Throws a JavaScript error at the call now running; never returns. */
  RuntimeException fail(String message, String fix) {
    fail.executeVoid(message, fix);
    throw new AssertionError("the prelude did not throw");
  }
}
