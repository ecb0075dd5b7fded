package facetwright.workbench.file;

/** What a new script begins with: something small that can be made as it stands. */
final class Starter {
  static final String TEXT =
      """
      /*
       * author:
       * licence:
       * tags:
       * notes:
       */
      design("New design", { units: "mm" });

      const side = dial("side", 30, { from: 20, to: 40 });
      const tall = dial("tall", 60, { from: 30, to: 90 });

      prism({ sides: 6, side, height: tall }).unfold({ tab: 8 });

      sheet("A4", { weight: 220 });
      """;

  private Starter() {}
}
