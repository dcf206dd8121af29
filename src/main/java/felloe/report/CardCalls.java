package felloe.report;

/**
 * How the program is called for what a job card leads to, each as it is typed, the shape named.
 *
 * @param card for this card with its loads reckoned
 * @param template for template and check sheet
 * @param layup for the pages of the lay-up
 * @param drill for the drilling sheet and the form for readings
 * @param cut for the drawing of what is sawn
 * @param load for the loads
 * @param proof for the proof load
 * @param measured to judge the readings of the drilled plate
 * @param tested to judge broken strips
 */
public record CardCalls(
    String card,
    String template,
    String layup,
    String drill,
    String cut,
    String load,
    String proof,
    String measured,
    String tested) {}
