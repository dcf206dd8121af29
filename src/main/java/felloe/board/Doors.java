package felloe.board;

import felloe.board.Views.View;
import felloe.files.CannotWrite;
import felloe.files.OutFile;
import felloe.geometry.Point;
import felloe.kit.KitFiles;
import felloe.kit.TemplateFiles;
import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.report.BesideDrawing;
import felloe.service.Progress;
import felloe.service.Pull;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;

/** Which call leads where; each answer is made from the same functions as the command line's. */
final class Doors implements AutoCloseable {

  private static final String SHAPE = "shape";

  private final Bench bench;
  private final Optional<String> first;
  private final BoardTalk talk;
  private final Views views;
  private final Beginning beginning;
  private final Questions questions;
  private final Calliper calliper;
  private final Outline outline;
  private final Against against;
  private final Solids solids = new Solids();

  /** It takes all there is of the machine, so one at a time. */
  private final Semaphore pulling = new Semaphore(1);

  /**
   * @param first the shape file that the front page leads to
   * @param faults is told of faults of the program that no answer tells
   */
  Doors(Bench bench, Optional<String> first, BoardTalk talk, Consumer<Throwable> faults) {
    this.bench = bench;
    this.first = first;
    this.talk = talk;
    this.views = new Views(talk);
    this.beginning = new Beginning(bench);
    this.questions = new Questions(bench, faults);
    this.outline = new Outline(bench);
    this.calliper = new Calliper(bench);
    this.against = new Against(bench);
  }

  /** The answer to a call. */
  Answer answer(Call call) {
    try {
      return lead(call);
    } catch (BadInput bad) {
      return Answer.refused(422, String.join("\n", bad.lines()));
    } catch (CannotWrite refused) {
      return Answer.refused(422, refused.getMessage());
    } catch (Desk.Stale stale) {
      Bench.Work work = bench.work(call.step(1));
      return Answer.json(409, reply(work, call));
    }
  }

  private Answer lead(Call call) throws CannotWrite, Desk.Stale {
    String door = call.step(0);
    int steps = call.way().size();
    if (steps == 0) {
      return first.isPresent() && !call.changes()
          ? Answer.moved("/shape/" + first.get())
          : Answer.html(beginning.page());
    }
    if (door.equals("start") && steps == 1) {
      return call.changes() ? beginning.begin(call) : Answer.html(beginning.page());
    }
    if (door.equals("start") && call.step(1).equals("questions")) {
      return questions.answer(call).orElseGet(Doors::nothing);
    }
    if (door.equals("start") && call.step(1).equals("outline") && steps == 2 && call.changes()) {
      return outline.bring(call);
    }
    if (door.equals("start") && call.step(1).equals("photo-frame") && steps == 2) {
      OutFile sheets = TemplateFiles.photoFrame(talk.options());
      return Answer.file("application/pdf", sheets.bytes(), sheets.name());
    }
    if (door.equals("hub")) {
      return calliper.answer(call).orElseGet(Doors::nothing);
    }
    if (door.equals("parts") && steps == 2) {
      return Answer.part(call.step(1)).orElseGet(Doors::nothing);
    }
    if (door.equals(SHAPE) && steps == 2) {
      Bench.Work work = bench.work(call.step(1));
      return Answer.html(Shell.board(work.desk().name()));
    }
    if (door.equals(SHAPE) && steps == 3) {
      return work(call, bench.work(call.step(1)));
    }
    return nothing();
  }

  private static Answer nothing() {
    return Answer.refused(404, "There is nothing here.");
  }

  private Answer work(Call call, Bench.Work work) throws CannotWrite, Desk.Stale {
    return switch (call.step(2)) {
      case "state" -> Answer.json(200, reply(work, call));
      case "act" -> act(call, work);
      case "save" -> save(call, work);
      case "view" -> view(call, work);
      case "notes" -> notes(call, work);
      case "solid" -> solid(call, work);
      case "pull" -> pull(call, work);
      case "kit" -> kit(call, work);
      default -> nothing();
    };
  }

  /**
   * Begins with a shape and makes the first answer to a page, though none asks yet: most of the
   * time it takes goes to reading the program itself, and a browser takes as long to start.
   *
   * @throws BadInput when the shape cannot be read at all
   */
  void begin(String name) {
    Bench.Work work = bench.work(name);
    Answer.json(200, reply(work.desk().state(), work, 0, Optional.empty()));
  }

  private Json.Members reply(Bench.Work work, Call call) {
    return reply(work.desk().state(), work, call);
  }

  private Json.Members reply(Desk.State state, Bench.Work work, Call call) {
    int form = call.number("form").orElse(0);
    return reply(state, work, form, against.plate(call.word("against"), state, work.desk()));
  }

  private Json.Members reply(Desk.State state, Bench.Work work, int form, Optional<Plate> other) {
    return Reply.of(state, bench.schema(), work.desk().name(), form, other)
        .with("others", Json.array(bench.names(), Json::text))
        .with("loads", work.loads().reply());
  }

  private Answer act(Call call, Bench.Work work) throws Desk.Stale {
    Optional<Act> act = call.changes() ? asked(call) : Optional.empty();
    if (act.isEmpty()) {
      return Answer.refused(400, "It is not said what to do.");
    }
    Desk.State state = work.desk().act(call.number("base").orElse(-1), act.get());
    return Answer.json(200, reply(state, work, call));
  }

  private static Optional<Act> asked(Call call) {
    String path = call.word("path");
    boolean fine = call.truth("fine");
    return Optional.ofNullable(
        switch (call.word("act")) {
          case "write" -> new Act.Write(path, call.word("value"), call.word("hand"));
          case "step" -> new Act.Step(path, call.number("by").orElse(0), fine);
          case "add" -> new Act.Add(path, call.word("key"));
          case "append" -> new Act.Append(path);
          case "remove" -> new Act.Remove(path);
          case "drag" -> drag(call, path, fine);
          case "text" -> new Act.Text(call.word("value"), call.word("hand"));
          case "undo" -> new Act.Undo();
          case "redo" -> new Act.Redo();
          case "take-disk" -> new Act.TakeDisk();
          case "take-kept" -> new Act.TakeKept();
          case "drop-kept" -> new Act.DropKept();
          default -> null;
        });
  }

  private static Act drag(Call call, String path, boolean fine) {
    Optional<Double> x = call.figure("x");
    Optional<Double> y = call.figure("y");
    return x.isEmpty() || y.isEmpty()
        ? null
        : new Act.Drag(path, new Point(x.get(), y.get()), fine, call.word("hand"));
  }

  private Answer save(Call call, Bench.Work work) throws CannotWrite, Desk.Stale {
    if (!call.changes()) {
      return Answer.refused(405, "That is not done here.");
    }
    Desk.State state = work.desk().save(call.number("base").orElse(-1), call.truth("over"));
    return Answer.json(200, reply(state, work, call));
  }

  /** A view as a part of the page, or as a file to keep. */
  private Answer view(Call call, Bench.Work work) {
    String name = call.word("name");
    Optional<View> view =
        List.of(View.values()).stream().filter(one -> Views.word(one).equals(name)).findFirst();
    if (view.isEmpty() && !name.equals("drawing")) {
      return nothing();
    }
    if (call.truth("save")) {
      OutFile file = views.saved(view, work);
      String type = file.name().endsWith(".png") ? "image/png" : "application/pdf";
      return Answer.file(type, file.bytes(), file.name());
    }
    return view.map(one -> Answer.html(views.of(one, work))).orElseGet(Doors::nothing);
  }

  /** What was ticked and written down at the bench. */
  private static Answer notes(Call call, Bench.Work work) throws CannotWrite {
    if (call.changes()) {
      work.notes().note(call.word("of"), call.word("is"));
    }
    return Answer.json(200, work.notes().json());
  }

  private Answer solid(Call call, Bench.Work work) {
    Seen seen = work.desk().state().seen();
    if (seen.study().isEmpty()) {
      return nothing();
    }
    return solids
        .part(call.number("part").orElse(-1), seen.text(), seen.study().get())
        .map(bytes -> new Answer(200, "model/stl", bytes, Map.of()))
        .orElseGet(() -> new Answer(204, "model/stl", new byte[0], Map.of()));
  }

  /** Values that would bring a figure to where it is wanted. */
  private Answer pull(Call call, Bench.Work work) {
    Optional<Pull.Target> target =
        List.of(Pull.Target.values()).stream()
            .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(call.word("figure")))
            .findFirst();
    Optional<Double> by = call.figure("by").filter(d -> d != 0);
    if (target.isEmpty() || by.isEmpty()) {
      return Answer.refused(422, "Say by how much: a number above or below zero.");
    }
    if (!pulling.tryAcquire()) {
      return Answer.refused(422, "Another figure is being pulled; wait until that is done.");
    }
    try {
      Desk desk = work.desk();
      Studies studies = new Studies(desk.folder(), Optional.empty());
      Study study = studies.one(ShapeSource.text(desk.name(), desk.state().seen().text()));
      Pull.Outcome outcome =
          Pull.of(study, studies, desk.folder(), target.get(), by.get(), Progress.SILENT);
      return Answer.json(
          200,
          Json.object()
              .with("words", BesideDrawing.pulled(outcome))
              .with(
                  "ways",
                  Json.array(
                      BesideDrawing.ways(outcome),
                      way ->
                          Json.object()
                              .with("path", way.path())
                              .with("to", way.to())
                              .with("words", way.words()))));
    } finally {
      pulling.release();
    }
  }

  /** The whole kit: to keep as one file, or written where the command line writes it. */
  private Answer kit(Call call, Bench.Work work) throws CannotWrite {
    if (!work.desk().state().saved()) {
      return Answer.refused(
          422, "Save first: a kit belongs to the shape file as it is on the disk.");
    }
    Study study = KitBox.study(work.desk());
    try (KitFiles files = new KitFiles()) {
      KitFiles.Made made = files.of(study, talk.calls().apply(study), talk.options());
      if (call.changes()) {
        return KitBox.written(made, bench);
      }
      return Answer.file("application/zip", KitBox.zip(made), study.plate().name() + "-kit.zip");
    }
  }

  @Override
  public void close() {
    questions.close();
  }
}
