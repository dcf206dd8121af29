package felloe.kit;

import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.plate.Basis;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of a hub, for showing.
 *
 * @param name made of the pattern, such as {@code 6x70-m5}
 * @param title in words
 * @param figures each with its basis
 * @param calliper what a calliper reads over screws put into the hub, a table a ring
 */
public record HubCard(
    String name, String title, List<Based> figures, List<CalliperTable> calliper) {

  /** Copies the lists. */
  public HubCard {
    figures = List.copyOf(figures);
    calliper = List.copyOf(calliper);
  }

  /**
   * A figure with its basis.
   *
   * @param key in the hub's file, such as {@code pcd}
   * @param name what it is
   * @param value angles in degrees
   * @param unit {@code mm}, {@code deg} or empty
   * @param kind how far to trust it: {@code standard}, {@code measured}, {@code common practice} or
   *     {@code from memory}
   * @param basis where it comes from, in full
   */
  public record Based(
      String key, String name, double value, String unit, String kind, String basis) {
    static Based of(String key, SourcedFigure figure) {
      return new Based(
          key,
          figure.name(),
          figure.value(),
          figure.unit(),
          Basis.of(figure.basis()).orElseThrow().kind().words(),
          figure.basis());
    }
  }

  /**
   * What to read on a calliper over a ring.
   *
   * @param on what it is put on, such as {@code M5 screws in the hub}
   * @param count of holes or screws
   * @param pitchDiameter mm
   * @param diameter of each, mm
   * @param readings from neighbour to the widest pair
   * @param warning for an odd count; empty otherwise
   */
  public record CalliperTable(
      String on,
      int count,
      double pitchDiameter,
      double diameter,
      List<Reading> readings,
      String warning) {
    /** Copies the list. */
    public CalliperTable {
      readings = List.copyOf(readings);
    }

    static CalliperTable of(String on, CalliperFigures figures) {
      return new CalliperTable(
          on,
          figures.count(),
          figures.pitchDiameter(),
          figures.diameter(),
          figures.readings().stream().map(Reading::of).toList(),
          figures.warning());
    }
  }

  /**
   * One pair.
   *
   * @param pair such as {@code neighbour} or {@code across}
   * @param centres centre to centre, mm
   * @param outside over the outside edges, mm
   * @param inside between the inside edges, mm
   */
  public record Reading(String pair, double centres, double outside, double inside) {
    static Reading of(CalliperReading reading) {
      return new Reading(reading.name(), reading.centres(), reading.outside(), reading.inside());
    }
  }

  static HubCard of(HubSpec spec) {
    return new HubCard(
        spec.name(),
        spec.title(),
        spec.figures().entrySet().stream().map(e -> Based.of(e.getKey(), e.getValue())).toList(),
        tables(spec.rings()));
  }

  static List<CalliperTable> tables(List<HubRing> rings) {
    List<CalliperTable> tables = new ArrayList<>();
    for (HubRing ring : rings) {
      tables.add(CalliperTable.of(ring.thread().name() + " screws in the hub", ring.calliper()));
    }
    return tables;
  }
}
