package shelfful.ui.learned;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.learning.CellRate;
import shelfful.learning.Flaw;
import shelfful.learning.Trait;
import shelfful.learning.ZoneSuggestion;
import shelfful.record.Ring;
import shelfful.ware.Zone;

/**
 * One look at the records.
 *
 * @param counted what is counted against a piece
 * @param pieces how many were looked at after their firings
 * @param firings they were in
 * @param rates of every cell
 * @param suggestions that follow
 */
public record Learned(
    Flaw counted, int pieces, int firings, List<CellRate> rates, List<ZoneSuggestion> suggestions) {
  /** Before any look. */
  public static final Learned NOTHING =
      new Learned(Flaw.SECOND_OR_LOST, 0, 0, List.of(), List.of());

  /** Takes its own copies. */
  public Learned {
    rates = List.copyOf(rates);
    suggestions = List.copyOf(suggestions);
  }

  /** The cells of one trait. */
  public List<CellRate> of(Trait trait) {
    return rates.stream().filter(rate -> rate.trait() == trait).toList();
  }

  /** A place of the map, where anything ever stood there. */
  public Optional<CellRate> at(Zone zone, Ring ring) {
    return cell(Trait.PLACE, word(zone) + ", " + word(ring));
  }

  /** A whole third of the height. */
  public Optional<CellRate> at(Zone zone) {
    return cell(Trait.HEIGHT, word(zone));
  }

  /** A whole ring. */
  public Optional<CellRate> at(Ring ring) {
    return cell(Trait.RING, word(ring));
  }

  /** The rate that a suggestion follows from. */
  public Optional<CellRate> behind(ZoneSuggestion suggestion) {
    return cell(Trait.GLAZE_AT_HEIGHT, suggestion.glazeId() + ", " + word(suggestion.zone()));
  }

  private Optional<CellRate> cell(Trait trait, String name) {
    return of(trait).stream().filter(rate -> rate.cell().equals(name)).findFirst();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
