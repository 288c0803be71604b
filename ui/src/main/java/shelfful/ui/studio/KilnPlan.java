package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.studio.Studio;

/**
 * One way of standing columns, with the kiln it is of.
 *
 * @param kiln which of the studio's kilns, from 0
 * @param plan of that kiln
 */
record KilnPlan(int kiln, ColumnPlan plan) {

  /** All column plans of a studio, kiln after kiln. */
  static List<KilnPlan> of(Studio studio) {
    return IntStream.range(0, studio.kilns().size())
        .boxed()
        .flatMap(
            kiln ->
                studio.kilns().get(kiln).columnPlans().stream().map(one -> new KilnPlan(kiln, one)))
        .toList();
  }

  /** The studio with these column plans in place of its own. */
  static Studio with(Studio studio, List<KilnPlan> all) {
    List<Kiln> kilns = new ArrayList<>();
    for (int i = 0; i < studio.kilns().size(); i++) {
      int index = i;
      List<ColumnPlan> plans =
          all.stream().filter(one -> one.kiln() == index).map(KilnPlan::plan).toList();
      kilns.add(Component.with(studio.kilns().get(i), "columnPlans", plans));
    }
    return Component.with(studio, "kilns", List.copyOf(kilns));
  }

  /** Where one of all column plans lies within a studio. */
  static Place<ColumnPlan> place(Studio studio, int index) {
    KilnPlan one = of(studio).get(index);
    int within = studio.kilns().get(one.kiln()).columnPlans().indexOf(one.plan());
    return Place.in(
            "kilns", Studio::kilns, (now, is) -> Component.with(now, "kilns", is), one.kiln())
        .partIn("columnPlans", Kiln::columnPlans, within);
  }

  Kiln kiln(Studio studio) {
    return studio.kilns().get(kiln);
  }
}
