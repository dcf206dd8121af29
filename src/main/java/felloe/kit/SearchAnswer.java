package felloe.kit;

import felloe.geometry.Numbers;
import felloe.load.FigureRange;
import felloe.load.TriedDesign;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a search for the least mass found. An estimate to choose by.
 *
 * @param plate as the shape file has it
 * @param spans what varied
 * @param designs all that was tried, in the order of trying
 * @param again how many of them were known from an earlier run
 * @param file where they are kept; empty for nowhere
 */
public record SearchAnswer(
    Plate plate,
    List<FigureRange> spans,
    List<TriedDesign> designs,
    int again,
    Optional<Path> file) {

  private static final int DECIMALS = 6;

  /** Copies the lists. */
  public SearchAnswer {
    spans = List.copyOf(spans);
    designs = List.copyOf(designs);
  }

  /**
   * A design in words and figures.
   *
   * @param values of what varied, in order
   * @param mass g; 0 when it cannot be drawn
   * @param deflection mm
   * @param margin the least
   * @param fault why it will not do
   * @param front whether it stands on the front between mass and stiffness
   */
  public record Row(
      List<Double> values,
      double mass,
      double deflection,
      double margin,
      String fault,
      boolean front) {}

  /** What varied, by the names of the shape file. */
  public List<String> paths() {
    return spans.stream().map(FigureRange::path).toList();
  }

  /** The front between mass and stiffness, lightest first. */
  public List<Row> front() {
    return TriedDesign.front(designs).stream().map(one -> row(one, true)).toList();
  }

  /** The lightest designs that will not do, which tell what holds the search back. */
  public List<Row> lighter(int most) {
    double least = TriedDesign.lightest(designs).map(TriedDesign::mass).orElse(1e9);
    return designs.stream()
        .filter(one -> !one.does() && one.mass() > 0 && one.mass() < least)
        .sorted(Comparator.comparingDouble(TriedDesign::mass).reversed())
        .limit(most)
        .map(one -> row(one, false))
        .toList();
  }

  private static Row row(TriedDesign one, boolean front) {
    return new Row(one.values(), one.mass(), one.deflection(), one.margin(), one.fault(), front);
  }

  /** How many designs do all that is wanted. */
  public long doing() {
    return designs.stream().filter(TriedDesign::does).count();
  }

  /** The lightest design as options of a call; empty when none will do. */
  public Optional<String> sets() {
    return TriedDesign.lightest(designs)
        .map(
            one -> {
              List<String> words = new ArrayList<>();
              for (int i = 0; i < spans.size(); i++) {
                String value = Numbers.brief(one.values().get(i), 2);
                words.add("--set '" + spans.get(i).path() + "=" + value + "'");
              }
              return String.join(" ", words);
            });
  }

  /** Sentences that go with it wherever it is shown. */
  public List<String> cautions() {
    List<String> all = new ArrayList<>();
    all.add(
        "Each design was reckoned on one mesh, good enough to compare them. Look at the one you"
            + " choose with felloe check and felloe load before you make it.");
    all.addAll(LoadAnswer.CAUTIONS);
    return all;
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    List<TriedDesign> front = TriedDesign.front(designs);
    return JsonWriter.text(
        Json.object()
            .with("name", plate.name())
            .with("title", plate.title())
            .with("revision", plate.revision())
            .with(
                "varied",
                Json.array(
                    spans,
                    span ->
                        Json.object()
                            .with("path", span.path())
                            .with("from", span.from(), DECIMALS)
                            .with("to", span.to(), DECIMALS)))
            .with("tried", designs.size())
            .with("known_before", again)
            .with(
                "lightest",
                Json.maybe(TriedDesign.lightest(designs), one -> design(one, front.contains(one))))
            .with("front", Json.array(front, one -> design(one, true)))
            .with("designs", Json.array(designs, one -> design(one, front.contains(one))))
            .with("cautions", Json.array(cautions(), Json::text)));
  }

  private static Json design(TriedDesign one, boolean front) {
    return Json.object()
        .with("values", Json.array(one.values(), value -> Json.number(value, DECIMALS)))
        .with("mass", one.mass(), DECIMALS)
        .with("deflection", one.deflection(), DECIMALS)
        .with("margin", one.margin(), DECIMALS)
        .with("does", one.does())
        .with("front", front)
        .with("fault", one.fault());
  }
}
