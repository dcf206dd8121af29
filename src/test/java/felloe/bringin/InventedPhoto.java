package felloe.bringin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A photo of an invented wheel 9 mm thick, rendered, for tests of other rooms and for the pages.
 */
public final class InventedPhoto {

  private static final long SCENE = 3091;

  private InventedPhoto() {}

  public static byte[] jpeg() throws IOException {
    return new PhotoScene(SCENE, 4000, 3000, 0.78, 0).jpeg();
  }

  /** The same at a third of the pixels, for tests that only want it read. */
  public static byte[] small() throws IOException {
    return new PhotoScene(SCENE, 2304, 1728, 0.78, 0).jpeg();
  }

  /** Writes it into a file, to make the pictures of the pages by. */
  public static void main(String[] args) throws IOException {
    Files.write(Path.of(args[0]), jpeg());
  }
}
