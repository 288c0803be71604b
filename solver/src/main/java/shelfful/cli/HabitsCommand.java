package shelfful.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.files.SaveFailed;
import shelfful.files.StudioReader;
import shelfful.files.StudioWriter;
import shelfful.learning.CellRate;
import shelfful.learning.Flaw;
import shelfful.learning.KilnHabits;
import shelfful.learning.Sighting;
import shelfful.learning.Trait;
import shelfful.learning.Verdict;
import shelfful.learning.ZoneSuggestion;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;

/** Says what the records show of glazes, forms and places in the kiln. */
@Command(
    name = "habits",
    description =
        "Rates of flawed pieces by glaze, form and place, with their 95 % intervals; a difference is"
            + " told only where it is beyond chance.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful habits firings --kiln round-top",
      "  shelfful habits firings --kiln round-top --studio studio.json --accept 1"
    })
final class HabitsCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "Where firings are kept.")
  private Path folder;

  @Option(
      names = "--kiln",
      paramLabel = "ID",
      description = "Only firings of this kiln. Default: all together.")
  private String kiln;

  @Option(names = "--lost-only", description = "Count only lost pieces, not seconds.")
  private boolean lostOnly;

  @Option(
      names = "--studio",
      paramLabel = "FILE",
      description = "The studio that accepted suggestions are written to.")
  private Path studioFile;

  @Option(
      names = "--accept",
      paramLabel = "N",
      description = "Make suggestion number N a wish of its glaze in the studio file.")
  private Integer accept;

  HabitsCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws IOException, SaveFailed {
    if ((accept == null) != (studioFile == null)) {
      err.println("--accept and --studio go together.");
      return ExitCodes.BAD_INPUT;
    }
    Optional<List<UnpackedFiring>> kept = new Reading(err).take(new KeepFirings(folder).all());
    if (kept.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    List<UnpackedFiring> firings =
        kept.get().stream().filter(one -> kiln == null || kilnOf(one).equals(kiln)).toList();
    if (firings.isEmpty() && kiln != null) {
      err.println(
          "--kiln: there is no firing of the kiln "
              + kiln
              + ". There are firings of: "
              + kept.get().stream()
                  .map(HabitsCommand::kilnOf)
                  .distinct()
                  .sorted()
                  .collect(Collectors.joining(", "))
              + ".");
      return ExitCodes.BAD_INPUT;
    }
    List<Sighting> sightings = Sighting.of(firings);
    Flaw flaw = lostOnly ? Flaw.LOST : Flaw.SECOND_OR_LOST;
    List<CellRate> rates = KilnHabits.of(sightings, flaw, List.of(Trait.values()));
    out.printf(
        Locale.ROOT,
        "%d pieces of %d firings. The chance of even one false alarm below is at most %.0f %%.%n",
        sightings.size(),
        firings.size(),
        100 * KilnHabits.ALARM_LEVEL);
    rates.forEach(rate -> out.println(line(rate, flaw)));
    List<ZoneSuggestion> suggestions = ZoneSuggestion.from(rates, flaw);
    for (int i = 0; i < suggestions.size(); i++) {
      out.println("[" + (i + 1) + "] " + suggestions.get(i).sentence());
    }
    return accept == null ? ExitCodes.DONE : accepted(suggestions);
  }

  private static String kilnOf(UnpackedFiring one) {
    return one.record().firing().kilnId();
  }

  private int accepted(List<ZoneSuggestion> suggestions) throws SaveFailed {
    if (accept < 1 || accept > suggestions.size()) {
      err.println("--accept: there is no suggestion " + accept + ".");
      return ExitCodes.BAD_INPUT;
    }
    Optional<Studio> studio = new Reading(err).take(StudioReader.read(studioFile));
    if (studio.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    ZoneSuggestion suggestion = suggestions.get(accept - 1);
    if (studio.get().glaze(suggestion.glazeId()).isEmpty()) {
      err.println("--accept: " + studioFile + " has no glaze " + suggestion.glazeId() + ".");
      return ExitCodes.BAD_INPUT;
    }
    Studio accepted = suggestion.accepted(studio.get());
    if (accepted.equals(studio.get())) {
      out.println(
          "Nothing to change in "
              + studioFile
              + ": "
              + suggestion.glazeId()
              + " does not like that zone already, or likes no other.");
      return ExitCodes.DONE;
    }
    StudioWriter.write(accepted, studioFile);
    out.println("Accepted in " + studioFile + ".");
    return ExitCodes.DONE;
  }

  private static String line(CellRate rate, Flaw flaw) {
    String trait = rate.trait().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    if (rate.proportion().isTooFew()) {
      return String.format(
          Locale.ROOT, "%-16s %-28s too few yet (%d)", trait, rate.cell(), rate.proportion().of());
    }
    return String.format(
        Locale.ROOT,
        "%-16s %-28s %4d of %5d %s, %5.1f %% (%.1f to %.1f %%)%s",
        trait,
        rate.cell(),
        rate.proportion().flawed(),
        rate.proportion().of(),
        flaw.word(),
        100 * rate.proportion().rate(),
        100 * rate.interval().low(),
        100 * rate.interval().high(),
        word(rate));
  }

  private static String word(CellRate rate) {
    if (rate.verdict() == Verdict.WORSE || rate.verdict() == Verdict.BETTER) {
      return String.format(
          Locale.ROOT,
          "  %s than the rest (chance alone: %.4f)",
          rate.verdict().name(),
          rate.chance());
    }
    return "";
  }
}
