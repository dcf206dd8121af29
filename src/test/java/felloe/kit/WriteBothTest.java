package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.files.CannotWrite;
import felloe.plate.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shape file and its overlay are written both or neither. */
class WriteBothTest {

  private static final byte[] PICTURE = {1, 2, 3};

  @TempDir Path folder;

  private void write(boolean over) throws CannotWrite {
    new Kit(folder)
        .writeBoth(
            folder.resolve("a.yaml"),
            "felloe: 1",
            folder.resolve("a-photo.png"),
            PICTURE,
            over,
            "name another file");
  }

  @Test
  void bothAreWrittenAndWrittenOverWhenAsked() throws IOException, CannotWrite {
    write(false);
    assertEquals(3, Files.size(folder.resolve("a-photo.png")));
    assertThrows(BadInput.class, () -> write(false));
    write(true);
    assertEquals("felloe: 1", Files.readString(folder.resolve("a.yaml")));
  }

  @Test
  void whereOneIsThereNeitherIsWritten() throws IOException {
    Files.writeString(folder.resolve("a.yaml"), "mine");
    assertThrows(BadInput.class, () -> write(false));
    assertFalse(Files.exists(folder.resolve("a-photo.png")));
    Files.delete(folder.resolve("a.yaml"));
    Files.writeString(folder.resolve("a-photo.png"), "mine");
    assertThrows(BadInput.class, () -> write(false));
    assertFalse(Files.exists(folder.resolve("a.yaml")));
  }

  @Test
  void wherePlaceOfTheShapeIsAFolderTheOverlayStaysAsItWas() throws IOException {
    Files.createDirectory(folder.resolve("a.yaml"));
    Files.writeString(folder.resolve("a-photo.png"), "mine");
    assertThrows(BadInput.class, () -> write(true));
    assertEquals("mine", Files.readString(folder.resolve("a-photo.png")));
  }
}
