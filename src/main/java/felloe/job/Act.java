package felloe.job;

/** What is done to make a wheel, each act once, in the usual order of the trade. */
public enum Act {
  /** The check sheet is printed and its bars measured. */
  CHECK_PRINT,
  /** The template is printed, measured and joined. */
  PRINT_TEMPLATE,
  /** The mould is waxed and marked. */
  WAX_MOULD,
  /** The plies are cut from the roll. */
  CUT_CLOTH,
  /** The plies are wetted out and pressed. */
  LAY_UP,
  /** The resin sets. */
  CURE,
  /** It is warmed until it has its strength. */
  POST_CURE,
  /** The thickness of panel or sheet is measured. */
  MEASURE_STOCK,
  /** Test strips are sawn from the panel. */
  CUT_STRIPS,
  /** Test strips are broken. */
  BREAK_STRIPS,
  /** The template is stuck on the stock. */
  STICK_TEMPLATE,
  /** The centres of holes are marked by hand. */
  MARK_HOLES,
  /** Holes of one size are drilled by hand. */
  DRILL_HOLES,
  /** A machine makes the holes, and windows and outline where they are not sawn by hand. */
  MACHINE,
  /** The hub pattern is measured. */
  MEASURE_HOLES,
  /** Holes that a saw starts from and turns in are drilled in the waste. */
  START_HOLES,
  /** Windows are sawn outside the rough line. */
  SAW_WINDOWS,
  /** The outline is sawn outside the rough line. */
  SAW_OUTLINE,
  /** What is left is filed off, to the finish line. */
  FINISH,
  /** Texts and marks are cut into a face. */
  ENGRAVE,
  /** Edges are broken or chamfered. */
  BREAK_EDGES,
  /** Cut edges are sealed. */
  SEAL_EDGES,
  /** The bare plate is weighed. */
  WEIGH,
  /** The plate is screwed to its hub. */
  BOLT,
  /** The joint settles and is tightened again. */
  SETTLE,
  /** The plate is proved with weights. */
  PROVE,
  /** The grips are put on. */
  FIT_GRIPS,
  /** What sits in windows and holes is put in. */
  FIT_BODIES,
  /** The hub screws are locked for good, one at a time. */
  LOCK,
  /** Two people sign for it. */
  SIGN
}
