package shelfful.files;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Reads files of weeks: what is asked, and finished plans. A plan comes back as a plain one: it
 * must be inspected before it is shown or saved again.
 */
public final class WeekReader {
  private WeekReader() {}

  /** Reads a week; never throws for what is in it, nor when it is not there. */
  public static ReadResult<WeekRequest> request(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> request(bytes, problems)));
  }

  /**
   * Reads a week whose bytes are at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<WeekRequest> request(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(request(bytes, problems));
  }

  private static Optional<WeekRequest> request(byte[] bytes, Problems problems) {
    return FieldReader.ofDocument(bytes, problems).flatMap(WeekReader::request);
  }

  private static Optional<WeekRequest> request(FieldReader document) {
    if (!DocumentHead.WEEK.isHeadOf(document)) {
      return Optional.empty();
    }
    Optional<WeekRequest> read = WeekFormat.read(document);
    return read.isEmpty() ? read : document.make(read::get);
  }

  /**
   * What either kind of file holds.
   *
   * @param request what is asked
   * @param plan the plan, if it is the file of one
   */
  public record Week(WeekRequest request, Optional<WeekPlan> plan) {}

  /** Reads what is asked or a plan, whichever the file says it is. */
  public static ReadResult<Week> either(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(
        FileBytes.of(path, problems)
            .flatMap(bytes -> FieldReader.ofDocument(bytes, problems))
            .flatMap(WeekReader::either));
  }

  private static Optional<Week> either(FieldReader document) {
    return DocumentHead.WEEK_PLAN.isNamedBy(document)
        ? plan(document).map(plan -> new Week(plan.request(), Optional.of(plan)))
        : request(document).map(request -> new Week(request, Optional.empty()));
  }

  /** Reads a week plan; never throws for what is in it, nor when it is not there. */
  public static ReadResult<WeekPlan> plan(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> plan(bytes, problems)));
  }

  /**
   * Reads a week plan whose bytes are at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<WeekPlan> plan(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(plan(bytes, problems));
  }

  private static Optional<WeekPlan> plan(byte[] bytes, Problems problems) {
    return FieldReader.ofDocument(bytes, problems).flatMap(WeekReader::plan);
  }

  private static Optional<WeekPlan> plan(FieldReader document) {
    return DocumentHead.WEEK_PLAN.isHeadOf(document)
        ? WeekPlanFormat.read(document)
        : Optional.empty();
  }
}
