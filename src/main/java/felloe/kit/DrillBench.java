package felloe.kit;

import felloe.drawing.Stamp;
import felloe.drilling.DrillingPlan;
import felloe.joints.ClampedPart;
import felloe.joints.PlannedJoint;
import felloe.out.MeasuredForm;
import felloe.out.PdfWriter;
import felloe.out.StepCsv;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes the drilling sheet and what goes with it. */
final class DrillBench {

  private final TemplateOptions options;

  private DrillBench(TemplateOptions options) {
    this.options = options;
  }

  /**
   * A bench that prints as a request says.
   *
   * @throws felloe.plate.BadInput with everything that is wrong with the request
   */
  static DrillBench of(TemplateRequest request) {
    return new DrillBench(Printing.of(request));
  }

  /** Schedule and order of work of a plate. */
  static DrillAnswer answer(Reading.Studied studied) {
    return answer(studied, plan(studied));
  }

  private static DrillAnswer answer(Reading.Studied studied, DrillingPlan plan) {
    return DrillAnswer.of(studied.answer(), plan, JointAnswer.of(studied.joints()));
  }

  private static DrillingPlan plan(Reading.Studied studied) {
    DrillingPlan plan = DrillingPlan.of(studied.plate(), studied.fit());
    for (PlannedJoint joint : studied.joints().joints()) {
      if (joint.coned().isPresent() && joint.coned().get().name().equals(ClampedPart.PLATE)) {
        plan =
            plan.countersunk(
                joint.holes().stream().map(Hole::label).toList(),
                Math.toDegrees(joint.headSize().angle()),
                joint.headSize().diameter(),
                joint.headSize().coneDepth(joint.hole()));
      }
    }
    return plan;
  }

  /**
   * Writes the files of a plate.
   *
   * @throws CannotWrite when the disk says no
   */
  DrillSheetAnswer sheet(Reading.Studied studied, LooseFiles files, Path out) throws CannotWrite {
    Plate plate = studied.plate();
    KitNames names = new KitNames(plate.name());
    DrillingPlan plan = plan(studied);
    DrillAnswer answer = answer(studied, plan);
    PageSet pages =
        Template.drilling(
            plate, options, DrillText.of(answer), answer.cautions(), stamp(studied, plan));
    List<KitFile> made = new ArrayList<>();
    made.add(new KitFile(names.drill(options.paper().title()), PdfWriter.write(pages)));
    made.add(new KitFile(names.drillSteps(), StepCsv.write(plan)));
    Optional<Path> kept = Optional.empty();
    if (MeasuredForm.has(plan)) {
      KitFile form = new KitFile(names.measured(), MeasuredForm.write(plate, plan));
      Path place = OutFolder.resolve(out, form.name());
      if (isAnother(place, form.bytes())) {
        kept = Optional.of(place);
      } else {
        made.add(form);
      }
    }
    return new DrillSheetAnswer(answer, studied.answer(), files.write(made), kept);
  }

  /** What speaks against drilling: what fails, or that the screws do not enter. */
  private static Stamp stamp(Reading.Studied studied, DrillingPlan plan) {
    Stamp stamp = Stamp.of(Stamp.Act.DRILL, studied.answer().findings());
    boolean stops = stamp.isNone() && plan.stop().isPresent();
    return stops ? new Stamp(Stamp.Act.DRILL, 0, List.of("misses the hub")) : stamp;
  }

  /** Whether there is a file that says something else, or that cannot be read. */
  private static boolean isAnother(Path place, byte[] bytes) {
    if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try {
      return Files.size(place) != bytes.length || !Arrays.equals(Files.readAllBytes(place), bytes);
    } catch (IOException unreadable) {
      return true;
    }
  }
}
