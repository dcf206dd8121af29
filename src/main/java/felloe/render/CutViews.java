package felloe.render;

import felloe.cutting.CutJob;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.cutting.SheetLayout;
import felloe.geometry.Box;
import felloe.out.FindingsJson;
import felloe.plate.Verdict;
import felloe.report.CutMap;
import felloe.service.CutOutcome;
import felloe.service.Study;
import java.util.List;
import java.util.stream.IntStream;

/** Cuts as JSON: mm, minutes. */
final class CutViews {

  private CutViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(CutOutcome.class)
            .with("process", one -> one.request().wish().process())
            .with("compensated", one -> one.request().wish().compensated())
            .with("held_back", CutOutcome::held)
            .with("plates", one -> one.studies().stream().map(Reviewed::new).toList())
            .with("jobs", CutOutcome::jobs),
        View.of(Reviewed.class)
            .with(one -> one.study().plate())
            .with("verdict", one -> one.study().verdict())
            .with(
                "fails",
                one ->
                    FindingsJson.of(one.study().review().with(Verdict.FAIL))
                        .members()
                        .get("findings")),
        View.of(CutJob.class)
            .with("name", CutJob::name)
            .with("title", CutMap::title)
            .with("work_zero", CutMap::zero)
            .with("steps", job -> job.machine().map(m -> CutMap.lines(job, m)).orElse(List.of()))
            .with("total", job -> job.machine().map(m -> CutMap.total(job, m)))
            .with("left_overs", CutViews::left)
            .with("waste_holes", job -> job.saw().map(JigsawPlan::holes).orElse(List.of()))
            .with("notes", job -> job.work().notes())
            .with("proof", CutJob::machine)
            .with("figures", CutJob::figures)
            .with("layout", CutJob::layout)
            .with("cautions", job -> job.work().cautions()),
        View.of(MachineJob.class)
            .with("worst_gouge", job -> job.proof().worstGouge())
            .with("worst_remaining", job -> job.proof().worstRemaining())
            .with("worst_arc", job -> job.proof().worstArc())
            .with("deepest", job -> job.proof().deepest())
            .with("decimals", MachineJob::decimals),
        View.of(JigsawPlan.WasteHole.class)
            .with("label", hole -> hole.feature().label())
            .with("use", JigsawPlan.WasteHole::why)
            .with("x", hole -> hole.at().x())
            .with("y", hole -> hole.at().y())
            .with("diameter", JigsawPlan.WasteHole::diameter),
        View.of(SheetLayout.class)
            .with("width", sheet -> sheet.room().sheet().width())
            .with("height", sheet -> sheet.room().sheet().height())
            .with("used", SheetLayout::used)
            .with("yield", SheetLayout::yield)
            .with("boxes_used", SheetLayout::boxesUsed)
            .with("boxes_yield", SheetLayout::boxesYield)
            .with("parts", SheetLayout::parts)
            .with("keep_out", sheet -> sheet.room().keepOut()),
        View.of(SheetLayout.Lying.class)
            .with("name", SheetLayout.Lying::name)
            .with("x", part -> part.at().x())
            .with("y", part -> part.at().y())
            .with("turn", SheetLayout.Lying::turn),
        View.of(Left.class)
            .with("number", Left::number)
            .with("label", left -> left.of().feature().label())
            .with("x", left -> left.of().at().x())
            .with("y", left -> left.of().at().y())
            .with("reach", left -> left.of().reach())
            .with("place", left -> left.of().feature().place()),
        View.of(Box.class)
            .with("x", Box::minX)
            .with("y", Box::minY)
            .with("width", Box::width)
            .with("height", Box::height));
  }

  private record Reviewed(Study study) {}

  /** What is left for the file, with its number in the picture. */
  private record Left(int number, LeftOver of) {}

  private static List<Left> left(CutJob job) {
    List<LeftOver> all = job.leftOvers();
    return IntStream.range(0, all.size()).mapToObj(i -> new Left(i + 1, all.get(i))).toList();
  }
}
