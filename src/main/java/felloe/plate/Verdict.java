package felloe.plate;

/** The outcome of a check, from good to bad. */
public enum Verdict {
  /** Within the limit. */
  PASS,
  /** The maker must decide. */
  CAUTION,
  /** Must be changed. */
  FAIL
}
