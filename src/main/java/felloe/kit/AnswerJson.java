package felloe.kit;

import felloe.kit.HubAnswer.Screw;
import felloe.kit.HubCard.CalliperTable;
import felloe.out.Json;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.List;
import java.util.Locale;

/** Answers as JSON. Millimetres and degrees; figures have at most six decimals. */
final class AnswerJson {

  private static final int DECIMALS = 6;

  private AnswerJson() {}

  /** Name, title and revision, the same in every answer about a plate. */
  static Json.Members plate(Plate plate) {
    return Json.object()
        .with("name", plate.name())
        .with("title", plate.title())
        .with("revision", plate.revision());
  }

  static Json drill(DrillAnswer answer) {
    return plate(answer.plate())
        .with("holes", Json.array(answer.holes(), AnswerJson::hole))
        .with("order", DrillJson.order(answer.order()))
        .with("joints", JointJson.of(answer.joints()))
        .with("hubLoad", JointJson.load(answer.joints()))
        .with("jointJudgement", JointJson.judged(answer.joints().judgement()))
        .with("jointNotes", Json.array(answer.joints().notes(), Json::text))
        .with("jointCautions", Json.array(answer.joints().cautions(), Json::text))
        .with("stop", Json.maybe(answer.stop(), Json::text))
        .with("cautions", Json.array(answer.cautions(), Json::text));
  }

  private static Json hole(DrillAnswer.Row row) {
    return Json.object()
        .with("label", row.label())
        .with("role", row.role())
        .with("x", row.at().x(), DECIMALS)
        .with("y", row.at().y(), DECIMALS)
        .with("radius", row.radius(), DECIMALS)
        .with("angle", row.angle(), DECIMALS)
        .with("diameter", row.diameter(), DECIMALS);
  }

  private static Json calliper(CalliperTable table) {
    return Json.object()
        .with("on", table.on())
        .with("count", table.count())
        .with("pitchDiameter", table.pitchDiameter(), DECIMALS)
        .with("diameter", table.diameter(), DECIMALS)
        .with(
            "readings",
            Json.array(
                table.readings(),
                reading ->
                    Json.object()
                        .with("pair", reading.pair())
                        .with("centres", reading.centres(), DECIMALS)
                        .with("outside", reading.outside(), DECIMALS)
                        .with("inside", reading.inside(), DECIMALS)))
        .with("warning", table.warning());
  }

  /** The hub fit; figures that there are none of are null. */
  static Json.Members fit(HubAnswer fit) {
    return Json.object()
        .with("hub", fit.hub().name())
        .with("title", fit.hub().title())
        .with("drilling", fit.drilling())
        .with("verdict", word(fit.verdict()))
        .with("enters", fit.enters())
        .with("clearance", Json.maybe(fit.clearance(), AnswerJson::number))
        .with("worstClearance", Json.maybe(fit.worst(), AnswerJson::number))
        .with("turn", Json.maybe(fit.turn(), AnswerJson::number))
        .with("turnStep", fit.step(), DECIMALS)
        .with("offCentre", Json.maybe(fit.offCentre(), AnswerJson::number))
        .with("allPairingsTried", fit.complete())
        .with("screws", Json.array(fit.screws(), AnswerJson::screw))
        .with("spareHoles", Json.array(fit.spare(), Json::text))
        .with(
            "pilot",
            Json.maybe(
                fit.pilot(),
                pilot ->
                    Json.object()
                        .with("diameter", pilot.diameter(), DECIMALS)
                        .with("opening", Json.maybe(pilot.opening(), Json::text))
                        .with("clearance", Json.maybe(pilot.clearance(), AnswerJson::number))
                        .with("enters", pilot.enters())))
        .with("calliper", Json.array(fit.calliper(), AnswerJson::calliper))
        .with(
            "mismatches",
            Json.array(
                fit.mismatches(),
                off ->
                    Json.object()
                        .with("figure", off.figure())
                        .with("subject", off.subject())
                        .with("plate", off.plate(), DECIMALS)
                        .with("hub", off.hub(), DECIMALS)
                        .with("unit", off.unit())))
        .with(
            "cures",
            Json.array(
                fit.cures(),
                cure -> Json.object().with("words", cure.words()).with("works", cure.works())));
  }

  private static Json screw(Screw screw) {
    return Json.object()
        .with("screw", screw.screw())
        .with("thread", screw.thread())
        .with("x", screw.at().x(), DECIMALS)
        .with("y", screw.at().y(), DECIMALS)
        .with("hole", screw.hole())
        .with("diameter", screw.diameter(), DECIMALS)
        .with("distance", screw.distance(), DECIMALS)
        .with("clearance", screw.clearance(), DECIMALS)
        .with("worstClearance", screw.worst(), DECIMALS)
        .with("series", screw.series());
  }

  private static Json number(double value) {
    return Json.number(value, DECIMALS);
  }

  static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** The same findings with the folders taken off the shape file's name. */
  static List<Finding> withoutFolders(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                new Finding(
                    f.rule(),
                    f.why(),
                    f.verdict(),
                    f.subject(),
                    f.figure(),
                    f.limit(),
                    f.at(),
                    withoutFolders(f.place()),
                    f.advice()))
        .toList();
  }

  static Place withoutFolders(Place place) {
    String file = place.file();
    int cut = place.isOption() ? 0 : Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1;
    return new Place(file.substring(cut), place.line(), place.column());
  }
}
