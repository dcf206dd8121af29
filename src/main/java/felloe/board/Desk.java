package felloe.board;

import felloe.board.History.Step;
import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;

/**
 * One shape file that is worked on: its text with all earlier ones, what is on the disk, and what
 * the text says. Several pages may look at it; each change must name the state that it starts from.
 */
final class Desk implements AutoCloseable {

  private static final int LARGEST = 8 << 20;

  private final Path file;
  private final Path folder;
  private final Kit kit;
  private final Supplier<Schema> schema;
  private final Kept kept;
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

  private History history;
  private int revision = 1;

  /** What the file had when it was last read or written here; null where there is none yet. */
  private String disk;

  private Optional<String> found;
  private Seen seen;
  private Seen good;
  private String hand = "";
  private boolean elsewhere;

  /**
   * A state of the work.
   *
   * @param revision counts all changes
   * @param seen what the text says
   * @param good the last that could be drawn; the same as {@code seen} where that can be
   * @param steps all states
   * @param at which of them it is
   * @param saved whether the file on the disk has this text
   * @param disk whether the file was changed by somebody else meanwhile
   * @param kept whether there is work of before that was not saved
   */
  record State(
      int revision,
      Seen seen,
      Seen good,
      List<Step> steps,
      int at,
      boolean saved,
      boolean disk,
      boolean kept) {}

  /** A change started from a state that is not the last one. */
  static final class Stale extends Exception {
    private static final long serialVersionUID = 1L;

    Stale() {
      super("changed elsewhere", null, false, false);
    }
  }

  /**
   * Begins with a file.
   *
   * @param text to begin with where there is no such file yet
   * @throws BadInput when it cannot be read
   */
  Desk(Path file, Optional<String> text, Kit kit, Supplier<Schema> schema) {
    this.file = file;
    this.folder = file.toAbsolutePath().getParent();
    this.kit = kit;
    this.schema = schema;
    this.kept = new Kept(file, kit);
    this.disk = onDisk().orElse(null);
    String begin =
        text.or(() -> Optional.ofNullable(disk))
            .orElseThrow(
                () ->
                    new BadInput(
                        new Problem(
                            Place.ofFile(file.toString()),
                            "",
                            "",
                            "does not exist",
                            "check the name and the folder")));
    this.history = new History(begin, "begun");
    this.seen = Seen.of(name(), begin, folder);
    this.good = seen;
    this.found = kept.text().filter(words -> !words.equals(begin));
    if (disk == null && found.isEmpty()) {
      keep(begin);
    }
  }

  /** The file's name. */
  String name() {
    return file.getFileName().toString();
  }

  Path folder() {
    return folder;
  }

  Path file() {
    return file;
  }

  /** Has something told of each change. */
  void listen(Runnable listener) {
    listeners.add(listener);
  }

  void silence(Runnable listener) {
    listeners.remove(listener);
  }

  private void tell() {
    listeners.forEach(Runnable::run);
  }

  /** The state as it is, after a look at the disk. */
  synchronized State state() {
    look();
    String text = history.now().text();
    return new State(
        revision,
        seen,
        good,
        history.all(),
        history.at(),
        text.equals(disk),
        elsewhere,
        found.isPresent());
  }

  /** A file that was changed by an editor is taken where nothing was changed here, else told. */
  private void look() {
    String there = onDisk().orElse(null);
    if (there == null || there.equals(disk)) {
      return;
    }
    boolean clean = history.now().text().equals(disk);
    if (there.equals(history.now().text())) {
      disk = there;
      elsewhere = false;
    } else if (clean) {
      disk = there;
      take(there, "changed on the disk");
    } else {
      elsewhere = true;
    }
  }

  private Optional<String> onDisk() {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      return bytes.length > LARGEST
          ? Optional.empty()
          : Optional.of(new String(bytes, StandardCharsets.UTF_8));
    } catch (NoSuchFileException gone) {
      return Optional.empty();
    } catch (IOException cannot) {
      return Optional.empty();
    }
  }

  /**
   * Does what a page asks for.
   *
   * @param base the revision that the page has
   * @throws Stale when that is not the last one
   * @throws BadInput when it cannot be done, with what can
   */
  State act(int base, Act act) throws Stale {
    State state;
    synchronized (this) {
      look();
      if (base != revision) {
        throw new Stale();
      }
      carryOut(act);
      state = state();
    }
    tell();
    return state;
  }

  private void carryOut(Act act) {
    if (found.isPresent() && !(act instanceof Act.TakeKept || act instanceof Act.DropKept)) {
      // Who goes on without a word about it still finds it among the states.
      History all = new History(found.get(), "what was not saved");
      history.all().forEach(step -> all.then(step.text(), step.did()));
      history = all;
      found = Optional.empty();
    }
    if (act instanceof Act.Undo) {
      history.undo();
      renewed();
    } else if (act instanceof Act.Redo) {
      history.redo();
      renewed();
    } else if (act instanceof Act.TakeDisk) {
      disk = onDisk().orElse(disk);
      elsewhere = false;
      take(disk, "taken from the disk");
    } else if (act instanceof Act.TakeKept) {
      found.ifPresent(text -> take(text, "taken from what was not saved"));
      found = Optional.empty();
    } else if (act instanceof Act.DropKept) {
      found = Optional.empty();
      kept.drop();
      revision++;
    } else {
      edit(act);
    }
    hand = act.hand();
  }

  /** What one hand does in one go is one step. */
  private void edit(Act act) {
    String text = edited(act);
    if (act.hand().isEmpty() || !act.hand().equals(hand)) {
      take(text, did(act));
    } else {
      history.amend(text, did(act));
      renewed();
    }
  }

  private String edited(Act act) {
    if (act instanceof Act.Drag drag) {
      return dragged(drag);
    }
    if (act instanceof Act.Text whole) {
      return whole.text();
    }
    Editing editing = new Editing(schema.get(), name(), history.now().text());
    if (act instanceof Act.Write write) {
      return editing.written(write.path(), write.text());
    }
    if (act instanceof Act.Step step) {
      return editing.stepped(step.path(), step.by(), step.fine());
    }
    if (act instanceof Act.Add add) {
      return editing.added(add.path(), add.key());
    }
    if (act instanceof Act.Append append) {
      return editing.appended(append.path());
    }
    if (act instanceof Act.Remove remove) {
      return editing.removed(remove.path());
    }
    throw new IllegalStateException("no change of a text: " + act);
  }

  private static String did(Act act) {
    if (act instanceof Act.Drag drag) {
      return "moved " + drag.path();
    }
    if (act instanceof Act.Write write) {
      return "changed " + write.path();
    }
    if (act instanceof Act.Step step) {
      return "changed " + step.path();
    }
    if (act instanceof Act.Add add) {
      return "added " + Steps.key(add.path(), add.key());
    }
    if (act instanceof Act.Append append) {
      return "added to " + append.path();
    }
    if (act instanceof Act.Remove remove) {
      return "took out " + remove.path();
    }
    return "changed the text";
  }

  private String dragged(Act.Drag drag) {
    List<Handle> handles = handles();
    Handle handle =
        handles.stream()
            .filter(one -> one.path().equals(drag.path()))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadInput(
                        new Problem(
                            Place.ofFile(name()),
                            drag.path(),
                            "",
                            "cannot be moved",
                            "change its value instead")));
    String value = Snap.written(handle, drag.to(), drag.fine(), handles);
    Editing editing = new Editing(schema.get(), name(), history.now().text());
    return handle.kind() == Handle.Kind.RISE
        ? editing.risen(drag.path(), value)
        : editing.written(drag.path(), value);
  }

  /** What can be taken hold of on the last good drawing. */
  private List<Handle> handles() {
    return Reply.handles(schema.get(), seen, good);
  }

  private void take(String text, String did) {
    history.then(text, did);
    renewed();
  }

  private void renewed() {
    revision++;
    String text = history.now().text();
    if (!text.equals(seen.text())) {
      seen = text.equals(good.text()) ? good : Seen.of(name(), text, folder);
    }
    if (seen.drawn()) {
      good = seen;
    }
    keep(text);
  }

  /** What is not saved is kept beside the file. */
  private void keep(String text) {
    if (text.equals(disk)) {
      kept.drop();
    } else {
      kept.keep(text);
    }
  }

  /**
   * Writes the text into its file.
   *
   * @param over whether also over what somebody else wrote there meanwhile
   * @throws CannotWrite when the disk says no
   * @throws BadInput when somebody else wrote there
   */
  State save(int base, boolean over) throws CannotWrite, Stale {
    State state;
    synchronized (this) {
      look();
      if (base != revision) {
        throw new Stale();
      }
      if (elsewhere && !over) {
        throw new BadInput(
            new Problem(
                Place.ofFile(name()),
                "",
                "",
                "was changed on the disk meanwhile",
                "take what is there, or save over it"));
      }
      String text = history.now().text();
      kit.replace(file, text);
      disk = text;
      elsewhere = false;
      kept.drop();
      state = state();
    }
    tell();
    return state;
  }

  @Override
  public void close() {
    kept.close();
  }
}
