package felloe.laminate;

import java.util.ArrayList;
import java.util.List;

/**
 * What a load, or a change of temperature, does to a laminate.
 *
 * @param deformation of the whole
 * @param plies from the back
 */
public record LaminateResponse(Deformation deformation, List<PlyResponse> plies) {

  public LaminateResponse {
    plies = List.copyOf(plies);
  }

  static LaminateResponse of(Laminate laminate, Deformation deformation, double kelvin) {
    List<PlyResponse> plies = new ArrayList<>();
    for (int i = 0; i < laminate.plies().size(); i++) {
      Ply ply = laminate.plies().get(i);
      plies.add(
          new PlyResponse(
              i + 1,
              ply,
              PlyPoint.of(ply, laminate.face(i), deformation, kelvin),
              PlyPoint.of(ply, laminate.face(i + 1), deformation, kelvin)));
    }
    return new LaminateResponse(deformation, plies);
  }
}
