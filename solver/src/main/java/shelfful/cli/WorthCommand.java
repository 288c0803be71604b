package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.files.BatchListReader;
import shelfful.files.StudioReader;
import shelfful.kiln.Kiln;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.purchase.MonthlyFirings;
import shelfful.purchase.Purchase;
import shelfful.purchase.PurchaseEffort;
import shelfful.purchase.PurchaseStudy;
import shelfful.purchase.Worth;
import shelfful.studio.Studio;

/** Measures what would be worth buying. */
@Command(
    name = "worth",
    description =
        "Measures how many pieces more a firing holds with one more shelf, with one more set of"
            + " posts, or with thinner shelves.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful worth demo-data/studio.json demo-data/list-200.csv",
      "  shelfful worth studio.json may-1.csv may-2.csv --thinner \"8 mm\" --firings-per-month 12"
          + " --firing-cost 25"
    })
final class WorthCommand implements Callable<Integer> {
  private static final double MOST_FIRINGS = 1000;
  private static final double MOST_COST = 1e9;

  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "STUDIO", description = "The studio file (JSON).")
  private Path studioFile;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "LIST",
      description = "Batch lists to measure on, each as one firing.")
  private List<Path> listFiles = new ArrayList<>();

  @Mixin private FiringOptions firing = new FiringOptions();

  @Option(
      names = "--seeds",
      paramLabel = "N",
      defaultValue = "3",
      description = "How often each list is planned, 2 to 100. Default: 3.")
  private int seeds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      defaultValue = "30",
      description = "Steps of each search, 0 to 100000. Default: 30.")
  private long steps;

  @Option(
      names = "--thinner",
      paramLabel = "LENGTH",
      description = "Also try shelves of this thickness, for instance \"8 mm\".")
  private String thinner;

  @Option(names = "--firings-per-month", paramLabel = "N", description = "For the money saved.")
  private Double firings;

  @Option(names = "--firing-cost", paramLabel = "MONEY", description = "For the money saved.")
  private Double cost;

  WorthCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() {
    Reading reading = new Reading(err);
    Optional<Studio> studio = reading.take(StudioReader.read(studioFile));
    if (studio.isEmpty() || !optionsAreGood()) {
      return ExitCodes.BAD_INPUT;
    }
    FiringChoice choice = new FiringChoice(firing, err);
    Optional<Kiln> kiln = choice.kiln(studio.get());
    if (kiln.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    List<LoadRequest> requests = new ArrayList<>();
    for (Path list : listFiles) {
      reading
          .take(BatchListReader.read(list, studio.get()))
          .flatMap(batches -> choice.request(studio.get(), kiln.get(), batches, 1, steps))
          .ifPresent(requests::add);
    }
    Optional<List<Purchase>> purchases = purchases(studio.get(), kiln.get());
    if (requests.size() < listFiles.size() || purchases.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    measure(requests, purchases.get());
    return reading.after(ExitCodes.DONE);
  }

  private boolean optionsAreGood() {
    if (seeds < 2 || seeds > 100 || steps < 0 || steps > 100_000) {
      err.println("--seeds must be from 2 to 100, and --steps from 0 to 100000.");
      return false;
    }
    boolean both = firings != null && cost != null;
    boolean none = firings == null && cost == null;
    if (!none && !(both && isWithin(firings, MOST_FIRINGS) && isWithin(cost, MOST_COST))) {
      err.println(
          "--firings-per-month and --firing-cost go together: from 0 to 1000 firings, and a cost"
              + " from 0 to 10^9.");
      return false;
    }
    return true;
  }

  private static boolean isWithin(double value, double most) {
    return value >= 0 && value <= most;
  }

  private void measure(List<LoadRequest> requests, List<Purchase> purchases) {
    PurchaseStudy study = new PurchaseStudy(requests, new PurchaseEffort(seeds, steps));
    Optional<MonthlyFirings> month =
        firings == null ? Optional.empty() : Optional.of(new MonthlyFirings(firings, cost));
    List<Worth> worths =
        study.measure(
            purchases, month, worth -> err.println("measured: " + worth.purchase().words()));
    out.printf(
        java.util.Locale.ROOT,
        "%d list(s), %d seeds, %d steps; now %.1f pieces a firing. Each list was planned with and"
            + " without, from the same load with the same seed and steps.%n",
        requests.size(),
        seeds,
        steps,
        worths.isEmpty() ? 0 : worths.get(0).piecesNow());
    worths.forEach(worth -> out.println(worth.sentence()));
  }

  private Optional<List<Purchase>> purchases(Studio studio, Kiln kiln) {
    List<Purchase> all = new ArrayList<>(Purchase.usual(studio, kiln.id()));
    if (thinner != null) {
      Optional<Length> length =
          LengthText.read(thinner, studio.unit()).value().filter(Length::isPositive);
      if (length.isEmpty()) {
        err.println("--thinner: " + thinner + " is not a thickness. Write it like 8 mm.");
        return Optional.empty();
      }
      all.addAll(Purchase.thinner(studio, kiln.id(), length.get()));
    }
    return Optional.of(all);
  }
}
