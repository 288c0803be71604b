package shelfful.inspect;

/** One rule, or a few that ask the same question. */
interface Check {
  /** Adds a finding for every place where the setting breaks the rule; none when it keeps to it. */
  void judge(Setting setting, Findings findings);
}
