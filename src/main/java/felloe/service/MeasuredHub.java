package felloe.service;

import felloe.drawing.Cautions;
import felloe.geometry.Point;
import felloe.hub.HubFile;
import felloe.hub.HubSpec;
import felloe.measure.Candidate;
import felloe.measure.FoundHub;
import felloe.measure.Measured;
import felloe.measure.Pattern;
import felloe.measure.ReadingKind;
import felloe.measure.SurveyResult;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What calliper readings tell of a hub.
 *
 * @param survey what they tell by themselves
 * @param candidates known hubs with as many screws, the likeliest first
 */
public record MeasuredHub(SurveyResult survey, List<Candidate> candidates) {

  private static final String FIRST =
      "A hub's own data sheet comes first. Try the pattern in card or scrap on the hub before you"
          + " drill a plate.";

  /** A ring that is drawn before any is known, mm. */
  private static final double ANY = 35;

  public MeasuredHub {
    candidates = List.copyOf(candidates);
  }

  /** Whether they tell the circle. */
  public boolean told() {
    return survey.noCircle().isEmpty();
  }

  /**
   * Refuses to go on without a circle.
   *
   * @throws BadInput naming what to measure next
   */
  public void refuseUntold() {
    if (!told()) {
      throw new BadInput(survey.noCircle());
    }
  }

  /**
   * A reading to take.
   *
   * @param from label of the first hole
   * @param to label of the other hole; the same for a diameter
   * @param over what it is taken over, as a measured file writes it
   * @param words such as {@code 1 to 4 over outside}
   */
  public record NextReading(String from, String to, String over, String words) {

    /** Whether it is the size of one hole. */
    public boolean diameter() {
      return over.equals(ReadingKind.DIAMETER.words());
    }
  }

  /** Readings that would make it surer, or that are wanted, the most useful first. */
  public List<NextReading> next() {
    Measured measured = survey.measured();
    return survey.next().stream()
        .map(
            pair ->
                new NextReading(
                    measured.labels().get(pair.from()),
                    measured.labels().get(pair.to()),
                    pair.over().words(),
                    measured.words(pair)))
        .toList();
  }

  /**
   * A hole as it is known so far.
   *
   * @param label its number
   * @param at its centre about the middle of all, the first straight up, mm
   * @param within half-width that holds its centre in 95 of 100 cases, mm; 0 where nothing is known
   * @param size its diameter, mm, when that is known
   */
  public record Spot(String label, Point at, double within, Optional<Double> size) {}

  /** Where the holes are; an even ring of no known size while the readings do not tell it. */
  public List<Spot> spots() {
    Optional<Point> centre = survey.pattern().map(Pattern::centre);
    if (survey.told() && centre.isPresent()) {
      return survey.holes().stream()
          .map(h -> new Spot(h.label(), h.at().minus(centre.get()), h.within(), h.size()))
          .toList();
    }
    List<String> labels = survey.measured().labels();
    List<Spot> ring = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      Point at = Point.polar(ANY, Math.PI / 2 + 2 * Math.PI * i / labels.size());
      ring.add(new Spot(labels.get(i), at, 0, Optional.empty()));
    }
    return List.copyOf(ring);
  }

  /** Number of holes. */
  public int count() {
    return survey.measured().count();
  }

  /** How many readings there are beyond those that are needed. */
  public int spare() {
    return survey.freedom();
  }

  /**
   * The hub as a hub file.
   *
   * @param title of the hub in words
   * @param text of the file
   */
  public record Written(String title, String text) {}

  /**
   * The hub that was found, as a hub file.
   *
   * @param thread of its screws, where its user knows it
   * @param naming where the face lets it be named
   * @throws BadInput when the readings do not tell all that a hub file says
   */
  public Written written(Optional<Requested<String>> thread, Place naming) {
    HubSpec spec = FoundHub.of(survey, thread, naming).spec();
    return new Written(spec.title(), HubFile.text(spec));
  }

  /** Sentences that go with it wherever it is shown. */
  public List<String> cautions() {
    return List.of(FIRST, Cautions.USE);
  }
}
