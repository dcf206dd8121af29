package felloe.kit;

import felloe.cutting.CutCautions;
import felloe.cutting.CutProcess;
import felloe.cutting.DialectCatalogue;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.DxfWriter;
import felloe.out.HoleCsv;
import felloe.plate.Plate;
import felloe.render.KitRecord;
import felloe.render.ResultJson;
import felloe.report.CardCalls;
import felloe.report.CardSheet;
import felloe.service.CardOutcome;
import felloe.service.DrillOutcome;
import felloe.service.GripsOutcome;
import felloe.service.KitOutcome;
import felloe.service.Study;
import felloe.template.PageSet;
import felloe.template.TemplateOptions;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;

/** Makes whole kits; pictures are drawn by a second pair of hands while pages are laid out. */
public final class KitFiles implements AutoCloseable {

  private final Easel easel = new Easel();

  /**
   * A kit in memory.
   *
   * @param outcome what was made
   * @param files all of its files; the report last, since it lists the others
   */
  public record Made(KitOutcome outcome, List<OutFile> files) {

    /** With its files, in the plate's folder. */
    public Transaction into(Transaction all) {
      Plate plate = outcome.study().plate();
      return all.folder(plate.name(), KitNames.set("make", plate, files));
    }

    /** The same for programs. */
    public Object json(Path out) {
      Map<String, Object> more = new LinkedHashMap<>();
      more.put("folder", out.resolve(outcome.study().plate().name()));
      more.put("files", files.stream().map(FileLine::of).toList());
      return ResultJson.with(outcome, more);
    }
  }

  /** A file as programs are told of it; the digest has 64 hexadecimal digits. */
  private record FileLine(String name, int bytes, String sha256) {
    static FileLine of(OutFile file) {
      return new FileLine(file.name(), file.bytes().length, file.sha256());
    }
  }

  /**
   * Makes the kit of a plate.
   *
   * @param calls what its job card tells to type
   * @throws felloe.plate.BadInput when its templates cannot be printed so
   */
  public Made of(Study study, CardCalls calls, TemplateOptions options) {
    Plate plate = study.plate();
    Future<OutFile> drawing = easel.draw(() -> TemplateFiles.drawing(study, options));
    Future<OutFile> picture = easel.draw(() -> PictureFiles.of(plate, study.findings()));
    Future<List<OutFile>> grips = easel.draw(() -> GripFiles.made(GripsOutcome.of(study), options));
    Future<Picture> finished = easel.draw(() -> GripFiles.finished(study));
    DrillOutcome drill = DrillOutcome.of(study);
    Future<CardOutcome.Stocked> stock =
        CompletableFuture.supplyAsync(() -> CardOutcome.Stocked.of(study));
    Future<PageSet> drilling =
        CompletableFuture.supplyAsync(() -> CardFiles.drilling(drill, options));
    KitOutcome outcome = KitOutcome.of(study, options);
    OutFile tiled = TemplateFiles.tiled(outcome.templates());
    OutFile plot = TemplateFiles.plot(outcome.templates());
    OutFile holes = new OutFile(plate.name() + "-holes.csv", HoleCsv.write(plate));
    List<OutFile> files =
        new ArrayList<>(List.of(Easel.done(drawing), tiled, plot, holes, Easel.done(picture)));
    CardOutcome job = CardOutcome.unloaded(drill, Easel.done(stock), outcome.templates().tiled());
    CardSheet card =
        CardFiles.sheet(job, Easel.done(drilling), calls, options.paper(), Easel.done(finished));
    files.addAll(CardFiles.pages(card, card.report()));
    files.addAll(machine(outcome));
    files.addAll(Easel.done(grips));
    Map<String, Object> others = Map.of("files", files.stream().map(FileLine::of).toList());
    String report = ResultJson.text(new KitRecord(Kit.version(), outcome), others);
    files.add(new OutFile(plate.name() + "-report.json", report.getBytes(StandardCharsets.UTF_8)));
    return new Made(outcome, List.copyOf(files));
  }

  /** The exact finish lines, and a router's program where there is one; none held back. */
  private static List<OutFile> machine(KitOutcome outcome) {
    Plate plate = outcome.study().plate();
    List<OutFile> files = new ArrayList<>();
    if (!outcome.held()) {
      List<String> cautions = CutCautions.of(CutProcess.ROUTER, plate.stock().material());
      About about =
          new About(plate.title() + ", finish lines", plate.revision(), String.join(" ", cautions));
      byte[] lines = DxfWriter.write(CutDrawing.finish(plate), about);
      files.add(new OutFile(plate.name() + ".dxf", lines));
    }
    outcome
        .router()
        .map(job -> CutFiles.program(job, DialectCatalogue.standard(), false))
        .ifPresent(program -> files.add(new OutFile(plate.name() + ".nc", program)));
    return files;
  }

  @Override
  public void close() {
    easel.close();
  }
}
