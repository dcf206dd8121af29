package felloe.measure;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Reads a measured file: YAML, or a table (CSV) where the name ends in {@code .csv}.
 *
 * <p>Lengths are millimetres unless a unit is written; one file has one unit. A reading whose value
 * is left blank has not been taken yet. What is wrong is told all at once: wrong or unknown keys,
 * holes that are not there, a hole named twice, two units, readings that are not above zero, and
 * readings that contradict each other or cannot be (see {@link ReadingChecks}).
 */
public final class MeasuredFile {

  private static final int LARGEST = 1 << 20;

  private MeasuredFile() {}

  /**
   * Reads a file.
   *
   * @throws BadInput with everything that is wrong with it
   */
  public static Measured read(Path file) {
    String name = file.toString();
    if (!name.toLowerCase(Locale.ROOT).endsWith(".csv")) {
      return new MeasuredReader(YamlTree.read(file), false).read();
    }
    return parse(name, csv(file));
  }

  /**
   * Reads a text.
   *
   * @param name the name to show in messages; when it ends in {@code .csv} the text is a table
   * @throws BadInput with everything that is wrong with it
   */
  public static Measured parse(String name, String text) {
    if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) {
      return new MeasuredCsv(name, text).read();
    }
    return new MeasuredReader(YamlTree.parse(name, text), false).read();
  }

  private static String csv(Path file) {
    Place place = Place.ofFile(file.toString());
    try {
      if (!Files.exists(file)) {
        throw new BadInput(
            new Problem(place, "", "", "does not exist", "check the name and the folder"));
      }
      if (Files.isDirectory(file)) {
        throw new BadInput(new Problem(place, "", "", "is a folder", "name a file in it"));
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
          throw new BadInput(
              new Problem(place, "", "", "is over 1 MiB", "check that it is the right file"));
        }
        return StandardCharsets.UTF_8
            .newDecoder()
            .decode(java.nio.ByteBuffer.wrap(bytes))
            .toString();
      }
    } catch (CharacterCodingException odd) {
      throw new BadInput(
          new Problem(place, "", "", "must be UTF-8 text", "save the table as CSV in UTF-8"));
    } catch (IOException failure) {
      throw new BadInput(
          new Problem(place, "", "", "cannot be read", "check that you may open the file"));
    }
  }
}
