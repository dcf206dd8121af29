package felloe.cli;

import felloe.kit.HubCard;
import felloe.kit.HubCard.Based;
import felloe.kit.HubCard.CalliperTable;
import felloe.kit.HubCard.Reading;
import java.util.List;

/** Hubs as text. */
final class HubText {

  private HubText() {}

  /** One line a hub. */
  static void list(Screen screen, List<HubCard> hubs) {
    Table table = new Table("ll");
    hubs.forEach(hub -> table.row(hub.name(), hub.title()));
    table.lines().forEach(screen::line);
  }

  /** Every figure of a hub with its basis, and what a calliper reads. */
  static void card(Screen screen, HubCard hub) {
    screen.line(hub.name() + ": " + hub.title());
    screen.line("");
    Table table = new Table("lrl");
    for (Based figure : hub.figures()) {
      table.row(name(figure), Figures.of(figure.value(), figure.unit()), figure.basis());
    }
    table.lines().forEach(screen::line);
    calliper(screen, hub.calliper());
  }

  /** A figure's name; those of a second ring say so. */
  private static String name(Based figure) {
    return figure.key().startsWith("second.") ? "second ring: " + figure.name() : figure.name();
  }

  static void calliper(Screen screen, List<CalliperTable> tables) {
    for (CalliperTable ring : tables) {
      screen.line("");
      screen.line(
          "Calliper on "
              + ring.count()
              + " "
              + ring.on()
              + ", circle of "
              + Figures.of(ring.pitchDiameter(), "mm"));
      Table table = new Table("lrrr");
      table.row("pair", "centres", "outside", "inside");
      for (Reading reading : ring.readings()) {
        table.row(
            reading.pair(),
            Figures.column(reading.centres(), "mm"),
            Figures.column(reading.outside(), "mm"),
            Figures.column(reading.inside(), "mm"));
      }
      table.lines().forEach(line -> screen.line("  " + line));
      if (!ring.warning().isEmpty()) {
        screen.line("  " + ring.warning());
      }
    }
  }
}
