package felloe.measure;

import felloe.plate.Basis;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;

/**
 * Figures that measuring needs and that no drawing states, from the resource {@code
 * measure-practice.yaml}.
 *
 * @param pair plus and minus of a calliper reading, mm, where the file tells none
 * @param edge the same of a distance from an edge, mm
 * @param drillStep step of the drill sizes that are to be had, mm
 * @param screwUnder how far a real screw may be under its nominal diameter, mm
 * @param threadOver how far a threaded hole may be over its smallest size, as a part of the pitch
 * @param even holes that keep within this of an even ring count as even, mm
 * @param oversize how far a hole may be over its drawn size before it counts as another drill's, mm
 * @param basis where the figures come from
 */
public record MeasurePractice(
    double pair,
    double edge,
    double drillStep,
    double screwUnder,
    double threadOver,
    double even,
    double oversize,
    Basis basis) {

  private static final String RESOURCE = "/felloe/measure-practice.yaml";

  /** The program's own figures. Read anew at each call; keep it. */
  public static MeasurePractice standard() {
    Problems problems = new Problems();
    Fields top = BuiltIn.tree(RESOURCE).fields(problems);
    Fields plusMinus = top.group("plus-minus");
    double pair = plusMinus.length("calliper").positive().required();
    double edge = plusMinus.length("edge").positive().required();
    double step = top.length("drill-step").positive().required();
    double under = top.length("screw-under").notNegative().required();
    double over = top.number("thread-over").notNegative().required();
    double even = top.length("even").positive().required();
    double oversize = top.length("oversize").positive().required();
    String basis = top.text("basis").required();
    top.done();
    problems.throwIfAny();
    return new MeasurePractice(
        pair, edge, step, under, over, even, oversize, Basis.of(basis).orElseThrow());
  }
}
