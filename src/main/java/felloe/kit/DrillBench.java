package felloe.kit;

import felloe.drawing.Stamp;
import felloe.drilling.DrillingPlan;
import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.files.Written;
import felloe.joints.ClampedPart;
import felloe.joints.PlannedJoint;
import felloe.out.MeasuredForm;
import felloe.out.PdfWriter;
import felloe.out.StepCsv;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.service.Study;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
  static DrillAnswer answer(Study studied) {
    return answer(studied, plan(studied));
  }

  private static DrillAnswer answer(Study studied, DrillingPlan plan) {
    return DrillAnswer.of(studied, plan, JointAnswer.of(studied.joints()));
  }

  private static DrillingPlan plan(Study studied) {
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
  DrillSheetAnswer sheet(Study studied, Path out, Disk disk) throws CannotWrite {
    Plate plate = studied.plate();
    KitNames names = new KitNames(plate.name());
    DrillingPlan plan = plan(studied);
    DrillAnswer answer = answer(studied, plan);
    PageSet pages =
        Template.drilling(
            plate, options, DrillText.of(answer), answer.cautions(), stamp(studied, plan));
    List<OutFile> made = new ArrayList<>();
    made.add(new OutFile(names.drill(options.paper().title()), PdfWriter.write(pages)));
    made.add(new OutFile(names.drillSteps(), StepCsv.write(plan)));
    if (MeasuredForm.has(plan)) {
      made.add(new OutFile(names.measured(), MeasuredForm.write(plate, plan), true));
    }
    FileSet set = KitNames.set("drill", plate, made);
    Written written = Transaction.into(out, disk).here(set).commit();
    return new DrillSheetAnswer(
        answer, studied, written.files(), written.kept().stream().findFirst());
  }

  /** What speaks against drilling: what fails, or that the screws do not enter. */
  private static Stamp stamp(Study studied, DrillingPlan plan) {
    Stamp stamp = Stamp.of(Stamp.Act.DRILL, studied.findings());
    boolean stops = stamp.isNone() && plan.stop().isPresent();
    return stops ? new Stamp(Stamp.Act.DRILL, 0, List.of("misses the hub")) : stamp;
  }
}
