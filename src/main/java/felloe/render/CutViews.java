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
        View.of(
            CutOutcome.class,
            (one, to) ->
                to.add("process", one.request().wish().process())
                    .add("compensated", one.request().wish().compensated())
                    .add("held_back", one.held())
                    .add("plates", one.studies().stream().map(Reviewed::new).toList())
                    .add("jobs", one.jobs())),
        View.of(
            Reviewed.class,
            (one, to) ->
                to.addAll(one.study().plate())
                    .add("verdict", one.study().verdict())
                    .add(
                        "fails",
                        FindingsJson.of(one.study().review().with(Verdict.FAIL))
                            .members()
                            .get("findings"))),
        View.of(
            CutJob.class,
            (job, to) ->
                to.add("name", job.name())
                    .add("title", CutMap.title(job))
                    .add("work_zero", CutMap.zero(job))
                    .add("steps", job.machine().map(m -> CutMap.lines(job, m)).orElse(List.of()))
                    .add("total", job.machine().map(m -> CutMap.total(job, m)))
                    .add("left_overs", CutViews.left(job))
                    .add("waste_holes", job.saw().map(JigsawPlan::holes).orElse(List.of()))
                    .add("notes", job.work().notes())
                    .add("proof", job.machine())
                    .add("figures", job.figures())
                    .add("layout", job.layout())
                    .add("cautions", job.work().cautions())),
        View.of(
            MachineJob.class,
            (job, to) ->
                to.add("worst_gouge", job.proof().worstGouge())
                    .add("worst_remaining", job.proof().worstRemaining())
                    .add("worst_arc", job.proof().worstArc())
                    .add("deepest", job.proof().deepest())
                    .add("decimals", job.decimals())),
        View.of(
            JigsawPlan.WasteHole.class,
            (hole, to) ->
                to.add("label", hole.feature().label())
                    .add("use", hole.why())
                    .add("x", hole.at().x())
                    .add("y", hole.at().y())
                    .add("diameter", hole.diameter())),
        View.of(
            SheetLayout.class,
            (sheet, to) ->
                to.add("width", sheet.room().sheet().width())
                    .add("height", sheet.room().sheet().height())
                    .add("used", sheet.used())
                    .add("yield", sheet.yield())
                    .add("boxes_used", sheet.boxesUsed())
                    .add("boxes_yield", sheet.boxesYield())
                    .add("parts", sheet.parts())
                    .add("keep_out", sheet.room().keepOut())),
        View.of(
            SheetLayout.Lying.class,
            (part, to) ->
                to.add("name", part.name())
                    .add("x", part.at().x())
                    .add("y", part.at().y())
                    .add("turn", part.turn())),
        View.of(
            Left.class,
            (left, to) ->
                to.add("number", left.number())
                    .add("label", left.of().feature().label())
                    .add("x", left.of().at().x())
                    .add("y", left.of().at().y())
                    .add("reach", left.of().reach())
                    .add("place", left.of().feature().place())),
        View.of(
            Box.class,
            (box, to) ->
                to.add("x", box.minX())
                    .add("y", box.minY())
                    .add("width", box.width())
                    .add("height", box.height())));
  }

  private record Reviewed(Study study) {}

  /** What is left for the file, with its number in the picture. */
  private record Left(int number, LeftOver of) {}

  private static List<Left> left(CutJob job) {
    List<LeftOver> all = job.leftOvers();
    return IntStream.range(0, all.size()).mapToObj(i -> new Left(i + 1, all.get(i))).toList();
  }
}
