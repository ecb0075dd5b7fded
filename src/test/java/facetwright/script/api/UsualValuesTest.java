package facetwright.script.api;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.vocabulary.Language;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What holds where an argument is left out is shown as a script would write it. */
class UsualValuesTest {

  @TestFactory
  Stream<DynamicTest> eachReadsBackToItself() {
    return Language.things().stream()
        .flatMap(thing -> thing.functions().stream())
        .flatMap(
            fn ->
                Stream.concat(fn.places().stream(), fn.options().stream())
                    .filter(arg -> arg.usual() != null)
                    .map(
                        arg ->
                            DynamicTest.dynamicTest(
                                fn.name() + " " + arg.name() + ": " + arg.leftOut(),
                                () -> readsBack(arg))));
  }

  private static void readsBack(Arg<?> arg) throws Kind.Unfit {
    Session session = new Session(Map.of(), false, Map.of());
    assertThat(arg.kind().read(written(arg.leftOut()), session)).isEqualTo(arg.usual());
  }

  private static Given written(String text) {
    if (text.startsWith("\"")) {
      return new Given.Text(text.substring(1, text.length() - 1));
    }
    if (text.startsWith("[")) {
      List<Given> items =
          Arrays.stream(text.substring(1, text.length() - 1).split(", "))
              .map(UsualValuesTest::written)
              .toList();
      return new Given.Items(items.size(), items);
    }
    return text.equals("true") || text.equals("false")
        ? new Given.Flag(text.equals("true"))
        : new Given.Amount(Double.parseDouble(text));
  }
}
