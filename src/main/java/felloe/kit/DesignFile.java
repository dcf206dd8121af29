package felloe.kit;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.SingleFile;
import felloe.geometry.Numbers;
import felloe.load.FigureRange;
import felloe.load.TriedDesign;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Designs that were tried, as a table in a file, so that a search that was stopped can go on. What
 * was tried for another shape, other figures or other loads does not count: the first line tells.
 */
final class DesignFile {

  private static final int MOST = 1 << 22;
  private static final int PLACES = 6;

  private final Path out;
  private final String name;
  private final Disk disk;
  private final String head;
  private final List<FigureRange> spans;

  /**
   * A file of designs.
   *
   * @param out its folder
   * @param name of the file
   * @param head first line: what the designs were tried for
   */
  DesignFile(Path out, String name, Disk disk, String head, List<FigureRange> spans) {
    this.out = out;
    this.name = name;
    this.disk = disk;
    this.head = head;
    this.spans = spans;
  }

  /** The designs of an earlier run by their values; none when there is no such file. */
  Map<List<Double>, TriedDesign> read() {
    Map<List<Double>, TriedDesign> known = new LinkedHashMap<>();
    try {
      Path file = out.resolve(name);
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) < MOST) {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        for (int i = 2; i < lines.size() && lines.get(0).equals(head); i++) {
          TriedDesign one = parsed(lines.get(i));
          if (one != null) {
            known.put(one.values(), one);
          }
        }
      }
    } catch (IOException unreadable) {
      // Then it is tried again, and the file written anew.
      return known;
    }
    return known;
  }

  private TriedDesign parsed(String line) {
    String[] cells = line.split(",", spans.size() + 4);
    if (cells.length != spans.size() + 4) {
      return null;
    }
    try {
      List<Double> figures = new ArrayList<>();
      for (int i = 0; i < spans.size() + 3; i++) {
        figures.add(Double.parseDouble(cells[i]));
      }
      int n = spans.size();
      return new TriedDesign(
          figures.subList(0, n),
          figures.get(n),
          figures.get(n + 1),
          figures.get(n + 2),
          cells[n + 3]);
    } catch (IllegalArgumentException odd) {
      return null;
    }
  }

  /**
   * Writes all designs, whole or not at all.
   *
   * @throws CannotWrite when the disk says no
   */
  Path write(List<TriedDesign> designs) throws CannotWrite {
    StringBuilder text = new StringBuilder(head).append('\n');
    spans.forEach(span -> text.append(span.path()).append(','));
    text.append("mass,deflection,margin,fault\n");
    for (TriedDesign one : designs) {
      one.values().forEach(value -> text.append(Numbers.brief(value, PLACES)).append(','));
      text.append(Numbers.brief(one.mass(), PLACES)).append(',');
      text.append(Numbers.brief(one.deflection(), PLACES)).append(',');
      text.append(Numbers.brief(one.margin(), PLACES)).append(',');
      text.append(one.fault()).append('\n');
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    Path file = out.resolve(name);
    new SingleFile(file, disk).replace(bytes);
    return file;
  }
}
