package felloe.measure;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.hub.RingUse;
import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import felloe.measure.Pattern.Bounded;
import felloe.measure.Pattern.Spacing;
import felloe.plate.BadInput;
import felloe.plate.Basis;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The hub that readings show, as a hub spec: its circle as measured, and its position tolerance no
 * less than what the readings leave open.
 *
 * @param spec every figure of it with where it comes from
 * @param threads those that the size suits; more than one where it does not tell them apart
 */
public record FoundHub(HubSpec spec, List<ScrewThread> threads) {

  /** Lengths are told to this many decimals. */
  private static final int DECIMALS = 2;

  /** Holes further off an even ring than this are no ring of a hub file, mm. */
  private static final double UNEVEN = 0.5;

  public FoundHub {
    threads = List.copyOf(threads);
  }

  /**
   * The hub.
   *
   * @param thread the thread as the user knows it; else the size that was measured tells it
   * @param naming where a face lets the thread be named, told where it must be
   * @throws BadInput when the readings tell no circle, when the holes stand unevenly, or when no
   *     thread, or more than one, suits the size
   */
  public static FoundHub of(SurveyResult survey, Optional<Requested<String>> thread, Place naming) {
    if (!survey.noCircle().isEmpty()) {
      throw new BadInput(survey.noCircle());
    }
    Pattern pattern = survey.pattern().orElseThrow();
    if (pattern.spacing() == Spacing.UNEVEN && pattern.unevenness() > UNEVEN) {
      throw wrong(
          survey,
          "holes",
          "stand unevenly: one is "
              + Numbers.fixed(pattern.unevenness(), DECIMALS)
              + " mm off the nearest even ring, and a hub file tells an even ring",
          "count the holes and check their numbers; two rings may look like one");
    }
    List<ScrewThread> suiting = suiting(survey, pattern);
    ScrewThread chosen =
        thread.map(FoundHub::named).orElseGet(() -> only(survey, pattern, suiting, naming));
    return new FoundHub(spec(survey, pattern, chosen, thread.isPresent()), suiting);
  }

  private static ScrewThread named(Requested<String> thread) {
    String name = thread.value();
    return ScrewThreads.find(name)
        .orElseThrow(
            () ->
                new BadInput(
                    new Problem(
                        thread.place(),
                        "",
                        name,
                        "is not a known thread",
                        "known: " + String.join(", ", ScrewThreads.names()))));
  }

  private static ScrewThread only(
      SurveyResult survey, Pattern pattern, List<ScrewThread> suiting, Place naming) {
    if (suiting.size() == 1) {
      return suiting.get(0);
    }
    String size =
        pattern.size().map(s -> Numbers.fixed(s, DECIMALS) + " mm").orElse("that was not measured");
    throw wrong(
        survey,
        "thread",
        suiting.isEmpty()
            ? "is not told: no known thread suits a size of " + size
            : "is not told: a size of "
                + size
                + " suits "
                + String.join(", ", suiting.stream().map(ScrewThread::name).toList()),
        "screw one in by hand and name its thread, such as "
            + (suiting.isEmpty() ? "M5" : suiting.get(0).name())
            + " ("
            + naming
            + ")");
  }

  private static List<ScrewThread> suiting(SurveyResult survey, Pattern pattern) {
    List<ScrewThread> suiting = new ArrayList<>();
    MeasurePractice practice = MeasurePractice.standard();
    double half = Reading.COVERAGE * pattern.sizeError();
    for (ScrewThread thread : ScrewThreads.all()) {
      SizeRange range = SizeRange.of(survey.measured().on(), thread, practice);
      if (pattern.size().filter(s -> range.holds(s, half)).isPresent()) {
        suiting.add(thread);
      }
    }
    return suiting;
  }

  private static HubSpec spec(
      SurveyResult survey, Pattern pattern, ScrewThread thread, boolean named) {
    Bounded circle =
        pattern.evenPcd().orElse(new Bounded(pattern.pcd(), pattern.pcdLow(), pattern.pcdHigh()));
    double pcd = rounded(circle.value());
    double half = (circle.high() - circle.low()) / 2;
    String path = survey.measured().file();
    String file = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    boolean turned = survey.measured().readings().stream().anyMatch(r -> r.edge().isPresent());
    HubRing ring =
        new HubRing(
            pattern.count(),
            pcd,
            thread,
            turned ? Math.toRadians(rounded(Math.toDegrees(pattern.startAngle()))) : Math.PI / 2,
            thread.medium());
    Map<String, Basis> bases = new TreeMap<>();
    bases.put("count", basis("measured, counted (" + file + ")"));
    bases.put(
        "pcd",
        basis(
            "measured with a calliper ("
                + file
                + "): +- "
                + Numbers.fixed(half, DECIMALS)
                + " mm in 95 of 100"
                + (pattern.spacing() == Spacing.ASSUMED ? ", if the holes stand evenly" : "")));
    bases.put(
        "thread",
        basis(named ? "measured, a screw put in by hand" : "measured by its size (" + file + ")"));
    bases.put(
        "first",
        basis(
            turned
                ? "measured from two edges (" + file + ")"
                : "from memory; a hub may be mounted at any turn"));
    bases.put("plate-hole", basis(thread.basis().words()));
    double play = play(survey, pattern, thread);
    bases.put(
        "position-tolerance",
        basis(
            "measured ("
                + file
                + "): how far a hole may be off the ring, with its 95 % bounds"
                + (play > 0
                    ? ", and "
                        + Numbers.fixed(play, DECIMALS)
                        + " mm of play of "
                        + thread.name()
                        + " screws in the holes that were measured"
                    : "")));
    String title =
        pattern.count()
            + " "
            + thread.name()
            + " screws on a "
            + Numbers.brief(pcd, DECIMALS)
            + " mm circle, measured";
    return new HubSpec(
        name(pattern.count(), pcd, thread),
        title,
        ring,
        Optional.empty(),
        RingUse.EITHER,
        Optional.empty(),
        Optional.empty(),
        rounded(tolerance(survey, pattern, half) + play),
        bases,
        Place.ofFile(path));
  }

  /**
   * The zone of a hole: as wide as twice what the worst one is off the ring and what its bounds
   * leave open. Where an even ring was taken for granted, what such holes are off by habit stands
   * in for the first.
   */
  private static double tolerance(SurveyResult survey, Pattern pattern, double half) {
    double off =
        pattern.spacing() == Spacing.ASSUMED
            ? MeasurePractice.standard().even()
            : pattern.unevenness();
    double open =
        pattern.spacing() == Spacing.ASSUMED
            ? half / 2
            : survey.holes().stream().mapToDouble(FoundHole::within).max().orElse(0);
    return Math.ceil(2 * (off + open) * 100 - Tolerances.SAME_LENGTH) / 100;
  }

  /**
   * What clear holes leave open, mm: a screw stands anywhere in its hole, so the zone of its middle
   * is wider by the play. Rounded up.
   */
  private static double play(SurveyResult survey, Pattern pattern, ScrewThread thread) {
    if (survey.measured().on() != ContactFeature.HOLES) {
      return 0;
    }
    double play = pattern.size().orElse(thread.medium()) - thread.diameter();
    return Math.ceil(Math.max(0, play) * 100 - Tolerances.SAME_LENGTH) / 100;
  }

  private static String name(int count, double pcd, ScrewThread thread) {
    return count
        + "x"
        + Numbers.brief(pcd, DECIMALS)
        + "-"
        + thread.name().toLowerCase(Locale.ROOT).replace('/', '-');
  }

  private static double rounded(double value) {
    return Math.rint(value * 100) / 100;
  }

  private static Basis basis(String words) {
    return Basis.of(words).orElseThrow();
  }

  private static BadInput wrong(SurveyResult survey, String who, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(survey.measured().file()), who, "", wanted, cure));
  }
}
