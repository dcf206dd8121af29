package felloe.kit;

import felloe.cutting.CutCautions;
import felloe.cutting.CutFault;
import felloe.cutting.CutFigure;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.FeedTable;
import felloe.cutting.MachineJob;
import felloe.files.OutFile;
import felloe.geometry.GeometryException;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.DxfWriter;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The files of a kit that a machine would run: the exact finish lines, and a router's program with
 * everything as usual. Both are held back while the plate fails its review. The program is there
 * only when its path passes the check; a kit without it says why.
 *
 * @param files what there is
 * @param lacks why something is missing
 */
record MachineFiles(List<OutFile> files, Optional<String> lacks) {

  static MachineFiles of(Plate plate, Verdict verdict) {
    if (verdict == Verdict.FAIL) {
      return new MachineFiles(
          List.of(),
          Optional.of("no files for machines: they are held back while the plate fails a check"));
    }
    KitNames names = new KitNames(plate.name());
    List<String> cautions = CutCautions.of(CutProcess.ROUTER, plate.stock().material());
    List<OutFile> files = new ArrayList<>();
    About lines = about(plate, "finish lines", cautions);
    files.add(new OutFile(names.dxf(), DxfWriter.write(CutDrawing.finish(plate), lines)));
    try {
      CutOrder order = CutOrder.of(CutRequest.of("router"), Path.of(""));
      FeedTable feeds = FeedTable.standard();
      double cutter = order.width(List.of(plate), feeds);
      MachineJob work =
          MachineJob.of(
              List.of(plate),
              Optional.empty(),
              one -> order.setup(one, cutter, feeds),
              order.decimals());
      About about = about(plate, "router", work.cautions());
      byte[] program = CutBench.program(List.of(plate), CutBench.HUB_AXIS, work, about, order);
      files.add(new OutFile(names.program(), program));
      return new MachineFiles(files, Optional.empty());
    } catch (CutRefused unsuited) {
      CutFault fault = unsuited.faults().get(0);
      return without(
          files,
          "the usual figures do not suit this plate ("
              + fault
                  .figure()
                  .map(CutFigure::words)
                  .orElseGet(() -> AnswerJson.withoutFolders(fault.place()).toString())
              + ": "
              + fault.wanted()
              + "); give your own with 'felloe cut --process router'");
    } catch (MachineJob.Unproved refused) {
      return without(files, refused.getMessage() + "; this is a fault in Felloe, please report it");
    } catch (GeometryException unsound) {
      return without(files, "no path could be worked out: " + unsound.getMessage());
    }
  }

  private static MachineFiles without(List<OutFile> files, String why) {
    return new MachineFiles(files, Optional.of("no router program: " + why));
  }

  private static About about(Plate plate, String what, List<String> cautions) {
    return new About(plate.title() + ", " + what, plate.revision(), String.join(" ", cautions));
  }
}
