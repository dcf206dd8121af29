package felloe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The table of rooms that contributors read is the one that is held. */
class HouseTableTest {

  private final Map<String, String[]> rows = rows();

  @Test
  void everyRoomStandsInTheTableWithWhatItMayImport() {
    Map<String, Set<String>> told = new TreeMap<>();
    Set<String> above = new TreeSet<>();
    rows.forEach(
        (room, cells) -> {
          String may = cells[4].strip();
          Set<String> rooms = new TreeSet<>();
          if (may.equals("all above")) {
            rooms.addAll(above);
          } else if (!may.equals("nothing")) {
            rooms.addAll(List.of(may.split(", ")));
          }
          told.put(room, rooms);
          above.add(room);
        });
    Map<String, Set<String>> held = new TreeMap<>();
    ArchitectureTest.MAY_IMPORT.forEach((room, may) -> held.put(room, new TreeSet<>(may)));
    assertEquals(held, told);
  }

  @Test
  void everyFrontDoorIsThere() {
    rows.forEach(
        (room, cells) -> {
          String door = cells[2].strip();
          if (door.startsWith("`")) {
            Path file = Path.of("src/main/java/felloe", room, door.replace("`", "") + ".java");
            assertTrue(Files.isRegularFile(file), file.toString());
          }
        });
  }

  private static Map<String, String[]> rows() {
    Map<String, String[]> rows = new LinkedHashMap<>();
    try {
      for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
        String[] cells = line.split("\\|");
        if (line.matches("\\| `[a-z]+` \\|.*") && cells.length >= 5) {
          rows.put(cells[1].replace("`", "").strip(), cells);
        }
      }
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
    return rows;
  }
}
