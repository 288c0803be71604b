package shelfful.cost;

import java.util.List;
import java.util.OptionalDouble;
import shelfful.week.WeekPlan;

/**
 * What a week takes.
 *
 * @param firings of each firing, in the week's order
 * @param kilowattHours of all; empty when that of any is unknown
 * @param money of all; empty when that of any is unknown
 * @param estimated whether any figure is an estimate rather than read from a meter
 */
public record WeekCost(
    List<FiringCost> firings,
    OptionalDouble kilowattHours,
    OptionalDouble money,
    boolean estimated) {
  /** Takes its own copy. */
  public WeekCost {
    firings = List.copyOf(firings);
  }

  /** Of all firings of a week. */
  public static WeekCost of(WeekPlan plan) {
    List<FiringCost> firings =
        plan.firings().stream().map(firing -> FiringCost.of(plan.request(), firing)).toList();
    boolean energyKnown = firings.stream().allMatch(cost -> cost.energy().isPresent());
    boolean moneyKnown = firings.stream().allMatch(cost -> cost.money().isPresent());
    double energy =
        firings.stream()
            .flatMap(cost -> cost.energy().stream())
            .mapToDouble(Energy::kilowattHours)
            .sum();
    double money = firings.stream().mapToDouble(cost -> cost.money().orElse(0)).sum();
    return new WeekCost(
        firings,
        energyKnown ? OptionalDouble.of(energy) : OptionalDouble.empty(),
        moneyKnown ? OptionalDouble.of(money) : OptionalDouble.empty(),
        firings.stream()
            .flatMap(cost -> cost.energy().stream())
            .anyMatch(one -> one.basis() == Energy.Basis.ESTIMATE));
  }
}
