package felloe.job;

/**
 * A job: what it takes, in what order it is done, what is measured. The front door of this room.
 *
 * @param parts what it was put together from
 * @param order the acts, in order
 * @param bill what it takes
 * @param readings what is measured
 */
public record JobPlan(Parts parts, WorkOrder order, Bill bill, Readings readings) {

  /** The job of a plate. */
  public static JobPlan of(Parts parts) {
    WorkOrder order = WorkOrder.of(parts);
    return new JobPlan(parts, order, Bill.of(parts, order), Readings.of(parts, order));
  }
}
