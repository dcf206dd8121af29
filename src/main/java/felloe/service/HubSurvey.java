package felloe.service;

import felloe.hub.HubCatalogue;
import felloe.measure.Candidates;
import felloe.measure.Measured;
import felloe.measure.MeasuredFile;
import felloe.measure.Survey;
import felloe.measure.SurveyResult;
import felloe.plate.BadInput;
import java.nio.file.Path;

/** Finds the pattern of a hub, and the known hubs that come near it, from calliper readings. */
public final class HubSurvey {

  private HubSurvey() {}

  /**
   * What a measured file tells.
   *
   * @param folder where the names of hub files start from
   * @throws BadInput with everything that is wrong with the file, or naming what to measure next
   *     when it tells no circle
   */
  public static MeasuredHub of(Path file, Path folder) {
    MeasuredHub hub = of(MeasuredFile.read(file), folder);
    hub.refuseUntold();
    return hub;
  }

  /**
   * What readings tell so far that were never saved; it may be no circle yet.
   *
   * @param name to show in messages
   * @param text the whole text of a measured file
   * @throws BadInput with everything that is wrong with it
   */
  public static MeasuredHub soFar(String name, String text, Path folder) {
    return of(MeasuredFile.parse(name, text), folder);
  }

  private static MeasuredHub of(Measured measured, Path folder) {
    SurveyResult survey = Survey.of(measured);
    return new MeasuredHub(survey, Candidates.of(survey, new HubCatalogue(folder).all()));
  }
}
