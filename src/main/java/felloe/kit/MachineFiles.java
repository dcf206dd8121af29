package felloe.kit;

import felloe.cutting.CutCautions;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.DialectCatalogue;
import felloe.cutting.MachineJob;
import felloe.files.OutFile;
import felloe.geometry.GeometryException;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.DxfWriter;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.report.CutReport;
import felloe.service.PlateCutting;
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
    About about =
        new About(plate.title() + ", finish lines", plate.revision(), String.join(" ", cautions));
    List<OutFile> files = new ArrayList<>();
    files.add(new OutFile(names.dxf(), DxfWriter.write(CutDrawing.finish(plate), about)));
    try {
      byte[] program =
          CutFiles.program(PlateCutting.usual(plate), DialectCatalogue.standard(), false);
      files.add(new OutFile(names.program(), program));
      return new MachineFiles(files, Optional.empty());
    } catch (CutRefused | MachineJob.Unproved | GeometryException refused) {
      return new MachineFiles(files, Optional.of("no router program: " + CutReport.lacks(refused)));
    }
  }
}
