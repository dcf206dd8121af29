package felloe.kit;

import felloe.drawing.Cautions;
import felloe.geometry.Point;
import felloe.hub.HubSpec;
import felloe.measure.Candidate;
import felloe.measure.Candidates;
import felloe.measure.CheckedReading;
import felloe.measure.FoundHole;
import felloe.measure.Measured;
import felloe.measure.Pattern;
import felloe.measure.ReadingKind;
import felloe.measure.Survey;
import felloe.measure.SurveyResult;
import felloe.measure.Suspect;
import felloe.out.JsonWriter;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What calliper readings tell of a hub, for showing. Lengths in mm, angles in degrees.
 *
 * @param file what was read
 * @param on what the jaws touched, in words
 * @param count number of holes
 * @param pattern the circle; empty when the readings do not tell it
 * @param holes each with its standard errors; empty when the readings do not tell them
 * @param spare how many readings there are beyond those that are needed
 * @param scatter by which factor the readings differ more than their plus and minus allows; 1 when
 *     they do not
 * @param clockwise whether the edges show the holes to be numbered clockwise
 * @param suspects readings that look like slips
 * @param readings all others
 * @param candidates known hubs, the likeliest first
 * @param next readings to take next, the most useful first
 * @param waiting how many readings the file asks for that have not been taken
 * @param refusals why the readings tell no circle; empty when they do
 * @param cautions sentences that go with it
 */
public record MeasureAnswer(
    String file,
    String on,
    int count,
    Optional<Ring> pattern,
    List<HoleRow> holes,
    int spare,
    double scatter,
    boolean clockwise,
    List<SuspectRow> suspects,
    List<ReadingRow> readings,
    List<CandidateRow> candidates,
    List<NextRow> next,
    int waiting,
    List<Problem> refusals,
    List<String> cautions) {

  private static final String FIRST =
      "A hub's own data sheet comes first. Try the pattern in card or scrap on the hub before you"
          + " drill a plate.";

  /** Copies the lists. */
  public MeasureAnswer {
    holes = List.copyOf(holes);
    suspects = List.copyOf(suspects);
    readings = List.copyOf(readings);
    candidates = List.copyOf(candidates);
    next = List.copyOf(next);
    refusals = List.copyOf(refusals);
    cautions = List.copyOf(cautions);
  }

  /**
   * The circle; bounds hold in 95 of 100 cases.
   *
   * @param pcd pitch circle diameter
   * @param low lower bound
   * @param high upper bound
   * @param error standard error
   * @param centre of the circle
   * @param startAngle direction of the first hole
   * @param size of the holes or screws, when it is known and all are alike
   * @param sizeError standard error of it
   * @param spacing {@code even}, {@code uneven} or {@code taken as even}
   * @param assumed whether an even ring was taken for granted
   * @param unevenness how far a hole is off the nearest even ring, at most
   * @param evenPcd the diameter with bounds if the holes do stand evenly
   * @param readsAs usual figures within the bounds
   */
  public record Ring(
      double pcd,
      double low,
      double high,
      double error,
      Point centre,
      double startAngle,
      Optional<Double> size,
      double sizeError,
      String spacing,
      boolean assumed,
      double unevenness,
      Optional<double[]> evenPcd,
      List<String> readsAs) {
    static Ring of(Pattern p) {
      return new Ring(
          p.pcd(),
          p.pcdLow(),
          p.pcdHigh(),
          p.pcdError(),
          p.centre(),
          Math.toDegrees(p.startAngle()),
          p.size(),
          p.sizeError(),
          p.spacing().words(),
          p.spacing() == Pattern.Spacing.ASSUMED,
          p.unevenness(),
          p.evenPcd().map(e -> new double[] {e.value(), e.low(), e.high()}),
          p.readsAs());
    }
  }

  /**
   * A hole.
   *
   * @param label its label
   * @param at its centre
   * @param errorX standard error of x
   * @param errorY standard error of y
   * @param size its diameter, when known
   * @param sizeError standard error of that
   */
  public record HoleRow(
      String label,
      Point at,
      double errorX,
      double errorY,
      Optional<Double> size,
      double sizeError) {
    static HoleRow of(FoundHole hole) {
      return new HoleRow(
          hole.label(), hole.at(), hole.errorX(), hole.errorY(), hole.size(), hole.sizeError());
    }
  }

  /**
   * A reading and how it agrees with the others.
   *
   * @param holes such as {@code 1 to 4}
   * @param over such as {@code outside}
   * @param reads what was read
   * @param plusMinus as told
   * @param residual what was read less what the holes as found would read
   * @param redundancy how far the others check it, 0 to 1
   * @param w standardised residual
   * @param place where it was written
   */
  public record ReadingRow(
      String holes,
      String over,
      double reads,
      double plusMinus,
      double residual,
      double redundancy,
      double w,
      Place place) {}

  /**
   * A reading that looks like a slip.
   *
   * @param holes such as {@code 1 to 4}
   * @param over such as {@code outside}
   * @param reads what was read
   * @param off what was read less what the others say
   * @param w standardised residual
   * @param alone whether it alone can be the slip
   * @param ifEven whether it is one only if the holes stand evenly
   * @param hint what it looks like; may be empty
   * @param place where it was written
   */
  public record SuspectRow(
      String holes,
      String over,
      double reads,
      double off,
      double w,
      boolean alone,
      boolean ifEven,
      String hint,
      Place place) {}

  /**
   * A known hub.
   *
   * @param hub its name
   * @param title in words
   * @param off how far the worst hole is off
   * @param pcdOff measured diameter less the hub's
   * @param sizeSuits whether the size suits its screws; empty when no size is known
   * @param clearance room all round of the tightest screw; empty when no size is known
   * @param worst the same when all is at the far end of what it may be
   * @param enters whether all screws enter
   * @param like others that the readings cannot tell from it
   */
  public record CandidateRow(
      String hub,
      String title,
      double off,
      double pcdOff,
      Optional<Boolean> sizeSuits,
      Optional<Double> clearance,
      Optional<Double> worst,
      boolean enters,
      List<String> like) {
    static CandidateRow of(Candidate c) {
      return new CandidateRow(
          c.hub().name(),
          c.hub().title(),
          c.off(),
          c.pcdOff(),
          c.sizeSuits(),
          c.clearance(),
          c.worst(),
          c.enters(),
          c.like());
    }
  }

  /**
   * A reading to take.
   *
   * @param from the first hole
   * @param to the other hole; the same for a diameter
   * @param over what to take it over
   */
  public record NextRow(String from, String to, String over) {

    /** In words, such as {@code 1 to 4 over outside}. */
    public String words() {
      return from.equals(to) ? "the diameter of " + from : from + " to " + to + " over " + over;
    }
  }

  static MeasureAnswer of(Measured measured, List<HubSpec> hubs) {
    SurveyResult survey = Survey.of(measured);
    List<ReadingRow> readings = new ArrayList<>();
    for (CheckedReading r : survey.readings()) {
      readings.add(
          new ReadingRow(
              measured.holes(r.reading()),
              r.reading().over().words(),
              r.reading().reads(),
              r.reading().plusMinus(),
              r.residual(),
              r.redundancy(),
              r.w(),
              r.reading().place()));
    }
    List<SuspectRow> suspects = new ArrayList<>();
    for (Suspect s : survey.suspects()) {
      suspects.add(suspect(measured, s));
    }
    return new MeasureAnswer(
        measured.file(),
        measured.on().words(),
        measured.count(),
        survey.pattern().map(Ring::of),
        survey.holes().stream().map(HoleRow::of).toList(),
        survey.freedom(),
        survey.scatter(),
        survey.clockwise(),
        suspects,
        readings,
        Candidates.of(survey, hubs).stream().map(CandidateRow::of).toList(),
        next(survey),
        measured.waiting().size(),
        survey.noCircle(),
        List.of(FIRST, Cautions.USE));
  }

  static SuspectRow suspect(Measured measured, Suspect s) {
    return new SuspectRow(
        measured.holes(s.reading()),
        s.reading().over().words(),
        s.reading().reads(),
        s.off(),
        s.w(),
        s.alone(),
        s.ifEven(),
        s.hint(),
        s.reading().place());
  }

  static List<NextRow> next(SurveyResult survey) {
    Measured measured = survey.measured();
    return survey.next().stream()
        .map(
            pair ->
                new NextRow(
                    measured.labels().get(pair.from()),
                    measured.labels().get(pair.to()),
                    pair.over() == ReadingKind.DIAMETER ? "diameter" : pair.over().words()))
        .toList();
  }

  /**
   * Refuses readings that tell no circle, and says what to measure.
   *
   * @throws BadInput with what is wrong
   */
  MeasureAnswer orRefused() {
    if (!refusals.isEmpty()) {
      throw new BadInput(refusals);
    }
    return this;
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(MeasureJson.of(this));
  }
}
