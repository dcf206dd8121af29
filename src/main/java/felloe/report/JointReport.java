package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.joints.JointCheck;
import felloe.joints.JointCheck.What;
import felloe.joints.JointCure;
import felloe.joints.JointCure.Figure;
import felloe.joints.JointJudgement;
import felloe.joints.JointPlan;
import felloe.joints.JudgedScrew;
import felloe.joints.NutFactor;
import felloe.joints.PlannedJoint;
import felloe.plate.HoleRole;
import felloe.plate.Joint.InNut;
import felloe.plate.Verdict;
import felloe.service.Study;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The screws of hub and grips, told alike wherever they are told. */
public final class JointReport {

  private JointReport() {}

  /** Why the screws of a plate will not do, and what mends them; none when they do. */
  static Telling cure(Study study) {
    return cure(study.joints().judgement(), study.screwCures());
  }

  /** The same of any judgement. */
  static Telling cure(JointJudgement judgement, List<JointCure> cures) {
    if (judgement.met()) {
      return new Telling();
    }
    JudgedScrew worst = judgement.worst().orElseThrow();
    JointCheck check = worst.worst().orElseThrow();
    String fault =
        Phrase.of(
            "Screw {} does not hold: {} ({}). It stands {} of what it must.",
            worst.hole().label(),
            gives(check.what()),
            check.cause(),
            Quantity.percent(check.ratio(), 0));
    String mends =
        cures.isEmpty()
            ? "No figure alone mends it: take larger screws, thicker stock, or another hub."
            : Phrase.of(
                "Any one of these in the shape file mends it: {}.",
                String.join("; ", cures.stream().map(JointReport::cure).toList()));
    return new Telling().callout(Tone.FAIL, List.of(fault, mends));
  }

  private static String cure(JointCure cure) {
    boolean fresh = !cure.key().contains("[") && cure.figure() != Figure.THICKNESS;
    String key = fresh ? Phrase.of("joints, {}: {}", cure.joint(), cure.key()) : cure.key();
    return Phrase.of(
        "{}: {} instead of {}{}",
        key,
        cure.to(),
        cure.from(),
        switch (cure.figure()) {
          case COUNT -> ", with a hub that has as many";
          case CIRCLE -> ", with a hub that has the same";
          default -> "";
        });
  }

  /** How a screw, or the plate round it, gives way. */
  private static String gives(What what) {
    return switch (what) {
      case CLAMP_FORCE -> "plate lifts off";
      case SLIP -> "plate slips";
      case BEARING -> "hole is crushed";
      case SHEAR_OUT -> "plate tears to its edge";
      case NET_SECTION -> "plate tears across";
      case PULL_THROUGH -> "head pulls through";
      case THREAD_STRIP -> "thread strips";
      case SCREW_STRENGTH -> "screw breaks";
    };
  }

  /** The screws, what each clamps and how hard it is tightened; none when none is planned. */
  static Telling plan(JointPlan plan) {
    if (plan.joints().isEmpty()) {
      return new Telling();
    }
    Telling told = new Telling();
    told.head("Screws, with torques to start from");
    told.add(
        Rows.of(plan.joints())
            .wrapped("joint", JointReport::joint)
            .wrapped("screws", JointReport::screws)
            .words("class", j -> j.strength().name())
            .figures("clamps", "mm", j -> Quantity.mm(j.clamped()))
            .figures("in thread", "mm", j -> Quantity.brief(j.engagement(), 1, "mm"))
            .figures("", "N m", j -> torque(j.torque().torque())));
    plan.joints().forEach(joint -> told.say(stack(joint)));
    notes(plan).forEach(note -> told.say("Note, " + note));
    return told.cautions(plan.cautions());
  }

  /** A joint that is named after its holes needs no more. */
  private static String joint(PlannedJoint joint) {
    String labels = joint.labels();
    return joint.name().startsWith(labels) ? labels : joint.name() + " " + labels;
  }

  /** How many of which screws. */
  static String screws(PlannedJoint joint) {
    return Phrase.of("{} {}", joint.holes().size(), joint.screwName());
  }

  static Quantity torque(double torque) {
    return Quantity.fixed(torque, torque < 1 ? 2 : 1, "N m");
  }

  /** What is clamped from the head on, what is let in and what holds the screw, as a sentence. */
  private static String stack(PlannedJoint joint) {
    List<String> words = new ArrayList<>();
    words.add(
        Phrase.of(
            "{}: {}",
            joint.name(),
            joint.parts().stream()
                .map(p -> Phrase.of("{} {}", p.name(), Quantity.brief(p.thickness(), 2, "")))
                .collect(Collectors.joining(", "))));
    List<String> sunk = new ArrayList<>();
    sunk("head", joint.joint().screw().sunk(), sunk);
    sunk("nut", joint.inNut().map(InNut::sunk).orElse(0.0), sunk);
    if (!sunk.isEmpty()) {
      words.add("let in: " + String.join(", ", sunk));
    }
    words.add("into " + into(joint));
    joint
        .beyondNut()
        .map(mm -> Quantity.brief(mm, 1, "mm"))
        .ifPresent(out -> words.add(Phrase.of("{} stand out of it", out)));
    joint
        .bottomRoom()
        .map(mm -> Quantity.brief(mm, 1, "mm"))
        .ifPresent(room -> words.add(Phrase.of("{} to the bottom", room)));
    return String.join("; ", words) + ".";
  }

  private static void sunk(String what, double deep, List<String> words) {
    if (deep > 0) {
      words.add(Phrase.of("{} {}", what, Quantity.brief(deep, 2, "")));
    }
  }

  /** What holds a screw, in words. */
  public static String into(PlannedJoint joint) {
    return joint
        .inNut()
        .map(n -> Entry.nameOf(n.nut()) + " nut, " + joint.nut().orElseThrow().standard())
        .orElseGet(() -> "tapped " + Entry.nameOf(joint.tapped().orElseThrow().material()));
  }

  /** What the maker should know besides, whole sentences. */
  public static List<String> notes(JointPlan plan) {
    List<String> notes = new ArrayList<>();
    for (PlannedJoint joint : plan.joints()) {
      List<String> own = new ArrayList<>();
      joint
          .depthWanted()
          .map(mm -> Quantity.brief(mm, 1, "mm"))
          .ifPresent(
              depth ->
                  own.add(
                      Phrase.of(
                          "measure the depth of full thread in the hub; this screw needs at least"
                              + " {}. Write it into the shape file under joints: into: depth.",
                          depth)));
      joint
          .coned()
          .ifPresent(
              part ->
                  own.add(
                      Phrase.of(
                          "countersink the {} {} to {} across, {} deep down to the hole; creep up"
                              + " on it with a screw.",
                          part.name(),
                          Quantity.brief(Math.toDegrees(joint.headSize().angle()), 0, "degrees"),
                          Quantity.brief(joint.headSize().diameter(), 1, "mm"),
                          Quantity.mm(joint.headSize().coneDepth(joint.hole())))));
      joint.notes().forEach(note -> own.add(note + "."));
      if (!joint.torque().limitedBy().equals("the screw")) {
        own.add(
            Phrase.of(
                "the torque is less than the screw could bear, to spare {}.",
                joint.torque().limitedBy()));
      }
      own.forEach(note -> notes.add(joint.name() + ": " + note));
    }
    plan.unscrewed().forEach(hole -> notes.add(hole.words()));
    return notes;
  }

  /** Where the figures of a plan come from; none when no screw is planned. */
  static Rows<Words.Source> sources(JointPlan plan) {
    List<Words.Source> sources = new ArrayList<>();
    for (PlannedJoint joint : plan.joints()) {
      NutFactor factor = joint.torque().factor();
      sources.add(
          new Words.Source(
              "nut factor, " + joint.name(),
              Phrase.of("{} to {}", share(factor.low()), share(factor.high())),
              Phrase.of(
                  "{}: clamps with {} to {}",
                  factor.basis(),
                  force(joint.torque().leastClamp()).figure(),
                  force(joint.torque().clamp()))));
    }
    plan.judgement().figures().forEach(figure -> sources.add(Words.Source.of(figure)));
    return Words.sources(sources);
  }

  /** Each hub screw, and of the grip screws the tightest; none when no screw is planned. */
  public static Telling judged(JointJudgement judgement) {
    if (judgement.screws().isEmpty()) {
      return new Telling();
    }
    Map<List<String>, List<JudgedScrew>> alike = new LinkedHashMap<>();
    Consumer<JudgedScrew> tell =
        s -> alike.computeIfAbsent(told(s), words -> new ArrayList<>()).add(s);
    judgement.screws().stream().filter(s -> s.joint().role() == HoleRole.BOLT).forEach(tell);
    judgement.screws().stream()
        .filter(s -> s.joint().role() == HoleRole.GRIP && s.worst().isPresent())
        .min(Comparator.comparingDouble(s -> s.worst().orElseThrow().ratio()))
        .ifPresent(tell);
    Telling told = new Telling();
    told.head("Screws, the most in any case at limit load");
    told.add(
        Rows.of(List.copyOf(alike.values()))
            .wrapped("screw", JointReport::labels)
            .figures("tension", "N", same -> force(same.get(0).tension()))
            .wrapped("in", same -> same.get(0).tensionCause())
            .figures("shear", "N", same -> force(same.get(0).shear()))
            .wrapped("in", same -> same.get(0).shearCause())
            .wrapped("gives way first", same -> worst(same.get(0), c -> gives(c.what())))
            .figures("holds", same -> worst(same.get(0), c -> LoadReport.margin(c.ratio())))
            .words("", same -> verdict(same.get(0).verdict())));
    told.say(
        "Holds: so many times what acts, with all factors, and 1 is enough. Of grip screws the"
            + " weakest is told.");
    doubts(judgement).forEach(doubt -> told.say(doubt));
    return told.fold(Depth.ALL, checks(judgement));
  }

  /** What is told of a screw, by which those are known that are told alike. */
  private static List<String> told(JudgedScrew screw) {
    return List.of(
        force(screw.tension()).text(),
        screw.tensionCause(),
        force(screw.shear()).text(),
        screw.shearCause(),
        worst(screw, c -> gives(c.what())),
        worst(screw, c -> LoadReport.margin(c.ratio())),
        screw.verdict().name());
  }

  private static String labels(List<JudgedScrew> screws) {
    return PlannedJoint.inShort(screws.stream().map(s -> s.hole().label()).toList());
  }

  private static Quantity share(double of) {
    return Quantity.brief(of, 2, "");
  }

  private static Quantity force(double newtons) {
    return Quantity.fixed(newtons, 0, "N");
  }

  private static String worst(JudgedScrew screw, Function<JointCheck, String> words) {
    return screw.worst().map(words).orElse("");
  }

  private static Cell verdict(Verdict verdict) {
    return switch (verdict) {
      case PASS -> new Cell.Verdict(Tone.WELL, "");
      case CAUTION -> new Cell.Verdict(Tone.CAUTION, "caution");
      case FAIL -> new Cell.Verdict(Tone.FAIL, "NOT AS WANTED");
    };
  }

  /** Why screws are told with caution, a sentence each. */
  private static List<String> doubts(JointJudgement judgement) {
    Map<String, Set<String>> doubts = new LinkedHashMap<>();
    for (JudgedScrew screw : judgement.screws()) {
      for (JointCheck check : screw.checks()) {
        if (check.verdict() == Verdict.CAUTION) {
          String why =
              check.known()
                  ? "too little, but nobody drives a mock-up, so that it only warns"
                  : check.basis();
          doubts.computeIfAbsent(why, w -> new LinkedHashSet<>()).add(gives(check.what()));
        }
      }
    }
    return doubts.entrySet().stream()
        .map(one -> Phrase.of("Caution, {}: {}.", String.join(", ", one.getValue()), one.getKey()))
        .toList();
  }

  /** Every way to give way, of the screw that holds the least against it. */
  private static Rows<Weakest> checks(JointJudgement judgement) {
    List<Weakest> all = new ArrayList<>();
    for (What what : What.values()) {
      judgement.screws().stream()
          .flatMap(s -> s.check(what).map(check -> new Weakest(s, check)).stream())
          .min(Comparator.comparingDouble(one -> one.check().ratio()))
          .ifPresent(all::add);
    }
    return Rows.of(all)
        .words("way to give way", one -> gives(one.check().what()))
        .words("screw", one -> one.screw().hole().label())
        .figures("acts", one -> one.figure(one.check().demand()))
        .figures("stands", one -> one.figure(one.check().capacity()))
        .figures("holds", one -> LoadReport.margin(one.check().ratio()))
        .wrapped("case", one -> one.check().cause())
        .wrapped("basis", one -> one.check().basis());
  }

  /** A screw with one way to give way. */
  private record Weakest(JudgedScrew screw, JointCheck check) {
    Quantity figure(double value) {
      return Quantity.fixed(value, check.unit().equals("N") ? 0 : 1, check.unit());
    }
  }
}
