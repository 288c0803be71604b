package shelfful.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.app.UsualFiring;
import shelfful.files.BatchListReader;
import shelfful.files.ReadResult;
import shelfful.files.StudioReader;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.sample.SampleLoad;
import shelfful.sample.SampleLoads;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;

/** What there is to plan: the demo lists and the sample loads. */
final class Subjects {
  private Subjects() {}

  /** All of them, the demo lists first. */
  static List<SampleLoad> all(Path demo) {
    List<SampleLoad> subjects = new ArrayList<>();
    subjects.add(demoList(demo, "list-60", "round-top"));
    subjects.add(demoList(demo, "list-200", "round-top"));
    subjects.add(demoList(demo, "list-500", "front"));
    subjects.addAll(SampleLoads.all());
    return subjects;
  }

  /**
   * Those named, in the order of {@link #all}; all of them for no name.
   *
   * @throws IllegalArgumentException for a name that nothing has
   */
  static List<SampleLoad> named(List<String> names, Path demo) {
    List<SampleLoad> all = all(demo);
    for (String name : names) {
      if (all.stream().noneMatch(subject -> subject.name().equals(name))) {
        throw new IllegalArgumentException(
            "There is no instance "
                + name
                + ". Choose from "
                + all.stream().map(SampleLoad::name).toList());
      }
    }
    return all.stream()
        .filter(subject -> names.isEmpty() || names.contains(subject.name()))
        .toList();
  }

  private static SampleLoad demoList(Path demo, String list, String kilnId) {
    Studio studio = found(StudioReader.read(demo.resolve("studio.json")));
    Kiln kiln = studio.kiln(kilnId).orElseThrow();
    List<Batch> batches = found(BatchListReader.read(demo.resolve(list + ".csv"), studio));
    Firing firing = UsualFiring.of(studio, batches, kiln, FiringKind.GLAZE).orElseThrow();
    return new SampleLoad(
        "demo-" + list,
        "the demo studio",
        new LoadRequest(
            studio,
            batches,
            firing,
            Optional.empty(),
            Optional.of(LocalDate.of(2026, 6, 1)),
            1,
            0));
  }

  private static <T> T found(ReadResult<T> result) {
    return result
        .found()
        .orElseThrow(() -> new IllegalArgumentException(result.problems().toString()));
  }
}
