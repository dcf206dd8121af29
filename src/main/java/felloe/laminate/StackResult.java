package felloe.laminate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a stack does under the load and the cooling of its file. N and mm; z from -h/2 at the back
 * face, where ply 1 lies.
 *
 * @param file the stack, its load, its cooling
 * @param laminate stiffness of the stack
 * @param loaded under the load
 * @param cooled after the cooling, with no load and free to warp, where there is one
 * @param failures of a first ply under the load, with what cooling left behind: one for each
 *     criterion whose limits are known
 */
public record StackResult(
    StackFile file,
    Laminate laminate,
    LaminateResponse loaded,
    Optional<LaminateResponse> cooled,
    List<FirstFailure> failures) {

  /** Length over which a bow is told, mm: about a wheel's width. */
  public static final double BOW_OVER = 300;

  /** Share of the stiffness that may turn with the direction: nobody could measure less. */
  private static final double SAME = 1e-6;

  /** A modulus below this is that of a foam, MPa. */
  private static final double SOFT = 500;

  public StackResult {
    failures = List.copyOf(failures);
  }

  /** Works it out. */
  public static StackResult of(StackFile file) {
    Laminate laminate = Laminate.of(file.stack());
    LaminateResponse loaded = laminate.response(file.load());
    Optional<LaminateResponse> cooled =
        file.cooling().isPresent()
            ? Optional.of(laminate.warmed(-file.cooling().getAsDouble()))
            : Optional.empty();
    List<FirstFailure> failures =
        Arrays.stream(FailureCriterion.values())
            .flatMap(by -> FirstFailure.of(by, loaded, cooled).stream())
            .toList();
    return new StackResult(file, laminate, loaded, cooled, failures);
  }

  /** Whether it is the same when pulled in any direction. */
  public boolean quasiIsotropic() {
    return laminate.a().anisotropy() < SAME;
  }

  /** Whether it is the same when bent in any direction. */
  public boolean isotropicInBending() {
    return laminate.d().anisotropy() < SAME;
  }

  /** Whether a ply is as soft as foam, which looks like a slip in a unit. */
  public boolean soft() {
    return file.stack().plies().stream()
        .anyMatch(ply -> Math.min(ply.material().e1(), ply.material().e2()) < SOFT);
  }

  /** Whether it is known of every ply what it bears. */
  public boolean limitsKnown() {
    return file.stack().plies().stream().allMatch(ply -> ply.material().limits().isPresent());
  }

  /**
   * By how much it bows out over {@link #BOW_OVER} after the cooling, mm, along the direction that
   * bows most; a small bow, as of a circle's segment.
   */
  public Optional<Double> bow() {
    return cooled.map(after -> after.deformation().largestCurvature() * BOW_OVER * BOW_OVER / 8);
  }
}
