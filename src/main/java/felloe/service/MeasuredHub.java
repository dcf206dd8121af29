package felloe.service;

import felloe.drawing.Cautions;
import felloe.hub.HubFile;
import felloe.hub.HubSpec;
import felloe.measure.Candidate;
import felloe.measure.FoundHub;
import felloe.measure.Measured;
import felloe.measure.ReadingKind;
import felloe.measure.SurveyResult;
import felloe.plate.Place;
import felloe.plate.Requested;
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

  public MeasuredHub {
    candidates = List.copyOf(candidates);
  }

  /** Whether they tell the circle. */
  public boolean told() {
    return survey.noCircle().isEmpty();
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
   * @throws felloe.plate.BadInput when the readings do not tell all that a hub file says
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
