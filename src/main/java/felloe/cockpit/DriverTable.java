package felloe.cockpit;

import felloe.plate.BodyMeasure;
import felloe.plate.Driver;
import felloe.plate.Driver.People;
import felloe.plate.SourcedFigure;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures of drivers by percentile, from the resource {@code driver.yaml}, each with its source.
 *
 * @param percentiles how many of a hundred are smaller, the least first
 * @param ease share of its length with which a thumb or finger works at ease
 * @param rows of each kind of people
 */
public record DriverTable(
    List<Integer> percentiles,
    SourcedFigure ease,
    Map<People, Map<BodyMeasure, List<SourcedFigure>>> rows) {

  private static final String RESOURCE = "/felloe/driver.yaml";
  private static final String OWN = "the shape file, measured of the driver";

  public DriverTable {
    percentiles = List.copyOf(percentiles);
    rows = Collections.unmodifiableMap(new EnumMap<>(rows));
  }

  /** The program's own figures. Read anew at each call; keep it. */
  public static DriverTable standard() {
    Problems problems = new Problems();
    Fields top = BuiltIn.tree(RESOURCE).fields(problems);
    List<Integer> percentiles =
        top.list("percentiles").lengths().stream().map(Double::intValue).toList();
    Fields share = top.group("ease");
    double part = share.number("share").positive().atMost(1).required();
    String because = share.longText("basis").required();
    Fields measures = top.group("measures");
    Map<People, Map<BodyMeasure, List<SourcedFigure>>> rows = new EnumMap<>(People.class);
    for (People people : People.values()) {
      rows.put(people, new EnumMap<>(BodyMeasure.class));
    }
    for (BodyMeasure measure : BodyMeasure.values()) {
      Fields row = measures.group(measure.name().toLowerCase(Locale.ROOT));
      String basis = row.longText("basis").required();
      String women = row.longText("women_basis").or(basis);
      List<Double> men = row.list("men").exactly(percentiles.size()).lengths();
      List<Double> ofWomen = row.list("women").exactly(percentiles.size()).lengths();
      rows.get(People.MEN).put(measure, sourced(measure, men, basis));
      rows.get(People.WOMEN).put(measure, sourced(measure, ofWomen, women));
      row.done();
    }
    top.done();
    problems.throwIfAny();
    SourcedFigure ease =
        new SourcedFigure("share of a thumb or finger that works at ease", part, "", because);
    return new DriverTable(percentiles, ease, rows);
  }

  private static List<SourcedFigure> sourced(
      BodyMeasure measure, List<Double> values, String basis) {
    List<SourcedFigure> figures = new ArrayList<>();
    values.forEach(value -> figures.add(new SourcedFigure(measure.words(), value, "mm", basis)));
    return figures;
  }

  /** A figure of the table. */
  public SourcedFigure figure(People people, int percentile, BodyMeasure measure) {
    return rows.get(people).get(measure).get(percentiles.indexOf(percentile));
  }

  /** A measure of a driver: his own, or that of his percentile. */
  public SourcedFigure of(Driver driver, BodyMeasure measure) {
    Double own = driver.own().get(measure);
    return own == null
        ? figure(driver.people(), driver.percentile(), measure)
        : new SourcedFigure(measure.words(), own, "mm", OWN);
  }
}
