package shelfful.files;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shelfful.edit.WorkPlan;
import shelfful.load.Layer;
import shelfful.load.Load;

/** Reads a work file, or a plan file as work of which nothing is pinned. */
public final class WorkReader {
  private WorkReader() {}

  /**
   * What a file holds.
   *
   * @param plan as far as it has come
   * @param of the whole path of the file that the work belongs to, where it says so
   * @param isPlan whether it was a plan file, which must not break rules
   */
  public record Work(WorkPlan plan, Optional<String> of, boolean isPlan) {}

  /** Reads a file; never throws for what is in it, nor when it is not there. */
  public static ReadResult<Work> read(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> work(bytes, problems)));
  }

  /**
   * Reads bytes that are already at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<Work> read(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(work(bytes, problems));
  }

  private static Optional<Work> work(byte[] bytes, Problems problems) {
    Optional<FieldReader> document = FieldReader.ofDocument(bytes, problems);
    if (document.isEmpty()) {
      return Optional.empty();
    }
    if (DocumentHead.PLAN.isNamedBy(document.get())) {
      return document
          .filter(DocumentHead.PLAN::isHeadOf)
          .flatMap(PlanFormat::read)
          .map(load -> new Work(WorkPlan.of(load), Optional.empty(), true));
    }
    return document.filter(DocumentHead.WORK::isHeadOf).flatMap(WorkReader::work);
  }

  private static Optional<Work> work(FieldReader fields) {
    Optional<String> of =
        fields.optional("of", node -> FieldReader.text(node).then(FileName::note));
    List<String> pinned = names(fields, "pinned");
    List<String> locked = names(fields, "locked");
    Optional<Load> load = PlanFormat.read(fields).filter(one -> isEachLayerNamedOnce(one, fields));
    return load.map(
        one ->
            new Work(new WorkPlan(one, new TreeSet<>(pinned), new TreeSet<>(locked)), of, false));
  }

  /**
   * Work may break rules, but what is done by hand finds its layer by the name: with two of one
   * name the second could be neither seen nor changed.
   */
  private static boolean isEachLayerNamedOnce(Load load, FieldReader fields) {
    Set<String> names = new HashSet<>();
    for (Layer layer : load.layers()) {
      if (!names.add(layer.id())) {
        fields.fault(
            "layers",
            "Two layers have the id " + Shown.quoted(layer.id()) + ".",
            "Give each one of its own.");
      }
    }
    return fields.isStillGood();
  }

  private static List<String> names(FieldReader fields, String field) {
    return fields.values(field, node -> FieldReader.text(node).then(FileName::name));
  }
}
