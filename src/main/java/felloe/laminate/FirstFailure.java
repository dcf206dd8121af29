package felloe.laminate;

import java.util.Optional;

/**
 * Where and when a load breaks a first ply, by one criterion. First-ply failure is not yet
 * collapse; it is where the theory ends.
 *
 * @param criterion which one
 * @param ply number from 1 at the back
 * @param top whether at the ply's face toward the driver
 * @param index 1 is the edge of failure at the load as given: by maximum strain the highest strain
 *     over its limit, by Tsai and Wu the polynomial, with what cooling left behind
 * @param reserve by how much the load may grow until then; 0 when what cooling left behind has
 *     failed already
 * @param mode which strain limit is nearest; Tsai and Wu's polynomial does not tell
 */
public record FirstFailure(
    FailureCriterion criterion,
    int ply,
    boolean top,
    double index,
    double reserve,
    Optional<FailureMode> mode) {

  /**
   * The first ply to fail, among those whose limits are known.
   *
   * @param load what grows
   * @param rest what stays, such as the stresses that cooling left behind
   * @return empty when no ply's limits are known, or nothing of them is loaded
   */
  public static Optional<FirstFailure> of(
      FailureCriterion criterion, LaminateResponse load, Optional<LaminateResponse> rest) {
    FirstFailure worst = null;
    for (int i = 0; i < load.plies().size(); i++) {
      for (boolean top : new boolean[] {false, true}) {
        Optional<PlyPoint> left =
            rest.isPresent() ? Optional.of(point(rest.get(), i, top)) : Optional.empty();
        FirstFailure here =
            at(criterion, load.plies().get(i), top, point(load, i, top), left).orElse(null);
        if (here != null && (worst == null || here.reserve < worst.reserve)) {
          worst = here;
        }
      }
    }
    return Optional.ofNullable(worst).filter(one -> Double.isFinite(one.reserve));
  }

  private static PlyPoint point(LaminateResponse response, int ply, boolean top) {
    PlyResponse of = response.plies().get(ply);
    return top ? of.top() : of.bottom();
  }

  /** The failure of one ply at one of its faces; empty when its limits are not known. */
  static Optional<FirstFailure> at(
      FailureCriterion criterion,
      PlyResponse ply,
      boolean top,
      PlyPoint load,
      Optional<PlyPoint> rest) {
    PlyMaterial material = ply.ply().material();
    if (criterion == FailureCriterion.TSAI_WU) {
      return material
          .strength()
          .map(
              limits -> {
                PlaneTriple grows = load.ownStress();
                PlaneTriple stays = rest.map(PlyPoint::ownStress).orElse(PlaneTriple.ZERO);
                double index =
                    limits.tsaiWu(
                        grows.first() + stays.first(),
                        grows.second() + stays.second(),
                        grows.shear() + stays.shear());
                double reserve = limits.tsaiWuReserve(grows.figures(), stays.figures());
                return new FirstFailure(
                    criterion, ply.number(), top, index, reserve, Optional.empty());
              });
    }
    return material
        .limits()
        .map(
            limits -> {
              PlaneTriple grows = load.ownStrain();
              PlaneTriple stays = rest.map(PlyPoint::ownStrain).orElse(PlaneTriple.ZERO);
              double reserve = limits.reserve(grows.figures(), stays.figures());
              double factor = Double.isFinite(reserve) ? reserve : 1;
              double index =
                  limits.use(
                      grows.first() + stays.first(),
                      grows.second() + stays.second(),
                      grows.shear() + stays.shear());
              FailureMode mode =
                  limits.mode(
                      factor * grows.first() + stays.first(),
                      factor * grows.second() + stays.second(),
                      factor * grows.shear() + stays.shear());
              return new FirstFailure(
                  criterion, ply.number(), top, index, reserve, Optional.of(mode));
            });
  }
}
