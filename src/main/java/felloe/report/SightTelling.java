package felloe.report;

import static felloe.document.Quantity.fixed;

import felloe.cockpit.Sight;
import felloe.cockpit.Sight.Hidden;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Phrase;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Picture;
import felloe.drawing.SightPicture;
import felloe.geometry.Contour;
import felloe.geometry.Polygons.Polygon;
import felloe.geometry.Tolerances;
import felloe.service.CockpitOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the wheel hides of an instrument. */
public final class SightTelling {

  private SightTelling() {}

  /** Nothing where no instrument is told of. */
  static Telling of(CockpitOutcome outcome) {
    Telling told = new Telling();
    if (outcome.sight().isEmpty()) {
      return told;
    }
    Sight sight = outcome.sight().get();
    told.head("What is hidden of the {}", sight.instrument().name());
    told.add(
        Rows.of(sight.hidden())
            .words("turned", hidden -> turned(hidden.turn()))
            .figures("hidden", "%", hidden -> fixed(percent(hidden), 0, "%")));
    told.say(
        "From one point {} above the floor and {} behind the end of the column, {}. Plate, grips,"
            + " what sits in openings, hub and stack are in the way; hands, arms and a helmet are"
            + " not reckoned.",
        fixed(sight.eye().y(), 0, "mm"),
        fixed(sight.eye().z(), 0, "mm"),
        outcome.plan().cockpit().eye().isPresent()
            ? "as the shape file has it"
            : "reckoned between the driver's eyes");
    return told.fold(
        Depth.PAPER,
        inside -> shown(sight).forEach(hidden -> inside.add(new Figure(view(sight, hidden)))));
  }

  /** The first, and the one at which most is hidden. */
  private static List<Hidden> shown(Sight sight) {
    Hidden first = sight.hidden().get(0);
    Hidden most =
        sight.hidden().stream().max(Comparator.comparingDouble(Hidden::share)).orElseThrow();
    return most.share() > first.share() ? List.of(first, most) : List.of(first);
  }

  /** What to do where much is hidden. */
  static List<String> steps(CockpitOutcome outcome) {
    Optional<Hidden> ahead =
        outcome.sight().stream()
            .flatMap(sight -> sight.hidden().stream())
            .filter(hidden -> hidden.turn() == 0 && percent(hidden) > 0)
            .findFirst();
    return ahead.stream()
        .map(
            hidden ->
                Phrase.of(
                    "{} of the {} is hidden straight ahead: move it, the wheel or the seat until"
                        + " what must be seen shows.",
                    fixed(percent(hidden), 0, "%"),
                    outcome.sight().orElseThrow().instrument().name()))
        .toList();
  }

  /** Rounded up: never told to hide less. */
  private static double percent(Hidden hidden) {
    return Tolerances.up(100 * hidden.share());
  }

  private static String turned(double turn) {
    double degrees = Math.toDegrees(turn);
    return degrees == 0
        ? "straight"
        : Phrase.of(
            "{} {}", fixed(Math.abs(degrees), 0, "") + "\u00b0", degrees > 0 ? "left" : "right");
  }

  /** As the eye sees it at the first turn. */
  public static Optional<Picture> view(CockpitOutcome outcome) {
    return outcome.sight().map(sight -> view(sight, sight.hidden().get(0)));
  }

  private static Picture view(Sight sight, Hidden hidden) {
    List<List<Contour>> covers = new ArrayList<>();
    for (Polygon cover : hidden.covers()) {
      covers.add(cover.rings().stream().map(Contour::polygon).toList());
    }
    return SightPicture.of(
        Phrase.of(
            "From the eye, {}: {} of the {} hidden",
            hidden.turn() == 0 ? "straight ahead" : "turned " + turned(hidden.turn()),
            fixed(percent(hidden), 0, "%"),
            sight.instrument().name()),
        Contour.polygon(sight.image()),
        covers);
  }
}
