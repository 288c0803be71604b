package shelfful.ui.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;
import shelfful.remedy.Change;
import shelfful.remedy.Remedy;
import shelfful.remedy.RemedyKind;
import shelfful.ui.words.Words;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/**
 * What is said of a waiting batch and of a remedy, from its values.
 *
 * @param request the load's own, for the names of its things
 * @param unit lengths are written in
 */
public record RemedyWords(Words words, LoadRequest request, LengthUnit unit) {

  /** Form, glaze and batch of what waits. */
  public String what(String batchId) {
    Optional<Batch> batch =
        request.batches().stream().filter(one -> one.id().equals(batchId)).findFirst();
    return batch.map(one -> words.of("why.what", form(one), glaze(one), one.id())).orElse(batchId);
  }

  private String form(Batch batch) {
    return request.studio().form(batch.formId()).map(Form::name).orElse(batch.formId());
  }

  private String glaze(Batch batch) {
    return batch
        .glazeId()
        .map(id -> request.studio().glaze(id).map(Glaze::name).orElse(id))
        .orElse(words.of("why.noGlaze"));
  }

  /** What the button says. */
  public String button(Remedy remedy) {
    return words.of("remedyDo", remedy.kind());
  }

  /** What kind of remedy it is and how many pieces it brings in. */
  public String heading(Remedy remedy, int waiting) {
    return words.of("remedy.heading", words.of("remedy", remedy.kind()), remedy.placed(), waiting);
  }

  /** What it costs, a line each. */
  public List<String> costs(Remedy remedy, int placedNow) {
    List<String> costs = new ArrayList<>();
    if (remedy.kind() == RemedyKind.NEXT_FIRING) {
      costs.add(words.of("cost.wait", remedy.load().load().placed()));
      return costs;
    }
    Change change = remedy.change();
    costs.add(words.of("cost.moved", change.moved()));
    if (!change.waiting().isEmpty()) {
      costs.add(words.of("cost.waiting", listed(change.waiting())));
    }
    if (!change.leavesFurniture()) {
      costs.add(words.of("cost.furniture", change.newHeights().size(), change.emptied().size()));
    }
    if (remedy.kind() == RemedyKind.MORE_FURNITURE) {
      costs.add(words.of("cost.bought"));
    }
    costs.add(words.of("cost.counts", placedNow, remedy.load().load().placed()));
    remedy.relaxedBy().map(this::text).ifPresent(by -> costs.add(words.of("cost.risk", by)));
    return costs;
  }

  private String listed(Map<String, Integer> counts) {
    List<String> all = new ArrayList<>();
    counts.forEach((batch, count) -> all.add(words.of("waits.what", count, what(batch))));
    return String.join("; ", all);
  }

  private String text(Length length) {
    return LengthText.write(length, unit);
  }
}
