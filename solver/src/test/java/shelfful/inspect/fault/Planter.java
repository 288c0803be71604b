package shelfful.inspect.fault;

import java.util.Optional;
import java.util.Random;
import shelfful.load.Load;

/** A way to spoil a valid load. */
@FunctionalInterface
interface Planter {
  Optional<Load> plant(Load load, Random random);
}
