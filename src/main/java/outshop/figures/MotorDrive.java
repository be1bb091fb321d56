package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A motor and the frequency that its drive chops the voltage with.
 *
 * @param hertz of the drive
 * @param leastHertz what the motor needs; absent for one that does not mind
 * @param drive the decoder or receiver that drives it
 */
public record MotorDrive(At at, Amount hertz, Amount leastHertz, String drive) {}
