package felloe.load;

import java.util.List;

/**
 * How far the hands of a case move, and what the screws take.
 *
 * @param load the case
 * @param atLoads movement under each hand along its force, mm
 * @param bolts forces of the screws; empty when clamped
 */
record Movement(LoadCase load, List<Double> atLoads, List<CaseField.BoltForce> bolts) {

  Movement {
    atLoads = List.copyOf(atLoads);
    bolts = List.copyOf(bolts);
  }
}
