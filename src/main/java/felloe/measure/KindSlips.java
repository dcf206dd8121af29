package felloe.measure;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings on a drilled plate that were taken over something else than they say. The drawing tells
 * about what each should read, so that one over inside which reads like one over outside shows.
 * They are refused only where all that look so, put right, bring the holes to where the drawing has
 * them: then it is the word that was wrong, not the drill.
 */
final class KindSlips {

  private static final List<ReadingKind> KINDS =
      List.of(ReadingKind.OUTSIDE, ReadingKind.INSIDE, ReadingKind.CENTRES);

  /** How near a reading must come to what it looks like, as a part of the holes' size. */
  private static final double NEAR = 0.2;

  private record Slip(Reading reading, ReadingKind over) {}

  private final Measured measured;
  private final List<Hole> meant;

  KindSlips(Measured measured, List<Hole> meant) {
    this.measured = measured;
    this.meant = meant;
  }

  /**
   * Refuses them.
   *
   * @throws BadInput naming each at its line
   */
  void refuse(MeasurePractice practice, double inPlace) {
    List<Slip> slips = slips();
    if (slips.isEmpty() || !right(slips, practice, inPlace)) {
      return;
    }
    List<Problem> problems = new ArrayList<>();
    for (Slip slip : slips) {
      Reading r = slip.reading();
      problems.add(
          new Problem(
              r.place(),
              measured.holes(r),
              Numbers.brief(r.reads(), 3) + " mm",
              "over "
                  + r.over().words()
                  + " would put the centres "
                  + mm(r.reads() - r.over().halves() * size(r))
                  + " apart, and the plate has them "
                  + mm(centres(r))
                  + "; it reads like over "
                  + slip.over().words(),
              "measure it again, and write what it was taken over"));
    }
    throw new BadInput(problems);
  }

  private boolean right(List<Slip> slips, MeasurePractice practice, double inPlace) {
    List<Reading> readings = new ArrayList<>(measured.readings());
    for (Slip slip : slips) {
      readings.set(readings.indexOf(slip.reading()), slip.reading().over(slip.over()));
    }
    Measured put =
        new Measured(
            measured.file(),
            measured.labels(),
            measured.on(),
            measured.size(),
            readings,
            measured.waiting(),
            measured.plate(),
            measured.revision(),
            measured.place());
    return within(put, practice, inPlace);
  }

  /** Whether the holes come to lie about where they were meant. */
  private boolean within(Measured one, MeasurePractice practice, double inPlace) {
    List<Point> places = meant.stream().map(Hole::centre).toList();
    SurveyResult survey = Survey.about(places, one, practice);
    if (!survey.told()) {
      return false;
    }
    List<Point> found = survey.holes().stream().map(FoundHole::at).toList();
    return Alignment.of(found, places, true).worst() < inPlace;
  }

  private List<Slip> slips() {
    List<Slip> slips = new ArrayList<>();
    for (Reading reading : measured.readings()) {
      if (!reading.isPair()) {
        continue;
      }
      double size = size(reading);
      double off = reading.reads() - centres(reading) - reading.over().halves() * size;
      for (ReadingKind over : KINDS) {
        double shift = (over.halves() - reading.over().halves()) * size;
        if (over != reading.over() && Math.abs(off - shift) < NEAR * size) {
          slips.add(new Slip(reading, over));
        }
      }
    }
    return slips;
  }

  private double centres(Reading r) {
    return meant.get(r.from()).centre().distance(meant.get(r.to()).centre());
  }

  private double size(Reading r) {
    return (size(r.from()) + size(r.to())) / 2;
  }

  /** As measured by itself, else the common one, else as drawn. */
  private double size(int hole) {
    return measured.readings().stream()
        .filter(r -> r.over() == ReadingKind.DIAMETER && r.from() == hole)
        .mapToDouble(Reading::reads)
        .findFirst()
        .orElseGet(() -> measured.size().map(Reading::reads).orElse(meant.get(hole).diameter()));
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }
}
