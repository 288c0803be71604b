package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Pose;
import shelfful.geometry.Region;

class ShelfPackerTest {
  private static final double EXACT = 1e-9;

  @Test
  void answersEveryRandomQuestionWithAValidSettingOrNone() {
    RandomQuestions questions = new RandomQuestions(42);
    int packed = 0;
    for (int i = 0; i < 250; i++) {
      ShelfQuestion question = questions.next();
      ShelfAnswer answer = new ShelfPacker().pack(question, Effort.QUICK, i);
      if (answer instanceof Packed found && question.bodies() > 0) {
        packed++;
        Judge.accepts(question, found);
      }
    }
    assertThat(packed).isGreaterThan(100);
  }

  @Test
  void neverProvesImpossibleWhatItCanPack() {
    RandomQuestions questions = new RandomQuestions(43);
    for (int i = 0; i < 200; i++) {
      ShelfQuestion question = questions.next();
      ShelfModel model = new ShelfModel(question);
      boolean found =
          question.bodies() > 0
              && new ShelfSearch(model, i, () -> false).run(Effort.QUICK, List.of()) != null;
      if (found) {
        assertThat(PackingBound.refusal(question)).isEmpty();
      }
    }
  }

  @Test
  void givesTheSameAnswerBitForBit() {
    RandomQuestions first = new RandomQuestions(44);
    RandomQuestions second = new RandomQuestions(44);
    ShelfPacker worn = new ShelfPacker();
    for (int i = 0; i < 60; i++) {
      ShelfAnswer answer = worn.pack(first.next(), Effort.QUICK, 7);
      assertThat(new ShelfPacker().pack(second.next(), Effort.QUICK, 7)).isEqualTo(answer);
    }
  }

  @Test
  void staysValidWhenAllIsMoved() {
    RandomQuestions questions = new RandomQuestions(45);
    Region here = Region.disc(260);
    Region there = Region.disc(70, -40, 260);
    for (int i = 0; i < 40; i++) {
      ShelfQuestion any = questions.next();
      ShelfQuestion question = in(here, any);
      if (new ShelfPacker().pack(question, Effort.QUICK, 1) instanceof Packed packed) {
        List<Placed> moved = new ArrayList<>();
        for (Placed body : packed.bodies()) {
          Pose pose = body.pose();
          moved.add(new Placed(body.kind(), new Pose(pose.x() + 70, pose.y() - 40, pose.angle())));
        }
        double spare = Spare.of(in(there, any), moved);
        if (question.bodies() > 0) {
          assertThat(spare).isBetween(packed.spare() - EXACT, packed.spare() + EXACT);
        }
      }
    }
  }

  @Test
  void staysValidInTheMirror() {
    ShelfQuestion question =
        ShelfQuestion.of(
            Questions.shelfOnThreePosts(),
            List.of(Questions.cup(), Questions.dish()),
            new int[] {8, 3},
            6);
    Packed packed = (Packed) new ShelfPacker().pack(question, Effort.NORMAL, 1);
    // Cup and dish are each their own mirror image across their x axis, and so is the shelf.
    List<Placed> mirrored =
        packed.bodies().stream().map(body -> new Placed(body.kind(), mirror(body.pose()))).toList();
    assertThat(Spare.of(question, mirrored)).isGreaterThanOrEqualTo(packed.spare() - EXACT);
  }

  private static Pose mirror(Pose pose) {
    return new Pose(pose.x(), -pose.y(), -pose.angle());
  }

  private static ShelfQuestion in(Region region, ShelfQuestion any) {
    ShelfSpace space = ShelfSpace.of(new Room(region, 3, Applies.BODY));
    return new ShelfQuestion(space, any.kinds(), any.counts(), any.clearance());
  }

  @Test
  void startsFromANeighbour() {
    BodyKind cup = Questions.cup();
    BodyKind tumbler = BodyKind.round("tumbler", 38, 95);
    ShelfSpace shelf = Questions.shelfOnThreePosts();
    List<BodyKind> kinds = List.of(cup, tumbler);
    ShelfQuestion before = ShelfQuestion.of(shelf, kinds, new int[] {9, 5}, 6);
    Packed packed = (Packed) new ShelfPacker().pack(before, Effort.NORMAL, 1);
    for (int[] counts : new int[][] {{8, 5}, {9, 6}, {8, 6}, {9, 5}}) {
      ShelfQuestion after = ShelfQuestion.of(shelf, kinds, counts, 6);
      ShelfPacker packer = new ShelfPacker();
      ShelfAnswer answer = packer.pack(after, Effort.QUICK, 1, packed.bodies());
      assertThat(answer).isInstanceOf(Packed.class);
      Judge.accepts(after, (Packed) answer);
    }
  }

  @Test
  void keepsANeighbourThatAlreadyFits() {
    ShelfQuestion six = Questions.circles(Region.disc(330), 6);
    Packed packed = (Packed) new ShelfPacker().pack(six, Effort.NORMAL, 1);
    ShelfQuestion five = Questions.circles(Region.disc(330), 5);
    ShelfPacker packer = new ShelfPacker();
    Packed fewer = (Packed) packer.pack(five, Effort.QUICK, 9, packed.bodies());
    assertThat(fewer.bodies()).isEqualTo(packed.bodies().subList(0, 5));
    assertThat(packer.minimisations()).isEqualTo(1);
  }

  @Test
  void stopsWhenAsked() {
    ShelfQuestion hard = Questions.circles(Region.disc(100 * 4.5213), 15);
    ShelfPacker packer = new ShelfPacker(() -> true);
    assertThat(packer.pack(hard, Effort.THOROUGH, 1)).isEqualTo(new DoesNotFit(Cause.NOT_FOUND));
    assertThat(packer.minimisations()).isLessThan(3);
  }

  @Test
  void packsNothingAtAll() {
    Packed none =
        (Packed) new ShelfPacker().pack(Questions.circles(Region.disc(50), 0), Effort.QUICK, 1);
    assertThat(none.bodies()).isEmpty();
    assertThat(none.spare()).isInfinite();
  }

  @Test
  void refusesOneBodyThatIsTooLarge() {
    assertThat(new ShelfPacker().pack(Questions.circles(Region.disc(99), 1), Effort.QUICK, 1))
        .isEqualTo(new DoesNotFit(Cause.TOO_LARGE));
    ShelfQuestion platter =
        Questions.touching(Region.rectangle(300, 300), List.of(Questions.dish()), 1);
    assertThat(PackingBound.refusal(platter)).isEmpty();
    ShelfQuestion longer =
        Questions.touching(Region.rectangle(100, 120), List.of(Questions.dish()), 1);
    assertThat(PackingBound.refusal(longer)).contains(Cause.TOO_LARGE);
  }
}
