package shelfful.ui;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;

/** The fences of the desk: who may know whom. */
@AnalyzeClasses(packages = "shelfful.ui", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** What the solver hands out; never how it plans, packs, reads or prints. */
  private static final List<String> HANDED_OUT =
      List.of(
          "app",
          "edit",
          "week",
          "review",
          "cost",
          "remedy",
          "purchase",
          "record",
          "learning",
          "figures",
          "load",
          "inspect",
          "drawing",
          "studio",
          "kiln",
          "ware",
          "measure");

  @ArchTest static final ArchRule wordsKnowNobody = only("words", List.of());

  @ArchTest
  static final ArchRule tasksKnowTheScreensThread =
      only("task", List.of("javafx.animation..", "javafx.application.."));

  @ArchTest static final ArchRule shelfviewKnowsNobody = only("shelfview", List.of("javafx.."));

  @ArchTest
  static final ArchRule kilnviewPaintsLikeTheShelfview =
      only("kilnview", List.of("javafx..", "shelfful.ui.shelfview..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule listsKnowWords =
      only("lists", List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.words.."));

  @ArchTest static final ArchRule stepsKnowNobody = only("steps", List.of("javafx.beans.."));

  @ArchTest
  static final ArchRule looksKnowWords = only("look", List.of("javafx..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule studioIsEditedApart =
      only(
          "studio",
          List.of(
              "javafx..",
              "shelfful.ui.look..",
              "shelfful.ui.shelfview..",
              "shelfful.ui.steps..",
              "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule batchesAreEditedApart =
      only(
          "batches",
          List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.steps..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule whyLooksAtTheLoad =
      only(
          "why",
          List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.task..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule worthMeasuresApart =
      only(
          "worth",
          List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.task..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule firingsAreDrawnLikeTheLoad =
      only(
          "firings",
          List.of(
              "javafx..",
              "shelfful.ui.look..",
              "shelfful.ui.shelfview..",
              "shelfful.ui.task..",
              "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule whatIsLearnedKnowsNoOtherScreen =
      only(
          "learned",
          List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.task..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule figuresKnowNoOtherScreen =
      only("figures", List.of("javafx..", "shelfful.ui.look..", "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule workKnowsTasks =
      only(
          "work",
          List.of(
              "javafx.beans..",
              "javafx.collections..",
              "shelfful.ui.steps..",
              "shelfful.ui.task.."));

  @ArchTest
  static final ArchRule theHandKnowsTheWork =
      only(
          "hand",
          List.of(
              "javafx.beans..",
              "shelfful.ui.steps..",
              "shelfful.ui.work..",
              "shelfful.ui.words.."));

  @ArchTest static final ArchRule calendarKnowsNobody = only("calendar", List.of("javafx.."));

  @ArchTest
  static final ArchRule weekKnowsTheCalendar =
      only(
          "week",
          List.of(
              "javafx..",
              "shelfful.ui.calendar..",
              "shelfful.ui.look..",
              "shelfful.ui.task..",
              "shelfful.ui.words.."));

  @ArchTest
  static final ArchRule deskKnowsTheScreens = only("desk", List.of("javafx..", "shelfful.ui.."));

  @ArchTest
  static final ArchRule sheetsAreNotPrintedHere =
      noClasses()
          .should()
          .dependOnClassesThat()
          .haveNameMatching("shelfful\\.drawing\\.(Pdf|Svg).*")
          .because("the desk paints the display list itself");

  @ArchTest
  static final ArchRule viewModelsHaveNoWidgets =
      noClasses()
          .that()
          .haveSimpleNameEndingWith("ViewModel")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..")
          .because("what the desk does is tested without a screen");

  @ArchTest
  static final ArchRule threadsAreStartedInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.ui.task..")
          .should()
          .callMethod(Platform.class, "runLater", Runnable.class)
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Thread.class)
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(java.util.concurrent.Executor.class)
          .because("two threads meet in one place or everywhere");

  @ArchTest
  static final ArchRule noNetworkNoOtherWindows =
      noClasses()
          .should()
          .dependOnClassesThat(
              JavaClass.Predicates.resideInAnyPackage(
                  "java.net.http..", "javafx.scene.web..", "java.awt..", "javax.swing.."))
          .because("the desk works on files of its user and on nothing else");

  @ArchTest
  static final ArchRule namesSayWhatThingsAre =
      noClasses()
          .should()
          .haveNameMatching(
              ".*(Manager|Helper|Util|Utils|Handler|Processor|Impl|Abstract|Base|Info|Data)$");

  @ArchTest
  static final ArchRule noCircles =
      slices().matching("shelfful.ui.(*)..").should().beFreeOfCycles();

  /** A package may use itself, the JDK, what the solver hands out, and what is listed. */
  private static ArchRule only(String name, List<String> others) {
    List<String> allowed = new ArrayList<>(others);
    allowed.add("java..");
    allowed.add("shelfful.ui." + name + "..");
    HANDED_OUT.forEach(one -> allowed.add("shelfful." + one + ".."));
    return classes()
        .that()
        .resideInAPackage("shelfful.ui." + name + "..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(new String[0]));
  }
}
