package shelfful.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.studio.Studio;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Hollow;
import shelfful.ware.KeptApart;

/**
 * Checks what the parts of a studio say about each other: ids told apart, names that exist, columns
 * that stand. Also checks a studio of which bad parts were dropped; an id that a dropped part
 * claimed counts as known.
 */
final class StudioCheck {
  private final FieldReader document;

  private StudioCheck(FieldReader document) {
    this.document = document;
  }

  static void check(Studio studio, FieldReader document) {
    StudioCheck check = new StudioCheck(document);
    check.idsAreToldApart(studio);
    check.lettersAreToldApart(studio.glazes());
    check.keptApartGlazesExist(studio);
    check.formsInHollowsExist(studio);
    check.shelvesExist(studio);
    for (Kiln kiln : studio.kilns()) {
      for (ColumnPlan plan : kiln.columnPlans()) {
        new ColumnPlanCheck(studio, kiln, document).check(plan);
        new StockCheck(studio, document).check(plan);
      }
    }
  }

  private void idsAreToldApart(Studio studio) {
    toldApart(studio.kilns(), Kiln::id, "id");
    toldApart(studio.shelves(), Shelf::id, "id");
    toldApart(studio.posts(), Post::id, "id");
    toldApart(studio.glazes(), Glaze::id, "id");
    toldApart(studio.forms(), Form::id, "id");
    for (Kiln kiln : studio.kilns()) {
      toldApart(kiln.columnPlans(), ColumnPlan::id, "id");
      kiln.columnPlans().forEach(plan -> toldApart(plan.columns(), Column::id, "id"));
    }
  }

  private void lettersAreToldApart(List<Glaze> glazes) {
    toldApart(glazes, Glaze::letter, "letter");
  }

  private <T> void toldApart(List<T> things, Function<T, String> idOf, String field) {
    Map<String, T> first = new HashMap<>();
    for (T thing : things) {
      T earlier = first.putIfAbsent(FileName.key(idOf.apply(thing)), thing);
      if (earlier != null) {
        document
            .problems()
            .add(
                pathOf(thing) + "/" + field,
                field,
                Shown.quoted(idOf.apply(thing))
                    + " cannot be told from that of "
                    + pathOf(earlier)
                    + "; capitals and spaces do not count.",
                "Change one of the two.");
      }
    }
  }

  private void keptApartGlazesExist(Studio studio) {
    Set<String> known = document.claimedIds("glazes");
    for (KeptApart rule : studio.rules().keptApart()) {
      known(rule.glazeId(), known, pathOf(rule) + "/glazes/0", "glazes");
      known(rule.otherGlazeId(), known, pathOf(rule) + "/glazes/1", "glazes");
    }
  }

  private void formsInHollowsExist(Studio studio) {
    Set<String> known = document.claimedIds("forms");
    for (Form form : studio.forms()) {
      for (String id : form.bisque().hollow().map(Hollow::formIds).orElse(List.of())) {
        known(id, known, pathOf(form) + "/bisque/hollow/forms", "forms");
      }
    }
  }

  private void shelvesExist(Studio studio) {
    Set<String> known = document.claimedIds("shelves");
    for (Kiln kiln : studio.kilns()) {
      for (ColumnPlan plan : kiln.columnPlans()) {
        for (Column column : plan.columns()) {
          column.places().forEach(place -> shelvesExist(place, known));
        }
      }
    }
  }

  private void shelvesExist(ShelfPlace place, Set<String> known) {
    for (int i = 0; i < place.shelfIds().size(); i++) {
      known(place.shelfIds().get(i), known, pathOf(place) + "/shelves/" + i, "shelves");
    }
  }

  private void known(String id, Set<String> known, String path, String field) {
    if (!known.contains(id)) {
      document
          .problems()
          .add(
              path,
              field,
              "The studio has no " + Shown.quoted(id) + ".",
              NearMiss.advice(id, known));
    }
  }

  private String pathOf(Object thing) {
    return document.madeAt().pathOf(thing);
  }
}
