package shelfful.remedy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Stage;

/** Plans the firing a piece would go into next, so that even waiting is not promised untried. */
final class NextFiring implements Attempt {
  private static final Change NOTHING = new Change(0, Map.of(), Map.of(), Map.of(), List.of());

  private final NextFirings firings;

  NextFiring(NextFirings firings) {
    this.firings = firings;
  }

  @Override
  public RemedyKind kind() {
    return RemedyKind.NEXT_FIRING;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return true;
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    LaterFiring later = new LaterFiring(one.request());
    one.because(later.whyNone(one.group()));
    for (Firing firing : later.of(one.group())) {
      one.countTry();
      Optional<InspectedLoad> together =
          firings.together(firing).filter(load -> one.in(load.load()) > 0);
      if (together.isPresent()) {
        return Optional.of(remedy(one, together.get(), ""));
      }
      one.countTry();
      Optional<InspectedLoad> alone = firings.alone(firing, one);
      if (alone.filter(load -> one.in(load.load()) > 0).isPresent()) {
        return Optional.of(remedy(one, alone.get(), ", put before all else that waits"));
      }
      alone.flatMap(load -> reason(one, load.load())).ifPresent(one::because);
    }
    return Optional.empty();
  }

  /** Why the group waits even in a firing of its own. */
  static Optional<String> reason(WaitingCase one, Load alone) {
    Set<String> alike = one.alike(alone);
    return alone.leftOut().stream()
        .filter(out -> alike.contains(out.pieceId()))
        .map(LeftOut::sentence)
        .findFirst();
  }

  private static Remedy remedy(WaitingCase one, InspectedLoad load, String how) {
    int in = Math.min(one.in(load.load()), one.group().size());
    int all = one.group().size();
    String count = Telling.of(in, all, " goes", " go");
    LoadRequest later = load.load().request();
    int pieces = later.pieces().size();
    String fill =
        pieces == all && in == all
            ? "."
            : ": " + load.load().placed() + " of " + pieces + " are in.";
    String sentence = count + " into " + named(one.request(), later) + how + once(one) + fill;
    return new Remedy(RemedyKind.NEXT_FIRING, in, sentence, load, NOTHING, Optional.empty());
  }

  private static String named(LoadRequest now, LoadRequest later) {
    Firing before = now.firing();
    Firing firing = later.firing();
    String kind =
        firing.kind() == before.kind()
            ? ""
            : " of " + firing.kind().name().toLowerCase(java.util.Locale.ROOT) + " ware";
    String cone = firing.cone().equals(before.cone()) ? "" : " to cone " + firing.cone().number();
    String air =
        firing.atmosphere() == before.atmosphere()
            ? ""
            : " in " + firing.atmosphere().name().toLowerCase(java.util.Locale.ROOT);
    String kiln =
        firing.kilnId().equals(before.kilnId())
            ? ""
            : " in the kiln " + later.studio().kiln(firing.kilnId()).orElseThrow().name();
    String special = kind + cone + air + kiln;
    return special.isEmpty() ? "the next firing" : "a firing" + special;
  }

  private static String once(WaitingCase one) {
    Stage stage = one.group().batch().stage();
    return stage.compareTo(Stage.GLAZED) < 0 && stage != one.request().firing().kind().goesIn()
        ? " once ready"
        : "";
  }
}
