package shelfful.ui.figures;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import shelfful.app.FiringFolder;
import shelfful.app.KeepAFile;
import shelfful.figures.FiringFigures;
import shelfful.figures.FiringPrices;
import shelfful.figures.PotteryFigures;
import shelfful.record.UnpackedFiring;
import shelfful.ui.look.Decimals;
import shelfful.ui.words.Words;

/**
 * The figures of some firings at some prices, without any widget. What is not known is left out of
 * every series, never taken for nothing. Used on the screen's thread alone.
 */
public final class FiguresViewModel {
  private final Words words;
  private final ObservableValue<List<UnpackedFiring>> firings;
  private final ReadOnlyObjectWrapper<PotteryFigures> figures =
      new ReadOnlyObjectWrapper<>(new PotteryFigures(List.of(), List.of()));
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private FiringPrices prices = FiringPrices.UNKNOWN;

  /** Follows some firings; nothing is known of prices yet. */
  public FiguresViewModel(Words words, ObservableValue<List<UnpackedFiring>> firings) {
    this.words = words;
    this.firings = firings;
    firings.addListener((property, was, is) -> reckon());
    reckon();
  }

  /** The figures. */
  public ReadOnlyObjectProperty<PotteryFigures> figures() {
    return figures.getReadOnlyProperty();
  }

  /** What came of the last thing done; empty text when there is nothing to say. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /**
   * Reckons with other prices; what is no number is told and changes nothing.
   *
   * @param perKilowattHour blank when not known
   * @param perFiring blank when not known
   */
  public void price(String perKilowattHour, String perFiring) {
    OptionalDouble energy = Decimals.read(perKilowattHour);
    OptionalDouble firing = Decimals.read(perFiring);
    boolean wrong =
        energy.isEmpty() && !perKilowattHour.isBlank() || firing.isEmpty() && !perFiring.isBlank();
    if (wrong) {
      told.set(words.of("figures.noNumber"));
    } else {
      told.set("");
      prices = new FiringPrices(energy, firing);
      reckon();
    }
  }

  private void reckon() {
    figures.set(PotteryFigures.of(firings.getValue(), prices));
  }

  /**
   * One point of a series.
   *
   * @param day as days since 1970-01-01
   * @param value on that day
   */
  public record Point(long day, double value) {}

  /** How many pieces were in, firing by firing. */
  public List<Point> pieces() {
    return all(FiringFigures::pieces);
  }

  /** How many no load of the firing's list could exceed, where that was worked out. */
  public List<Point> limits() {
    return known(
        one -> one.limit().map(most -> OptionalDouble.of(most)).orElse(OptionalDouble.empty()));
  }

  /** How much of the limit was in, in percent, where it was worked out. */
  public List<Point> fill() {
    return known(
        one ->
            one.fill().isPresent()
                ? OptionalDouble.of(100 * one.fill().getAsDouble())
                : OptionalDouble.empty());
  }

  /** What a piece cost, where that can be told. */
  public List<Point> costs() {
    return known(FiringFigures::costPerPiece);
  }

  private List<Point> all(ToDoubleFunction<FiringFigures> value) {
    return known(one -> OptionalDouble.of(value.applyAsDouble(one)));
  }

  private List<Point> known(Function<FiringFigures, OptionalDouble> value) {
    return figures.get().firings().stream()
        .filter(one -> value.apply(one).isPresent())
        .map(one -> new Point(one.day().toEpochDay(), value.apply(one).getAsDouble()))
        .toList();
  }

  /** Saves a page's table for a spreadsheet. */
  public void save(Page page, Path file) {
    byte[] bytes =
        page == Page.CAUSES
            ? FiringFolder.table(PotteryFigures.causeHeadings(), figures.get().causeRows())
            : FiringFolder.table(PotteryFigures.firingHeadings(), figures.get().firingRows());
    told.set(
        KeepAFile.save(file, bytes).orElseGet(() -> words.of("figures.saved", file.getFileName())));
  }
}
