package facetwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Floors use each other downward only, and no room, sub-rooms counted, goes round in a circle. */
class ArrowsTest {
  /** What lies where the program's own classes do, wherever those are: no tests. */
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .importUrl(Start.class.getProtectionDomain().getCodeSource().getLocation());

  /** What each floor may use beside itself. The front doors in no room may use all of them. */
  private static final Map<String, Set<String>> MAY_USE = new TreeMap<>();

  static {
    floor("pace", "");
    floor("words", "");
    floor("json", "");
    floor("geom", "");
    floor("measure", "words geom");
    floor("message", "words measure");
    floor("language", "words geom measure");
    floor("net", "words geom measure message");
    floor("form", "words geom measure message net");
    floor("fold", "words geom measure message net");
    floor("check", "words geom measure message net fold");
    floor("papers", "pace language words geom measure message net fold check");
    floor("draw", "pace language words geom measure message net fold papers");
    floor("export", "pace language words json geom measure message net fold papers draw");
    floor("aim", "words geom measure message net");
    floor("script", "pace language words geom measure message net form fold check papers draw aim");
    floor(
        "adjust",
        "pace language words geom measure message net form fold check papers draw aim script");
    floor(
        "worker",
        "pace language words geom measure message net form fold check papers draw aim script"
            + " adjust");
    floor(
        "cli",
        "pace language words json geom measure message net form fold check papers draw export aim"
            + " script adjust worker");
    floor(
        "workbench",
        "pace language words json geom measure message net form fold check papers draw export aim"
            + " script adjust worker");
  }

  private static void floor(String name, String others) {
    Set<String> all = new TreeSet<>(List.of(others.isEmpty() ? new String[0] : others.split(" ")));
    all.add(name);
    MAY_USE.put(name, all);
  }

  @Test
  void arrowsPointDownward() {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass one : CLASSES) {
      String floor = floor(one);
      if (floor.isEmpty()) {
        continue;
      }
      one.getDirectDependenciesFromSelf().stream()
          .map(d -> d.getTargetClass())
          .filter(c -> c.getPackageName().startsWith("facetwright"))
          .filter(c -> !MAY_USE.getOrDefault(floor, Set.of()).contains(floor(c)))
          .forEach(c -> wrong.add(one.getName() + " uses " + c.getName()));
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyFloorIsKnown() {
    Set<String> there =
        CLASSES.stream()
            .map(ArrowsTest::floor)
            .filter(f -> !f.isEmpty())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(there).isEqualTo(MAY_USE.keySet());
  }

  @Test
  void noRoomGoesRoundInACircle() {
    slices().matching("facetwright.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  private static String floor(JavaClass one) {
    return Arrays.stream(one.getPackageName().split("\\.")).skip(1).limit(1).collect(joining());
  }

  @Test
  void theScriptEngineStaysInItsRoom() {
    noClasses()
        .that()
        .resideOutsideOfPackages("facetwright.script..", "facetwright.worker..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.graalvm..", "com.oracle..")
        .check(CLASSES);
  }

  @Test
  void scriptsAreReadAsTextAlone() {
    classes()
        .that()
        .resideInAPackage("facetwright.script.text..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("facetwright.script.text..", "java..")
        .check(CLASSES);
  }

  /** The library is set up in one place; who writes fields is handed its writer. */
  @Test
  void jsonIsSetUpInItsRoom() {
    noClasses()
        .that()
        .resideOutsideOfPackage("facetwright.json..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tools.jackson.core.json..", "tools.jackson.core.util..")
        .check(CLASSES);
  }

  @Test
  void theWindowsToolkitStaysInItsRoom() {
    noClasses()
        .that()
        .resideOutsideOfPackage("facetwright.workbench..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "org.fxmisc..")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineEndsTheProcess() {
    noClasses()
        .that()
        .resideOutsideOfPackages("facetwright.cli..", "facetwright.worker..")
        .should()
        .callMethod(System.class, "exit", int.class)
        .check(CLASSES);
  }
}
