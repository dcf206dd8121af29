package felloe.review;

import felloe.geometry.NarrowestWeb;
import felloe.geometry.NarrowestWeb.Web;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * Windows and holes lie inside the plate and clear of each other. A plate whose openings meet
 * cannot be made at all, so the figure is the margin that is left.
 */
record ClearOpenings() implements Rule {

  @Override
  public String id() {
    return "clear-openings";
  }

  @Override
  public String why() {
    return "Windows and holes must lie inside the plate and clear of each other.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    List<NamedContour> edges = NamedContour.all(plate);
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    return closest(plate)
        .map(
            web -> {
              NamedContour opening = edges.get(web.second());
              return bounds.finding(
                  this,
                  edges.get(web.first()).label() + " to " + opening.label(),
                  "smallest distance between two edges",
                  web.width(),
                  Optional.of(web.middle()),
                  opening.place(),
                  NamedContour.apart(
                      edges.get(web.first()), opening, bounds.lacks(web.width(), 1)));
            })
        .stream()
        .toList();
  }

  private static Optional<Web> closest(Plate plate) {
    return new NarrowestWeb(plate.region()).between();
  }
}
