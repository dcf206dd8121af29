package felloe.kit;

import felloe.geometry.Point;
import felloe.kit.MeasureAnswer.CandidateRow;
import felloe.kit.MeasureAnswer.HoleRow;
import felloe.kit.MeasureAnswer.NextRow;
import felloe.kit.MeasureAnswer.ReadingRow;
import felloe.kit.MeasureAnswer.Ring;
import felloe.kit.MeasureAnswer.SuspectRow;
import felloe.out.Json;
import java.util.List;
import java.util.Optional;

/** What calliper readings tell, as JSON. Members are spelt as the keys of a measured file are. */
final class MeasureJson {

  private static final int DECIMALS = 6;

  private MeasureJson() {}

  static Json.Members of(MeasureAnswer answer) {
    Optional<Ring> ring = answer.pattern();
    return Json.object()
        .with("file", answer.file())
        .with("on", answer.on())
        .with("count", answer.count())
        .with("pcd", maybe(ring.map(Ring::pcd)))
        .with("pcd_95", Json.maybe(ring, r -> pair(r.low(), r.high())))
        .with("pcd_error", maybe(ring.map(Ring::error)))
        .with("centre", Json.maybe(ring, r -> point(r.centre())))
        .with("start_angle", maybe(ring.map(Ring::startAngle)))
        .with("size", maybe(ring.flatMap(Ring::size)))
        .with("size_error", maybe(ring.filter(r -> r.size().isPresent()).map(Ring::sizeError)))
        .with("spacing", Json.maybe(ring.map(Ring::spacing), Json::text))
        .with("unevenness", maybe(ring.map(Ring::unevenness)))
        .with("even_pcd", maybe(ring.flatMap(Ring::evenPcd).map(e -> e[0])))
        .with("even_pcd_95", Json.maybe(ring.flatMap(Ring::evenPcd), e -> pair(e[1], e[2])))
        .with("reads_as", Json.array(ring.map(Ring::readsAs).orElse(List.of()), Json::text))
        .with("clockwise", answer.clockwise())
        .with("spare_readings", answer.spare())
        .with("scatter", answer.scatter(), DECIMALS)
        .with("holes", Json.array(answer.holes(), MeasureJson::hole))
        .with("suspect_readings", Json.array(answer.suspects(), MeasureJson::suspect))
        .with("readings", Json.array(answer.readings(), MeasureJson::reading))
        .with("candidates", Json.array(answer.candidates(), MeasureJson::candidate))
        .with("next", Json.array(answer.next(), MeasureJson::next))
        .with("waiting", answer.waiting())
        .with("cautions", Json.array(answer.cautions(), Json::text));
  }

  private static Json maybe(Optional<Double> value) {
    return Json.maybe(value, v -> Json.number(v, DECIMALS));
  }

  private static Json pair(double low, double high) {
    return Json.array(List.of(low, high), v -> Json.number(v, DECIMALS));
  }

  private static Json point(Point p) {
    return pair(p.x(), p.y());
  }

  private static Json hole(HoleRow hole) {
    return Json.object()
        .with("label", hole.label())
        .with("x", hole.at().x(), DECIMALS)
        .with("y", hole.at().y(), DECIMALS)
        .with("x_error", hole.errorX(), DECIMALS)
        .with("y_error", hole.errorY(), DECIMALS)
        .with("diameter", maybe(hole.size()))
        .with("diameter_error", maybe(hole.size().map(s -> hole.sizeError())));
  }

  static Json suspect(SuspectRow s) {
    return Json.object()
        .with("holes", s.holes())
        .with("over", s.over())
        .with("reads", s.reads(), DECIMALS)
        .with("off", s.off(), DECIMALS)
        .with("w", s.w(), DECIMALS)
        .with("alone", s.alone())
        .with("if_even", s.ifEven())
        .with("hint", s.hint())
        .with("line", s.place().line());
  }

  private static Json reading(ReadingRow r) {
    return Json.object()
        .with("holes", r.holes())
        .with("over", r.over())
        .with("reads", r.reads(), DECIMALS)
        .with("plus_minus", r.plusMinus(), DECIMALS)
        .with("residual", r.residual(), DECIMALS)
        .with("redundancy", r.redundancy(), DECIMALS)
        .with("w", r.w(), DECIMALS)
        .with("line", r.place().line());
  }

  private static Json candidate(CandidateRow c) {
    return Json.object()
        .with("hub", c.hub())
        .with("title", c.title())
        .with("off", c.off(), DECIMALS)
        .with("pcd_off", c.pcdOff(), DECIMALS)
        .with("size_suits", Json.maybe(c.sizeSuits(), v -> new Json.Truth(v)))
        .with("clearance", maybe(c.clearance()))
        .with("worst_clearance", maybe(c.worst()))
        .with("enters", c.enters())
        .with("cannot_tell_from", Json.array(c.like(), Json::text));
  }

  static Json next(NextRow n) {
    return Json.object().with("from", n.from()).with("to", n.to()).with("over", n.over());
  }
}
