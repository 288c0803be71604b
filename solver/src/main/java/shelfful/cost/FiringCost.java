package shelfful.cost;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.Tariff;
import shelfful.week.WeekRequest;

/**
 * What one firing takes.
 *
 * @param handsOn loading and unpacking
 * @param energy empty when neither power nor a reading is known
 * @param money the energy at the tariff; empty without either
 * @param perPiece an equal share of it for every piece, lids not counted; empty for an empty kiln
 */
public record FiringCost(
    Duration handsOn, Optional<Energy> energy, OptionalDouble money, OptionalDouble perPiece) {

  /** Of a firing of a week, whose kiln and program the request has. */
  public static FiringCost of(WeekRequest request, PlannedFiring firing) {
    KilnWork kiln = request.kiln(firing.kilnId()).orElseThrow();
    Program program = request.program(firing).orElseThrow();
    Optional<Energy> energy = Energy.of(program, kiln.kilowatts());
    Optional<Double> price = request.tariff().map(Tariff::perKilowattHour);
    OptionalDouble money =
        energy.isPresent() && price.isPresent()
            ? OptionalDouble.of(energy.get().kilowattHours() * price.get())
            : OptionalDouble.empty();
    OptionalDouble perPiece =
        money.isPresent() && firing.pieces() > 0
            ? OptionalDouble.of(money.getAsDouble() / firing.pieces())
            : OptionalDouble.empty();
    return new FiringCost(program.loading().plus(program.unpacking()), energy, money, perPiece);
  }
}
