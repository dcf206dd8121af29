package felloe.hub;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The distances of an evenly spaced ring that a calliper can be put on. The chord over k steps of n
 * is PCD sin(pi k/n), by plane geometry.
 *
 * @param count number of holes or screws
 * @param pitchDiameter mm
 * @param diameter of each hole or screw, mm
 * @param readings from neighbour to the widest pair; empty for a single hole
 * @param acrossIsPitchDiameter true when two stand opposite, so that the widest pair shows the
 *     pitch diameter. With an odd count none do: the widest pair shows less, and who takes it for
 *     the pitch diameter drills too small a circle.
 */
public record CalliperFigures(
    int count,
    double pitchDiameter,
    double diameter,
    List<CalliperReading> readings,
    boolean acrossIsPitchDiameter) {

  public CalliperFigures {
    readings = List.copyOf(readings);
  }

  /** The figures of a ring; lengths in mm. */
  public static CalliperFigures of(int count, double pitchDiameter, double diameter) {
    List<CalliperReading> readings = new ArrayList<>();
    for (int k = 1; k <= count / 2; k++) {
      double chord = chord(pitchDiameter, count, k);
      readings.add(
          new CalliperReading(k, name(k, count), chord, chord + diameter, chord - diameter));
    }
    return new CalliperFigures(count, pitchDiameter, diameter, readings, count % 2 == 0);
  }

  /** Distance of two centres that lie {@code step} holes apart on a ring of {@code count}, mm. */
  public static double chord(double pitchDiameter, int count, int step) {
    return Numbers.finite("pitchDiameter", pitchDiameter) * Math.sin(Math.PI * step / count);
  }

  private static String name(int step, int count) {
    if (2 * step == count) {
      return "across";
    }
    if (step == 1) {
      return "neighbour";
    }
    if (step == count / 2) {
      return "widest";
    }
    return step == 2 ? "skip one" : "skip " + (step - 1);
  }

  /** A warning for an odd count, in one sentence; empty for an even one. */
  public String warning() {
    if (acrossIsPitchDiameter || readings.isEmpty()) {
      return "";
    }
    CalliperReading widest = readings.get(readings.size() - 1);
    return "With "
        + count
        + " holes none stand opposite: the widest pair is "
        + Numbers.fixed(widest.centres(), 2)
        + " mm, not the pitch circle diameter of "
        + Numbers.brief(pitchDiameter, 3)
        + " mm.";
  }
}
