package facetwright;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import org.junit.jupiter.api.Test;

/** Packages use each other downward only. */
class ArrowsTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("facetwright");

  @Test
  void arrowsPointDownward() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("pace")
        .definedBy("facetwright.pace..")
        .layer("json")
        .definedBy("facetwright.json..")
        .layer("geom")
        .definedBy("facetwright.geom..")
        .layer("net")
        .definedBy("facetwright.net..")
        .layer("form")
        .definedBy("facetwright.form..")
        .layer("fold")
        .definedBy("facetwright.fold..")
        .layer("check")
        .definedBy("facetwright.check..")
        .layer("papers")
        .definedBy("facetwright.papers..")
        .layer("draw")
        .definedBy("facetwright.draw..")
        .layer("export")
        .definedBy("facetwright.export..")
        .layer("aim")
        .definedBy("facetwright.aim..")
        .layer("script")
        .definedBy("facetwright.script..")
        .layer("turn")
        .definedBy("facetwright.turn..")
        .layer("worker")
        .definedBy("facetwright.worker..")
        .layer("cli")
        .definedBy("facetwright.cli..")
        .layer("workbench")
        .definedBy("facetwright.workbench..")
        .whereLayer("pace")
        .mayNotAccessAnyLayer()
        .whereLayer("json")
        .mayNotAccessAnyLayer()
        .whereLayer("geom")
        .mayNotAccessAnyLayer()
        .whereLayer("net")
        .mayOnlyAccessLayers("geom")
        .whereLayer("form")
        .mayOnlyAccessLayers("geom", "net")
        .whereLayer("fold")
        .mayOnlyAccessLayers("geom", "net")
        .whereLayer("check")
        .mayOnlyAccessLayers("geom", "net", "fold")
        .whereLayer("papers")
        .mayOnlyAccessLayers("pace", "geom", "net", "fold", "check")
        .whereLayer("draw")
        .mayOnlyAccessLayers("pace", "geom", "net", "fold", "papers")
        .whereLayer("export")
        .mayOnlyAccessLayers("pace", "json", "geom", "net", "fold", "papers", "draw")
        .whereLayer("aim")
        .mayOnlyAccessLayers("geom", "net")
        .whereLayer("script")
        .mayOnlyAccessLayers("geom", "net", "form", "fold", "check", "aim")
        .whereLayer("turn")
        .mayOnlyAccessLayers(
            "geom", "net", "form", "fold", "check", "papers", "draw", "aim", "script")
        .whereLayer("worker")
        .mayOnlyAccessLayers(
            "geom", "net", "form", "fold", "check", "papers", "draw", "aim", "script", "turn")
        .whereLayer("workbench")
        .mayOnlyAccessLayers(
            "pace", "json", "geom", "net", "form", "fold", "check", "papers", "draw", "export",
            "aim", "script", "turn", "worker")
        .check(CLASSES);
  }

  @Test
  void scriptsAreReadWithNothingButText() {
    ArchRuleDefinition.classes()
        .that()
        .resideInAPackage("facetwright.script.text..")
        .and()
        .haveSimpleNameNotEndingWith("Test")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("facetwright.script.text..", "java..")
        .check(CLASSES);
  }

  @Test
  void theScriptEngineStaysInItsRoom() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackages("facetwright.script..", "facetwright.worker..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.graalvm..")
        .check(CLASSES);
  }

  /** The library is set up in one place; who writes fields is handed its writer. */
  @Test
  void jsonIsSetUpInItsRoom() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackage("facetwright.json..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tools.jackson.core.json..", "tools.jackson.core.util..")
        .check(CLASSES);
  }

  @Test
  void theWindowsToolkitStaysInItsRoom() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackage("facetwright.workbench..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "org.fxmisc..")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineEndsTheProcess() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackages("facetwright.cli..", "facetwright.worker..")
        .should()
        .callMethod(System.class, "exit", int.class)
        .check(CLASSES);
  }
}
