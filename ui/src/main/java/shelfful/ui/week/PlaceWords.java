package shelfful.ui.week;

import java.util.Locale;
import java.util.stream.Collectors;
import shelfful.app.FiringPlace;
import shelfful.app.FiringPlace.Hindrance;
import shelfful.studio.Studio;
import shelfful.ui.words.Words;

/** Where a firing would stand, and what is in its way, in words with figures. */
final class PlaceWords {
  private final Words words;
  private final Moments moments;
  private final Studio studio;

  PlaceWords(Words words, Studio studio) {
    this.words = words;
    this.moments = new Moments(words);
    this.studio = studio;
  }

  /** Everything there is to say. */
  String of(FiringPlace place) {
    String kiln = FiringWords.kiln(studio, place.kilnId());
    String at =
        place
            .times()
            .map(
                times ->
                    words.of(
                        "week.placeAt",
                        place.firingId(),
                        kiln,
                        moments.moment(times.loads()),
                        moments.moment(times.unpacked())))
            .orElse(words.of("week.placeNone", place.firingId(), kiln));
    String verdict = words.of(place.isAllowed() ? "week.placeFree" : "week.placeForbidden");
    String reasons = place.hindrances().stream().map(this::of).collect(Collectors.joining(" "));
    boolean clear = place.hindrances().isEmpty();
    return clear ? at : place.isAllowed() ? at + " " + reasons : at + " " + verdict + " " + reasons;
  }

  /** A few words to be written on the calendar. */
  String shortly(FiringPlace place) {
    return place
        .times()
        .filter(times -> place.isAllowed())
        .map(times -> words.of("week.placeShort", place.firingId(), moments.moment(times.loads())))
        .orElse(words.of("week.placeNotHere", place.firingId()));
  }

  private String of(Hindrance one) {
    boolean isKiln =
        one.kind() == FiringPlace.Kind.NO_PROGRAM || one.kind() == FiringPlace.Kind.OUT_OF_ORDER;
    return words.of(
        "weekHindrance." + one.kind().name().toLowerCase(Locale.ROOT),
        isKiln ? FiringWords.kiln(studio, one.name()) : one.name(),
        one.pieces(),
        moments.moment(one.from()),
        moments.moment(one.to()));
  }
}
