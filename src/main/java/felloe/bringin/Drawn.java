package felloe.bringin;

import java.util.List;

/**
 * What a file draws, in millimetres, y up, about the file's own origin.
 *
 * @param chains in the order of the file
 * @param passedOver what the file holds that is no outline, such as {@code 3 texts}
 * @param notes what else the maker should know, in sentences
 * @param unsure how far figures may be off
 */
record Drawn(List<Chain> chains, List<String> passedOver, List<String> notes, Unsure unsure) {
  Drawn {
    chains = List.copyOf(chains);
    passedOver = List.copyOf(passedOver);
    notes = List.copyOf(notes);
  }
}
