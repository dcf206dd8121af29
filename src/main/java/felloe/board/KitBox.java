package felloe.board;

import felloe.files.CannotWrite;
import felloe.files.OutFile;
import felloe.files.Written;
import felloe.kit.KitFiles;
import felloe.out.Json;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A kit in a box. */
final class KitBox {

  /**
   * Every entry has it, so that the same kit is the same bytes: the first day that the form has.
   */
  private static final java.time.LocalDateTime NO_TIME =
      java.time.LocalDateTime.of(1980, 1, 1, 0, 0);

  private KitBox() {}

  /**
   * The plate of a desk as the command line would read it.
   *
   * @throws felloe.plate.BadInput when it is none
   */
  static Study study(Desk desk) {
    ShapeSource source = ShapeSource.text(desk.name(), desk.state().seen().text());
    Studies studies = new Studies(desk.folder(), Optional.empty());
    return studies.advised(studies.one(source));
  }

  static byte[] zip(KitFiles.Made made) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (OutFile file : made.files()) {
        ZipEntry entry = new ZipEntry(file.name());
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(file.bytes());
        zip.closeEntry();
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** Written into the folder beside the shapes where the command line's files go too. */
  static Answer written(KitFiles.Made made, Bench bench) throws CannotWrite {
    Path out = bench.folder().resolve("templates-out");
    Written written = made.into(bench.kit().into(out)).commit();
    return Answer.json(
        200,
        Json.object().with("files", Json.array(written.files(), f -> Json.text(f.toString()))));
  }
}
