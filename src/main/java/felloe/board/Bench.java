package felloe.board;

import felloe.kit.Kit;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The folder that is worked in: its shape files, and a desk for each that was opened. */
final class Bench implements AutoCloseable {

  /** Names that a page may ask for: no folders, nothing hidden. */
  private static final String NAME = "[A-Za-z0-9_][A-Za-z0-9_.-]{0,80}\\.ya?ml";

  private static final int MOST = 200;

  private final Path folder;
  private final Kit kit;
  private final Supplier<Schema> schema;
  private final Consumer<Throwable> faults;
  private final Map<String, Work> open = new TreeMap<>();

  /**
   * A shape that is worked on.
   *
   * @param desk its text
   * @param loads what loads do to it
   * @param news pages that wait for changes
   * @param notes what was ticked and written down
   */
  record Work(Desk desk, Loads loads, News news, Notes notes) {}

  Bench(Path folder, Kit kit, Supplier<Schema> schema, Consumer<Throwable> faults) {
    this.faults = faults;
    this.folder = folder;
    this.kit = kit;
    this.schema = schema;
  }

  Path folder() {
    return folder;
  }

  Kit kit() {
    return kit;
  }

  Schema schema() {
    return schema.get();
  }

  /** The shape files of the folder, by name. */
  List<String> names() {
    return files(false);
  }

  /** The hub files of the folder, by name. */
  List<String> hubs() {
    return files(true);
  }

  private List<String> files(boolean hubs) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> file.getFileName().toString())
          .filter(name -> name.matches(NAME) && !name.endsWith("-bench.yaml"))
          .filter(name -> HubFiles.is(folder.resolve(name)) == hubs)
          .sorted()
          .limit(MOST)
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /**
   * The work on a shape file of the folder, begun where it was not yet.
   *
   * @throws BadInput when there is no such file, or its name leads elsewhere
   */
  synchronized Work work(String name) {
    Work known = open.get(name);
    return known != null ? known : begin(name, Optional.empty());
  }

  /**
   * The path of a new file.
   *
   * @throws BadInput when no new file may have that name, saying why
   */
  synchronized Path free(String name) {
    if (Files.exists(file(name), LinkOption.NOFOLLOW_LINKS) || open.containsKey(name)) {
      throw refused(name, "is there already", "choose another name");
    }
    return file(name);
  }

  /**
   * Begins with a text that is not saved yet.
   *
   * @throws BadInput when a file of that name is there already
   */
  synchronized Work begin(String name, String text) {
    free(name);
    return begin(name, Optional.of(text));
  }

  /**
   * Refuses to begin without a file.
   *
   * @throws BadInput when there is none of that name
   */
  void refuseMissing(String name) {
    if (!Files.isRegularFile(file(name), LinkOption.NOFOLLOW_LINKS)) {
      throw refused(name, "does not exist", "check the name and the folder");
    }
  }

  private Work begin(String name, Optional<String> text) {
    Desk desk = new Desk(file(name), text, kit, schema);
    News news = new News();
    Loads loads = new Loads(desk, news::tell, faults);
    desk.listen(news::tell);
    Work work = new Work(desk, loads, news, new Notes(file(name), kit));
    open.put(name, work);
    return work;
  }

  private Path file(String name) {
    if (!name.matches(NAME) || name.contains("..")) {
      throw refused(
          Problem.shown(name),
          "is no name of a shape file",
          "use letters, digits, - and _, and end it in .yaml");
    }
    Path file = folder.resolve(name);
    if (Files.isSymbolicLink(file)) {
      throw refused(name, "is a link, which is not followed here", "open the file itself");
    }
    return file;
  }

  private static BadInput refused(String name, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(name), "", "", wanted, cure));
  }

  @Override
  public synchronized void close() {
    open.values().forEach(work -> work.loads().close());
    open.values().forEach(work -> work.news().close());
    open.values().forEach(work -> work.desk().close());
  }
}
