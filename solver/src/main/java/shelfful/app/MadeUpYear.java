package shelfful.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.record.Causes;
import shelfful.record.FiredPiece;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.Ring;
import shelfful.record.UnpackedFiring;
import shelfful.record.WitnessCone;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.Zone;

/**
 * A year of firings that never were, so that the pages of figures can be looked at before there are
 * records. Drawn by chance from a fixed seed: the same studio gives the same year. Three things are
 * planted: pieces at the top near the wall come out flawed more often, one glaze ({@link
 * #coolGlaze}) does at the bottom, and the studio's third form cracks. Nothing of it is kept in a
 * file.
 */
public final class MadeUpYear {
  /** How often a piece is flawed where nothing is planted. */
  public static final double USUAL = 0.04;

  /** How much more often at the top near the wall. */
  public static final double HOT = 0.12;

  /** How much more often where the one glaze stands at the bottom. */
  public static final double COOL_GLAZE = 0.16;

  /** How much more often the third form. */
  public static final double WEAK_FORM = 0.06;

  private static final LocalDate FIRST = LocalDate.of(2025, 6, 2);
  private static final int FIRINGS = 96;
  private static final int DAYS = 364;
  private static final int FEWEST = 56;
  private static final int SPREAD = 30;
  private static final double LOST_SHARE = 0.35;
  private static final long WATT_HOURS = 52_000;

  private final Studio studio;
  private final Kiln kiln;
  private final Glaze coolGlaze;
  private final Random chance = new Random(20_250_602);
  private long meter = 1_204_000;

  private MadeUpYear(Studio studio) {
    this.studio = studio;
    this.kiln = studio.kilns().get(0);
    this.coolGlaze = coolGlaze(studio);
  }

  /**
   * The year of a studio.
   *
   * @param studio with at least one kiln, one glaze and three forms
   */
  public static List<UnpackedFiring> of(Studio studio) {
    return new MadeUpYear(studio).year();
  }

  /**
   * The glaze that does badly at the bottom: the first after the studio's first that has no wishes
   * of its own for a zone, so that there is something to suggest.
   */
  public static Glaze coolGlaze(Studio studio) {
    return studio.glazes().stream()
        .skip(1)
        .filter(glaze -> glaze.likes().isEmpty() && glaze.forbidden().isEmpty())
        .findFirst()
        .orElse(studio.glazes().get(0));
  }

  private List<UnpackedFiring> year() {
    List<UnpackedFiring> year = new ArrayList<>();
    for (int i = 0; i < FIRINGS; i++) {
      year.add(firing(i));
    }
    return List.copyOf(year);
  }

  private UnpackedFiring firing(int number) {
    LocalDate day = FIRST.plusDays((long) number * DAYS / FIRINGS);
    int count = FEWEST + number / 8 + chance.nextInt(SPREAD);
    List<FiredPiece> pieces = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      pieces.add(piece(i));
    }
    Glaze first = studio.glazes().get(0);
    Firing firing =
        new Firing(
            kiln.id(),
            FiringKind.GLAZE,
            first.cone(),
            0,
            first.atmosphere().orElse(Atmosphere.OXIDATION));
    FiringRecord record =
        new FiringRecord(
            day + "-madeup" + number,
            day,
            firing,
            "MADEUP",
            chance.nextInt(30),
            Optional.of(count + 2 + chance.nextInt(12)),
            pieces,
            course(first));
    return new UnpackedFiring(record, pieces.stream().map(this::result).toList());
  }

  private FiredPiece piece(int number) {
    Zone zone = Zone.values()[chance.nextInt(Zone.values().length)];
    Ring ring = Ring.values()[chance.nextInt(Ring.values().length)];
    int layer = 1 + 2 * zone.ordinal() + chance.nextInt(2);
    return new FiredPiece(
        "B" + number + "-001",
        studio.forms().get(chance.nextInt(studio.forms().size())).id(),
        Optional.of(studio.glazes().get(chance.nextInt(studio.glazes().size())).id()),
        "L" + layer,
        zone,
        ring);
  }

  private PieceResult result(FiredPiece piece) {
    boolean hot = piece.zone() == Zone.TOP && piece.ring() == Ring.EDGE;
    boolean cool =
        piece.zone() == Zone.BOTTOM && piece.glazeId().equals(Optional.of(coolGlaze.id()));
    boolean weak = piece.formId().equals(studio.forms().get(2).id());
    double risk = USUAL + (hot ? HOT : 0) + (cool ? COOL_GLAZE : 0) + (weak ? WEAK_FORM : 0);
    if (chance.nextDouble() >= risk) {
      return new PieceResult(piece.pieceId(), Grade.GOOD, Optional.empty());
    }
    Grade grade = chance.nextDouble() < LOST_SHARE ? Grade.LOST : Grade.SECOND;
    String cause =
        hot
            ? "over-fired"
            : cool
                ? "under-fired"
                : weak ? "cracked" : Causes.USUAL.get(chance.nextInt(Causes.USUAL.size()));
    return new PieceResult(piece.pieceId(), grade, Optional.of(cause));
  }

  private FiringCourse course(Glaze first) {
    long before = meter;
    meter += WATT_HOURS + chance.nextInt(6_000);
    List<WitnessCone> cones =
        kiln.keepOuts().stream()
            .filter(one -> one.kind() == KeepOut.Kind.CONE_PACK)
            .map(one -> new WitnessCone(one.name(), first.cone()))
            .toList();
    return new FiringCourse(
        Optional.of("cone " + first.cone().number()),
        cones,
        Optional.of(520 + chance.nextInt(50)),
        Optional.of(940 + chance.nextInt(60)),
        Optional.of(before),
        Optional.of(meter));
  }
}
