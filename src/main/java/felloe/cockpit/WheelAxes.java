package felloe.cockpit;

import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Spot;

/**
 * From the car's axes to the wheel's and back. The wheel's: x to the driver's right, y up along the
 * plate, z along the column toward the driver, from the end of the column.
 */
public record WheelAxes(double hub, double sine, double cosine) {

  public static WheelAxes of(Cockpit cockpit) {
    return new WheelAxes(cockpit.hub(), Math.sin(cockpit.column()), Math.cos(cockpit.column()));
  }

  public Spot toWheel(Spot car) {
    double up = car.y() - hub;
    return new Spot(car.x(), up * cosine - car.z() * sine, up * sine + car.z() * cosine);
  }

  public Spot toCar(Spot wheel) {
    return new Spot(
        wheel.x(),
        hub + wheel.y() * cosine + wheel.z() * sine,
        wheel.z() * cosine - wheel.y() * sine);
  }
}
