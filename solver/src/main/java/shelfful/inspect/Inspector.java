package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import shelfful.load.Load;
import shelfful.measure.Length;

/**
 * The judge of finished loads. Stateless; one may be shared by threads.
 *
 * <p>Discs are compared in whole micrometres, so exactly the required distance passes and one
 * micrometre less does not. Lugs, ovals and turned shelves are read with proof on the short side to
 * within a tenth of a micrometre, and pass when that reading is at most one micrometre short of
 * what is required.
 */
public final class Inspector {
  private static final List<Check> CHECKS =
      List.of(
          new NameCheck(),
          new AccountCheck(),
          new PieceFiringCheck(),
          new HeatCheck(),
          new PieceGapCheck(),
          new PostClearanceCheck(),
          new WallCheck(),
          new KeepOutCheck(),
          new HeadroomCheck(),
          new LidCheck(),
          new FootCheck(),
          new CatcherCheck(),
          new PileCheck(),
          new RestCheck(),
          new ShelfMassCheck(),
          new ShelfPlaceCheck(),
          new StockCheck(),
          new PostKindCheck(),
          new PostPlaceCheck(),
          new PostStackCheck(),
          new PostLengthCheck(),
          new SupportCheck(),
          new CollisionCheck(),
          new ColumnCheck(),
          new KeptApartCheck(),
          new ZoneCheck(),
          new TogetherCheck(),
          new KeptCheck());

  /**
   * Judges a load from nothing but itself and what was asked. Whatever is wrong with the load is a
   * finding; a load that names things which do not exist is judged as far as the rest goes.
   */
  public Inspection inspect(Load load) {
    Findings findings = new Findings();
    FigureCheck.judge(load, findings);
    if (findings.isBroken()) {
      return new Inspection.Failed(findings.brokenFirst());
    }
    Setting setting = SettingReader.read(load, findings);
    CHECKS.forEach(check -> check.judge(setting, findings));
    if (findings.isBroken()) {
      return new Inspection.Failed(findings.brokenFirst());
    }
    return new Inspection.Passed(
        new InspectedLoad(load, LayerMeasure.of(setting), findings.of(Finding.Severity.WISH)));
  }

  /**
   * Judges a load that may be work in hand: one that breaks rules comes back as a {@link
   * FaultyLoad}, which can be looked at but neither saved as a plan nor printed. Empty when it
   * names what does not exist or its figures are beyond reason, so that nothing could be drawn of
   * it.
   */
  public Optional<JudgedLoad> judge(Load load) {
    Findings findings = new Findings();
    FigureCheck.judge(load, findings);
    if (findings.isBroken()) {
      return Optional.empty();
    }
    Setting setting = SettingReader.read(load, findings);
    if (findings.isBroken()) {
      return Optional.empty();
    }
    CHECKS.forEach(check -> check.judge(setting, findings));
    List<LayerFigures> figures = LayerMeasure.of(setting);
    return Optional.of(
        findings.isBroken()
            ? new FaultyLoad(load, figures, findings.brokenFirst())
            : new InspectedLoad(load, figures, findings.of(Finding.Severity.WISH)));
  }

  /**
   * The least distance in the plan between two pieces of a load, wherever they share a height:
   * rounded down to whole micrometres, below zero where they overlap, empty when they share no
   * height, when they are in one pile, when one of them does not stand in the load, or when the
   * load's figures are beyond reason. The load may break rules.
   */
  public Optional<Length> gapBetween(Load load, String pieceId, String otherPieceId) {
    Findings findings = new Findings();
    FigureCheck.judge(load, findings);
    if (findings.isBroken()) {
      return Optional.empty();
    }
    Setting setting = SettingReader.read(load, findings);
    Optional<StandingPiece> one = find(setting, pieceId);
    Optional<StandingPiece> other = find(setting, otherPieceId);
    Carriers carriers = Carriers.of(setting.pieces());
    if (one.isEmpty() || other.isEmpty() || carriers.isOnePile(one.get(), other.get())) {
      return Optional.empty();
    }
    return LayerMeasure.lengthOf(
        PieceGap.atSharedHeights(one.get(), other.get(), Double.POSITIVE_INFINITY));
  }

  private static Optional<StandingPiece> find(Setting setting, String id) {
    return setting.pieces().stream().filter(piece -> piece.id().equals(id)).findFirst();
  }
}
