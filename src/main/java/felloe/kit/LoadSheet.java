package felloe.kit;

import felloe.document.LoadPages;
import felloe.drawing.Cautions;
import felloe.drawing.LoadPicture;
import felloe.drawing.LoadView;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.load.LoadPlan;
import felloe.out.About;
import felloe.out.PdfWriter;
import felloe.out.PngWriter;
import felloe.out.SvgWriter;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pages and pictures of a plate under load, in memory. */
final class LoadSheet {

  private static final int PIXELS = 1800;

  private final LoadAnswer answer;
  private final Plate plate;
  private final LoadMaps maps;

  LoadSheet(LoadAnswer answer) {
    this.answer = answer;
    this.plate = answer.plate();
    this.maps = new LoadMaps(answer);
  }

  /** A picture of each case as SVG, that of the worst as PNG, and the pages as PDF. */
  List<OutFile> files(Paper paper) {
    String stem = plate.name() + "-load";
    List<OutFile> files = new ArrayList<>();
    List<LoadView> views = new ArrayList<>();
    for (LoadPlan.Judged one : answer.plan().cases()) {
      LoadView view = maps.view(one);
      views.add(view);
      Picture picture = LoadPicture.of(view);
      About about = about(view);
      files.add(
          new OutFile(
              stem + "-" + one.field().load().name() + ".svg",
              SvgWriter.write(picture.drawing(), picture.page(), picture.pen(), about)));
    }
    LoadView worst = views.get(worst());
    Picture picture = LoadPicture.of(worst);
    files.add(
        new OutFile(
            stem + ".png",
            PngWriter.write(
                picture.drawing(), picture.page(), picture.pen(), PIXELS, about(worst))));
    files.add(new OutFile(stem + "-" + paper.title() + ".pdf", pages(views, paper)));
    return files;
  }

  /** Number of the case with the least margin; a fall only where there is nothing else. */
  private int worst() {
    List<LoadPlan.Judged> cases = answer.plan().cases();
    int worst = 0;
    for (int i = 1; i < cases.size(); i++) {
      boolean fall = cases.get(i).fall().isPresent();
      boolean now = cases.get(worst).fall().isPresent();
      boolean less = cases.get(i).margin() < cases.get(worst).margin();
      worst = fall == now ? (less ? i : worst) : now ? i : worst;
    }
    return worst;
  }

  private About about(LoadView view) {
    return new About(
        view.title() + ": " + view.load(), plate.revision(), String.join(" ", answer.cautions()));
  }

  private byte[] pages(List<LoadView> views, Paper paper) {
    LoadBlocks blocks = new LoadBlocks(answer);
    boolean compared = answer.tried().size() > 1;
    List<Page> pages =
        LoadPages.of(
            new LoadPages.Content(
                "Loads: " + plate.title() + ", revision " + plate.revision(),
                "An estimate to choose by, not an approval: break test strips and try the wheel"
                    + " off the car first. "
                    + Cautions.USE,
                blocks.cases(),
                List.of(blocks.thicknesses()),
                compared ? Optional.of(maps.thicknesses()) : Optional.empty(),
                views,
                blocks.after()),
            paper);
    return PdfWriter.write(pages, plate.title() + " - loads");
  }
}
