package facetwright.workbench.papers;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.geom.Vec2;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.canvas.Canvas;
import javafx.stage.Window;

/** The dialogs of the system. */
public final class SystemSaving implements Saving {
  private final Window owner;
  private final Function<String, Optional<Path>> choosing;

  /**
   * @param owner the window the dialogs belong to
   * @param choosing lets the user choose a folder, under a title
   */
  public SystemSaving(Window owner, Function<String, Optional<Path>> choosing) {
    this.owner = owner;
    this.choosing = choosing;
  }

  @Override
  public Optional<Path> folder(String title) {
    return choosing.apply(title);
  }

  @Override
  public boolean canPrint() {
    return Printer.getDefaultPrinter() != null;
  }

  @Override
  public boolean print(String title, List<Drawing> pages) {
    PrinterJob job = PrinterJob.createPrinterJob();
    if (job == null || !job.showPrintDialog(owner)) {
      return false;
    }
    job.getJobSettings().setJobName(title);
    Paper paper = job.getJobSettings().getPageLayout().getPaper();
    for (Drawing page : pages) {
      PageLayout layout =
          job.getPrinter()
              .createPageLayout(
                  paper,
                  page.width() > page.height()
                      ? PageOrientation.LANDSCAPE
                      : PageOrientation.PORTRAIT,
                  Printer.MarginType.HARDWARE_MINIMUM);
      Canvas canvas =
          new Canvas(
              page.width() * Lettering.POINTS_PER_MM, page.height() * Lettering.POINTS_PER_MM);
      Camera camera = new Camera(Lettering.POINTS_PER_MM, 0, canvas.getHeight());
      new Pen(canvas.getGraphicsContext2D(), camera, true).paint(page, Vec2.ZERO);
      // True size: the page's own corner lies on the paper's, not on the printable area's.
      canvas.setTranslateX(-layout.getLeftMargin());
      canvas.setTranslateY(-layout.getTopMargin());
      if (!job.printPage(layout, canvas)) {
        return false;
      }
    }
    return job.endJob();
  }
}
