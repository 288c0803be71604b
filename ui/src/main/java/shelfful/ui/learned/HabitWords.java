package shelfful.ui.learned;

import shelfful.learning.CellRate;
import shelfful.learning.Trait;
import shelfful.learning.ZoneSuggestion;
import shelfful.studio.Studio;
import shelfful.ui.look.Decimals;
import shelfful.ui.words.Words;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/**
 * What is said of rates, from their values.
 *
 * @param studio for the names of glazes and forms; an id stands for what it lacks
 */
record HabitWords(Words words, Decimals decimals, Studio studio) {
  /** What a cell is called. */
  String cell(CellRate rate) {
    return switch (rate.trait()) {
      case GLAZE -> glaze(rate.cell());
      case FORM -> studio.form(rate.cell()).map(Form::name).orElse(rate.cell());
      case HEIGHT -> words.of("zone." + rate.cell());
      case RING -> words.of("ring." + rate.cell());
      case PLACE -> words.of("learned.pair", zone(first(rate)), ring(last(rate)));
      case GLAZE_AT_HEIGHT -> words.of("learned.pair", glaze(first(rate)), zone(last(rate)));
    };
  }

  private static String first(CellRate rate) {
    return rate.cell().substring(0, rate.cell().lastIndexOf(", "));
  }

  private static String last(CellRate rate) {
    return rate.cell().substring(rate.cell().lastIndexOf(", ") + 2);
  }

  private String zone(String word) {
    return words.of("zone." + word);
  }

  private String ring(String word) {
    return words.of("ring." + word);
  }

  /** The glaze's name, or that there is none. */
  String glaze(String id) {
    return id.equals(Trait.NO_GLAZE)
        ? words.of("why.noGlaze")
        : studio.glaze(id).map(Glaze::name).orElse(id);
  }

  /** So many of so many. */
  String counts(CellRate rate) {
    return words.of("learned.counts", rate.proportion().flawed(), rate.proportion().of());
  }

  /** The rate in percent, or that there are too few pieces to tell one. */
  String rate(CellRate rate) {
    return rate.proportion().isTooFew()
        ? words.of("learned.tooFew")
        : words.of("learned.percent", decimals.percent(rate.proportion().rate(), 1));
  }

  /** From where to where the rate may lie; nothing for too few pieces. */
  String interval(CellRate rate) {
    return rate.proportion().isTooFew()
        ? "–"
        : words.of(
            "learned.interval",
            decimals.percent(rate.interval().low(), 1),
            decimals.percent(rate.interval().high(), 1));
  }

  /** The rate of what it is compared with. */
  String rest(CellRate rate) {
    return rate.rest().isTooFew()
        ? words.of("learned.tooFew")
        : words.of("learned.percent", decimals.percent(rate.rest().rate(), 1));
  }

  String verdict(CellRate rate) {
    return words.of("verdict", rate.verdict());
  }

  /** How likely chance alone makes such a difference. */
  String chance(CellRate rate) {
    boolean little = rate.chance() < 0.001;
    return little
        ? words.of("learned.lessThan", decimals.of(0.001, 3))
        : decimals.of(rate.chance(), 3);
  }

  /** The zone a suggestion is about. */
  String zone(ZoneSuggestion suggestion) {
    return words.of("zone", suggestion.zone());
  }

  /** Which glaze and zone a suggestion is about. */
  String name(ZoneSuggestion suggestion) {
    return words.of("learned.pair", glaze(suggestion.glazeId()), zone(suggestion));
  }

  /** Why it is suggested, with its figures. */
  String why(Learned learned, ZoneSuggestion suggestion) {
    return learned
        .behind(suggestion)
        .map(
            rate ->
                words.of(
                    "learned.why",
                    name(suggestion),
                    counts(rate),
                    words.of("counted", learned.counted()),
                    rate(rate),
                    interval(rate),
                    rest(rate)))
        .orElse(suggestion.sentence());
  }

  /** What a trait's cells are. */
  String trait(Trait trait) {
    return words.of("trait", trait);
  }
}
