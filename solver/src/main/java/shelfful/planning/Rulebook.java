package shelfful.planning;

/**
 * What constraints and moves need to know, as a fact they can join.
 *
 * @param judge what the rules say of a sketch
 * @param bench what proposals are made with
 */
record Rulebook(SketchJudge judge, Workbench bench) {

  Evaluation judge(SlotCounts counts) {
    return judge.judge(counts.sketch(judge.stand(), judge.ware().lots(), judge.staying().levels()));
  }

  @Override
  public String toString() {
    return "rulebook";
  }
}
