package felloe.service;

import felloe.hub.HubSpec;
import felloe.measure.AsDrilled;
import felloe.measure.AsDrilledResult;
import felloe.measure.Measured;
import felloe.measure.MeasuredFile;
import felloe.plate.BadInput;
import felloe.plate.Problem;
import felloe.plate.Requested;
import java.nio.file.Path;
import java.util.Optional;

/** Proves a drilled plate against its hub. */
public final class DrilledCheck {

  private DrilledCheck() {}

  /**
   * What is asked.
   *
   * @param shape the plate as drawn
   * @param hub to compare with instead of the shape's own
   * @param measured the measured file
   * @param bonus whether a hole that is larger than drawn may be so much further off (ISO 2692)
   */
  public record Request(
      ShapeSource shape,
      Optional<Requested<String>> hub,
      Requested<Path> measured,
      boolean bonus) {}

  /**
   * The proof.
   *
   * @param folder where names of files start from
   * @throws BadInput with all that is wrong with shape, hub and readings
   */
  public static DrilledOutcome of(Request request, Path folder) {
    Studies studies = new Studies(folder, request.hub());
    Measured measured = studies.with(() -> MeasuredFile.read(request.measured().value()));
    Study study = studies.one(request.shape());
    HubSpec hub = study.hub().orElseThrow(() -> noHub(request));
    AsDrilledResult drilled = AsDrilled.of(study.plate(), hub, measured, request.bonus());
    return new DrilledOutcome(
        study, drilled, DrilledReview.of(study.findings(), study.plate(), hub, drilled));
  }

  private static BadInput noHub(Request request) {
    return new BadInput(
        new Problem(
            request.measured().place(),
            "",
            "",
            "needs a hub, but the shape file names none",
            "write hub: into it, or name one in the call"));
  }
}
