package felloe.kit;

import felloe.files.OutFile;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.service.Study;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A kit that was written.
 *
 * @param folder where it lies
 * @param files what lies in it, in the order in which they were made
 * @param pages the tiled template
 * @param check what the review says of the plate
 * @param lacks why there is no file for machines, or not every one; empty when all are there
 */
public record KitAnswer(
    Path folder, List<FileLine> files, Pages pages, Study check, Optional<String> lacks) {

  public KitAnswer {
    files = List.copyOf(files);
  }

  /**
   * A file.
   *
   * @param name its name
   * @param bytes its size
   * @param sha256 its digest, 64 hexadecimal digits
   */
  public record FileLine(String name, int bytes, String sha256) {
    static FileLine of(OutFile file) {
      return new FileLine(file.name(), file.bytes().length, file.sha256());
    }
  }

  /** Kits as JSON text; its shape is told in {@code docs/}. */
  public static String json(List<KitAnswer> kits) {
    return JsonWriter.text(Json.object().with("kits", Json.array(kits, KitAnswer::json)));
  }

  private static Json json(KitAnswer kit) {
    return AnswerJson.plate(kit.check().plate())
        .with("folder", kit.folder().toString())
        .with("verdict", AnswerJson.word(kit.check().verdict()))
        .with("template", kit.pages().json())
        .with("lacks", Json.maybe(kit.lacks(), Json::text))
        .with(
            "files",
            Json.array(
                kit.files(),
                file ->
                    Json.object()
                        .with("name", file.name())
                        .with("bytes", file.bytes())
                        .with("sha256", file.sha256())));
  }
}
