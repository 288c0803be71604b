package shelfful.ui.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.KeepAStudio;
import shelfful.files.StudioReader;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

class StudioViewModelTest {
  private final Steps steps = new Steps();
  private final Studio demo = DemoStudio.studio();
  private final StudioViewModel model =
      new StudioViewModel(manner(LengthUnit.MILLIMETRES), demo, steps);

  @TempDir private Path folder;

  private static Manner manner(LengthUnit unit) {
    return new Manner(Words.english(), unit, NumberStyle.DOT);
  }

  private Field field(String label) {
    return model.page().get().stream()
        .flatMap(group -> group.fields().stream())
        .filter(field -> field.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private Group.Step step(String label) {
    return model.page().get().stream()
        .flatMap(group -> group.steps().stream())
        .filter(step -> step.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private String shown(String label) {
    return field(label).shown().apply(model.studio().get());
  }

  @Test
  void aSizeTypedInAnyUnitIsStoredExactlyAndTheStudioBeforeStaysAsItWas() {
    assertThat(model.commit(field("Height"), "4 1/2 in")).isEmpty();
    assertThat(model.studio().get().forms().get(0).profile().height())
        .isEqualTo(new Length(114_300));
    assertThat(shown("Height")).isEqualTo("114.3 mm");
    assertThat(steps.done()).hasSize(1);
    assertThat(steps.done().get(0).name())
        .isEqualTo("studio: Height of " + demo.forms().get(0).name());
    Studio after = model.studio().get();
    model.undo();
    assertThat(model.studio().get()).isEqualTo(demo).isEqualTo(DemoStudio.studio());
    model.redo();
    assertThat(model.studio().get()).isEqualTo(after);
  }

  @Test
  void aTextThatIsNoLengthIsRefusedWithHowToMendItAndChangesNothing() {
    Optional<String> wrong = model.commit(field("Height"), "12,5,0");
    assertThat(wrong).hasValueSatisfying(said -> assertThat(said).contains("12,5,0"));
    assertThat(model.studio().get()).isEqualTo(demo);
    assertThat(steps.done()).isEmpty();
  }

  @Test
  void aSizeOutOfRangeIsToldInTheUsersUnit() {
    model.use(manner(LengthUnit.INCHES));
    assertThat(model.commit(field("Height"), "200"))
        .hasValueSatisfying(
            said -> assertThat(said).contains("200 is out of range").contains("118 1/8 in"));
    model.use(new Manner(Words.english(), LengthUnit.CENTIMETRES, NumberStyle.COMMA));
    assertThat(model.commit(field("Height"), "0,01"))
        .hasValueSatisfying(said -> assertThat(said).contains("0,1 cm").contains("300 cm"));
  }

  @Test
  void aRoundedFigureThatIsLeftAloneKeepsTheExactSize() {
    assertThat(model.commit(field("Height"), "101.237")).isEmpty();
    model.use(manner(LengthUnit.INCHES));
    String rounded = shown("Height");
    assertThat(rounded).isEqualTo("\u2248 4 in");
    assertThat(model.commit(field("Height"), rounded)).isEmpty();
    assertThat(model.studio().get().forms().get(0).profile().height())
        .isEqualTo(new Length(101_237));
    assertThat(model.commit(field("Height"), "\u2248 4 1/16 in")).isEmpty();
    assertThat(shown("Height")).isEqualTo("4 1/16 in");
  }

  @Test
  void aColumnThatTheStockCannotBuildIsTold() {
    assertThat(model.warnings().get()).isEmpty();
    model.choose(Section.POSTS);
    for (int i = 0; i < demo.posts().size(); i++) {
      model.choose(i);
      assertThat(model.commit(field("In stock"), "0")).isEmpty();
    }
    assertThat(model.warnings().get()).contains("posts in stock");
  }

  @Test
  void turningTheUnitAThousandTimesLeavesTheSameBytes() {
    byte[] before = KeepAStudio.bytes(model.studio().get());
    for (int i = 0; i < 1000; i++) {
      model.use(manner(LengthUnit.values()[i % 3]));
      for (Group group : model.page().get()) {
        for (Field field : group.fields()) {
          String text = field.shown().apply(model.studio().get());
          assertThat(model.commit(field, text)).isEmpty();
        }
      }
    }
    assertThat(KeepAStudio.bytes(model.studio().get())).isEqualTo(before);
    assertThat(steps.done()).isEmpty();
  }

  @Test
  void everyFieldOfEveryPageTakesBackWhatItShowsInEveryUnitAndLanguage() {
    for (Language language : Language.values()) {
      for (NumberStyle numbers : NumberStyle.values()) {
        model.use(new Manner(Words.in(language), LengthUnit.MILLIMETRES, numbers));
        everyPage(
            field -> {
              String shown = field.shown().apply(model.studio().get());
              Optional<Studio> same = field.put().apply(model.studio().get(), shown).value();
              assertThat(same).as(field.path() + " " + shown).contains(model.studio().get());
            });
      }
    }
  }

  private void everyPage(Consumer<Field> check) {
    int seen = 0;
    for (Section section : Section.values()) {
      model.choose(section);
      for (int i = 0; i < model.names().size(); i++) {
        model.choose(i);
        for (Group group : model.page().get()) {
          for (Field field : group.fields()) {
            check.accept(field);
            seen++;
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(300);
  }

  @Test
  void everyLengthThatIsTypedIsWhatItsFieldThenShows() {
    List<String> taken = new ArrayList<>();
    everyPage(
        field -> {
          Studio before = model.studio().get();
          String text = field.shown().apply(before);
          if (field.kind() == Field.Kind.TYPED && text.endsWith(" mm")) {
            double size = Double.parseDouble(text.replace(" mm", ""));
            String more = size + 0.25 + " mm";
            field
                .put()
                .apply(before, more)
                .value()
                .ifPresent(
                    after -> {
                      assertThat(after).as(field.path()).isNotEqualTo(before);
                      assertThat(field.shown().apply(after)).isEqualTo(more);
                      taken.add(field.path());
                    });
          }
        });
    assertThat(taken).hasSizeGreaterThan(150);
  }

  @Test
  void theBoundsOfTheFieldsAreThoseOfTheFile() {
    for (String label : List.of("Height", "Pieces differ by up to")) {
      Field field = field(label);
      Bounds bounds = label.equals("Height") ? Bounds.SIZE : Bounds.CLEARANCE;
      Length past = bounds.most().plus(new Length(1));
      assertThat(field.put().apply(demo, past.millimetres() + " mm").value()).isEmpty();
    }
    Studio most = tolerance(Bounds.CLEARANCE.most());
    assertThat(KeepAStudio.judge(most).sound()).isTrue();
    Studio tooMuch = tolerance(Bounds.CLEARANCE.most().plus(new Length(1)));
    assertThat(KeepAStudio.judge(tooMuch).sound()).isFalse();
  }

  private Studio tolerance(Length tolerance) {
    return Component.with(
        demo,
        "forms",
        Place.replaced(
            demo.forms(), 0, Component.with(demo.forms().get(0), "tolerance", tolerance)));
  }

  @Test
  void aFootWiderThanItsBodyIsRefusedBecauseTheFileCouldNotBeReadBack() {
    assertThat(model.commit(field("Foot, diameter"), "250 mm"))
        .hasValueSatisfying(said -> assertThat(said).contains("wider than the body"));
    assertThat(model.studio().get()).isEqualTo(demo);
  }

  @Test
  void theDrawingFollowsWhatIsTypedAndTheStudioOnlyWhatIsTaken() {
    assertThat(model.type(field("Height"), "150")).isEmpty();
    assertThat(model.trial().get().forms().get(0).profile().height().millimetres()).isEqualTo(150);
    assertThat(model.studio().get()).isEqualTo(demo);
    assertThat(model.type(field("Height"), "15x")).isPresent();
    assertThat(model.trial().get().forms().get(0).profile().height().millimetres()).isEqualTo(150);
  }

  @Test
  void aHeightBelowAHandleSaysWhichHandleToLower() {
    int withLug =
        IntStream.range(0, demo.forms().size())
            .filter(i -> !demo.forms().get(i).profile().lugs().isEmpty())
            .findFirst()
            .orElseThrow();
    model.choose(withLug);
    assertThat(model.commit(field("Height"), "20"))
        .hasValueSatisfying(said -> assertThat(said).contains("Lower"));
  }

  @Test
  void bandsAreAddedMovedAndRemovedAndAlwaysFillTheHeight() {
    model.take(step("Add a band"));
    model.take(step("Add a band"));
    assertThat(model.studio().get().forms().get(0).profile().bands()).hasSize(3);
    assertThat(model.commit(field("Reaches up to"), "20")).isEmpty();
    assertThat(model.studio().get().forms().get(0).profile().bands().get(1).from())
        .isEqualTo(Length.ofMillimetres(20));
    model.take(step("Remove this band"));
    model.take(step("Remove this band"));
    assertThat(model.studio().get().forms().get(0).profile())
        .isEqualTo(demo.forms().get(0).profile());
  }

  @Test
  void handlesLidsKeepOutsAndRulesComeAndGo() {
    model.take(step("Add a handle"));
    assertThat(model.studio().get().forms().get(0).profile().lugs())
        .hasSize(demo.forms().get(0).profile().lugs().size() + 1);
    model.take(step("Add a lid"));
    assertThat(model.studio().get().forms().get(0).lid()).isPresent();
    assertThat(model.commit(field("Makes the pot higher by"), "25")).isEmpty();
    model.take(step("Remove the lid"));
    model.choose(Section.KILNS);
    model.take(step("Add a keep-out"));
    assertThat(model.studio().get().kilns().get(0).keepOuts())
        .hasSize(demo.kilns().get(0).keepOuts().size() + 1);
    model.choose(Section.RULES);
    model.take(step("Keep two glazes apart"));
    assertThat(model.studio().get().rules().keptApart())
        .hasSize(demo.rules().keptApart().size() + 1);
    assertThat(model.message().get()).isEmpty();
  }

  @Test
  void thingsAreAddedCopiedAndDeletedInEverySectionAndTakenBackOneByOne() {
    for (Section section : List.of(Section.FORMS, Section.GLAZES, Section.SHELVES, Section.POSTS)) {
      model.choose(section);
      int before = model.names().size();
      model.add();
      assertThat(model.names()).hasSize(before + 1);
      assertThat(model.index().get()).isEqualTo(before);
      model.duplicate();
      assertThat(model.names()).hasSize(before + 2);
      model.delete();
      model.delete();
      assertThat(model.names()).as(section + model.message().get()).hasSize(before);
    }
    for (int i = 0; i < 16; i++) {
      model.undo();
    }
    assertThat(model.studio().get()).isEqualTo(demo);
    model.redo();
    assertThat(model.studio().get().forms()).hasSize(demo.forms().size() + 1);
    assertThat(steps.done()).as("taking back is no step of its own").hasSize(1);
  }

  @Test
  void aShelfThatAColumnPlanNeedsStaysAndTheReasonIsTold() {
    model.choose(Section.SHELVES);
    model.delete();
    assertThat(model.studio().get()).isEqualTo(demo);
    assertThat(model.message().get()).contains(demo.shelves().get(0).id());
  }

  @Test
  void aNewShortNameIsFollowedByWhateverRefersToIt() {
    model.choose(Section.SHELVES);
    String was = demo.shelves().get(0).id();
    assertThat(model.commit(field("Short name in lists"), "slab")).isEmpty();
    assertThat(KeepAStudio.judge(model.studio().get()).sound()).isTrue();
    List<String> used =
        model.studio().get().kilns().stream()
            .flatMap(kiln -> kiln.columnPlans().stream())
            .flatMap(plan -> plan.columns().stream())
            .flatMap(column -> column.places().stream())
            .flatMap(place -> place.shelfIds().stream())
            .toList();
    assertThat(used).contains("slab").doesNotContain(was);
    model.choose(Section.GLAZES);
    for (int i = 0; i < demo.glazes().size(); i++) {
      model.choose(i);
      assertThat(model.commit(field("Short name in lists"), "glaze-" + i)).isEmpty();
    }
    assertThat(KeepAStudio.judge(model.studio().get()).sound()).isTrue();
  }

  @Test
  void twoThingsCannotHaveOneShortName() {
    String other = demo.forms().get(1).id().toUpperCase(Locale.ROOT);
    assertThat(model.commit(field("Short name in lists"), other)).isPresent();
    assertThat(model.studio().get()).isEqualTo(demo);
  }

  @Test
  void shapesOfChambersAndShelvesChangeWhereTheColumnsStillStand() {
    model.choose(Section.SHELVES);
    model.add();
    for (String shape :
        List.of(
            "HALF_ROUND", "QUARTER_ROUND", "POLYGON", "HALF_POLYGON", "RECTANGLE", "FULL_ROUND")) {
      assertThat(model.commit(field("Shape from above"), shape)).as(shape).isEmpty();
    }
    model.choose(Section.KILNS);
    assertThat(model.commit(field("Floor to lid"), "2 m")).isPresent();
    assertThat(model.commit(field("Shape from above"), "RECTANGLE")).isEmpty();
  }

  @Test
  void whatIsSavedIsReadBackAsTheSameStudioAndTheVersionBeforeIsKept() throws IOException {
    Path file = folder.resolve("mine.json");
    Files.write(file, KeepAStudio.bytes(demo));
    model.open(file);
    model.commit(field("Name"), "Tall mug");
    assertThat(model.unsaved().get()).isTrue();
    model.save(file);
    assertThat(model.unsaved().get()).isFalse();
    assertThat(model.message().get()).contains("mine.json");
    assertThat(StudioReader.read(file).found()).contains(model.studio().get());
    assertThat(StudioReader.read("b", Files.readAllBytes(folder.resolve("mine.json.bak"))).found())
        .contains(demo);
  }

  @Test
  void whatCannotBeSavedOrOpenedIsToldAndNothingIsLost() {
    model.commit(field("Name"), "Tall mug");
    Studio mine = model.studio().get();
    model.save(folder.resolve("no-such-folder").resolve("mine.json"));
    assertThat(model.message().get()).contains("mine.json").contains("folder");
    assertThat(model.unsaved().get()).isTrue();
    model.open(folder.resolve("not-there.json"));
    assertThat(model.message().get()).contains("not-there.json");
    assertThat(model.studio().get()).isEqualTo(mine);
  }
}
