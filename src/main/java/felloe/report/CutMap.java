package felloe.report;

import felloe.cutting.CutJob;
import felloe.cutting.CutLine;
import felloe.cutting.CutTab;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.cutting.SheetLayout;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.drawing.CutView;
import felloe.geometry.Contour;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is cut, as its picture shows it. */
public final class CutMap {

  private CutMap() {}

  /** The picture's view; bare finish lines have none. */
  public static Optional<CutView> of(CutJob job) {
    return job.machine()
        .map(machine -> machine(job, machine))
        .or(() -> job.saw().map(plan -> saw(job, plan)));
  }

  private static CutView machine(CutJob job, MachineJob machine) {
    List<CutView.LeftOver> left = new ArrayList<>();
    for (LeftOver one : machine.leftOvers()) {
      left.add(
          new CutView.LeftOver(
              left.size() + 1, one.feature().label(), one.region(), one.at(), one.reach()));
    }
    List<Segment> leads = machine.plans().stream().flatMap(p -> p.leads().stream()).toList();
    String tool = machine.steps().get(machine.steps().size() - 1).operation().tool().name();
    return view(job, machine.lines(), leads, "path of the middle of the " + tool, List.of(), left);
  }

  private static CutView saw(CutJob job, JigsawPlan plan) {
    String words =
        Phrase.of(
            "rough line, {} off; saw outside it",
            Quantity.mm(job.shapes().get(0).making().roughAllowance()));
    return view(job, plan.lines(), List.of(), words, plan.circles(), List.of());
  }

  private static CutView view(
      CutJob job,
      List<CutLine> lines,
      List<Segment> leads,
      String words,
      List<Contour> wasteHoles,
      List<CutView.LeftOver> left) {
    Optional<SheetLayout> layout = job.layout();
    return new CutView(
        CutReport.about(job),
        CutReport.zero(job),
        layout.map(sheet -> sheet.room().all()),
        layout.map(sheet -> sheet.room().keepOut()).orElse(List.of()),
        layout.map(SheetLayout::held).orElse(false),
        job.plates().stream().map(p -> new CutView.Part(p.name(), p.region())).toList(),
        lines.stream().map(CutLine::path).toList(),
        leads,
        words,
        wasteHoles,
        job.machine().stream().flatMap(m -> m.tabs().stream()).map(CutTab::at).toList(),
        left);
  }
}
