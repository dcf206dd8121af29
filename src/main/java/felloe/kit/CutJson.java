package felloe.kit;

import felloe.geometry.Box;
import felloe.out.FindingsJson;
import felloe.out.Json;
import felloe.plate.Note;
import felloe.plate.Place;
import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import felloe.service.Study;

/** The answer about cut files as JSON. */
final class CutJson {

  private static final int DECIMALS = 6;

  private CutJson() {}

  static Json of(CutAnswer answer) {
    return Json.object()
        .with("process", answer.process())
        .with("compensated", answer.compensated())
        .with("heldBack", answer.held())
        .with("plates", Json.array(answer.checks(), CutJson::plate))
        .with("jobs", Json.array(answer.jobs(), CutJson::job));
  }

  private static Json plate(Study check) {
    return AnswerJson.plate(check.plate())
        .with("verdict", AnswerJson.word(check.verdict()))
        .with(
            "fails",
            FindingsJson.of(
                    check.findings().stream().filter(f -> f.verdict() == Verdict.FAIL).toList())
                .members()
                .get("findings"));
  }

  private static Json job(CutJob job) {
    return Json.object()
        .with("name", job.name())
        .with("title", job.title())
        .with("workZero", job.zero())
        .with("files", Json.array(job.files(), file -> Json.text(file.toString())))
        .with("steps", Json.array(job.steps(), CutJson::step))
        .with("total", Json.maybe(job.total(), CutJson::step))
        .with("leftOvers", Json.array(job.leftOvers(), CutJson::left))
        .with("wasteHoles", Json.array(job.wasteHoles(), CutJson::waste))
        .with("notes", Json.array(job.notes(), CutJson::note))
        .with("proof", Json.maybe(job.proof(), CutJson::proof))
        .with("figures", Json.array(job.figures(), CutJson::based))
        .with("layout", Json.maybe(job.layout(), CutJson::layout))
        .with("cautions", Json.array(job.cautions(), Json::text));
  }

  private static Json step(CutJob.Step step) {
    return Json.object()
        .with("title", step.title())
        .with("tool", step.tool())
        .with("speed", step.speed(), DECIMALS)
        .with("cut", step.cut(), DECIMALS)
        .with("minutes", Json.maybe(step.minutes(), m -> Json.number(m, DECIMALS)));
  }

  private static Json left(CutJob.Left left) {
    return Json.object()
        .with("number", left.number())
        .with("label", left.label())
        .with("x", left.at().x(), DECIMALS)
        .with("y", left.at().y(), DECIMALS)
        .with("reach", left.reach(), DECIMALS)
        .with("place", place(left.place()));
  }

  private static Json waste(CutJob.WasteHole hole) {
    return Json.object()
        .with("label", hole.label())
        .with("use", hole.why().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'))
        .with("x", hole.at().x(), DECIMALS)
        .with("y", hole.at().y(), DECIMALS)
        .with("diameter", hole.diameter(), DECIMALS);
  }

  private static Json note(Note note) {
    return Json.object().with("place", place(note.place())).with("text", note.text());
  }

  private static Json place(Place place) {
    return Json.object()
        .with("file", place.file())
        .with("line", place.line())
        .with("column", place.column());
  }

  private static Json proof(CutJob.Proof proof) {
    return Json.object()
        .with("worstGouge", proof.gouge(), DECIMALS)
        .with("worstRemaining", proof.remaining(), DECIMALS)
        .with("worstArc", proof.arcs(), DECIMALS)
        .with("deepest", proof.deepest(), DECIMALS)
        .with("decimals", proof.decimals());
  }

  private static Json based(SourcedFigure figure) {
    return Json.object()
        .with("name", figure.name())
        .with("value", figure.value(), DECIMALS)
        .with("unit", figure.unit())
        .with("basis", figure.basis());
  }

  private static Json layout(CutJob.Layout layout) {
    return Json.object()
        .with("width", layout.width(), DECIMALS)
        .with("height", layout.height(), DECIMALS)
        .with("used", layout.used(), DECIMALS)
        .with("yield", layout.yield(), DECIMALS)
        .with("boxesUsed", Json.maybe(layout.boxesUsed(), mm -> Json.number(mm, DECIMALS)))
        .with("boxesYield", Json.maybe(layout.boxesYield(), y -> Json.number(y, DECIMALS)))
        .with(
            "parts",
            Json.array(
                layout.parts(),
                part ->
                    Json.object()
                        .with("name", part.name())
                        .with("x", part.at().x(), DECIMALS)
                        .with("y", part.at().y(), DECIMALS)
                        .with("turn", part.turn(), DECIMALS)))
        .with("keepOut", Json.array(layout.keepOut(), CutJson::box));
  }

  private static Json box(Box box) {
    return Json.object()
        .with("x", box.minX(), DECIMALS)
        .with("y", box.minY(), DECIMALS)
        .with("width", box.width(), DECIMALS)
        .with("height", box.height(), DECIMALS);
  }
}
