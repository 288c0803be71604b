package shelfful.ui.studio;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.studio.Studio;
import shelfful.ui.words.Words;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Outline;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/** Which things each section holds, what its pages show, and what a fresh thing is. */
record Sections(FieldMaker make) {

  static Place<Shelf> shelf(int index) {
    return Place.in(
        "shelves", Studio::shelves, (studio, is) -> Component.with(studio, "shelves", is), index);
  }

  /** The groups of a page; none where the section has no such thing. */
  List<Group> page(Studio studio, Section section, int index) {
    if (section != Section.RULES && (index < 0 || index >= names(studio, section).size())) {
      return List.of();
    }
    return switch (section) {
      case FORMS -> new FormPage(make, form(index)).groups(studio);
      case GLAZES -> new GlazePage(make, glaze(index)).groups();
      case KILNS -> new KilnPage(make, kiln(index)).groups(studio);
      case PLANS -> new PlanPage(make, KilnPlan.place(studio, index)).groups(studio);
      case SHELVES -> new ShelfPage(make, shelf(index)).groups(studio);
      case POSTS -> List.of(post(index));
      case RULES -> new RulesPage(make).groups(studio);
    };
  }

  private static Place<Form> form(int index) {
    return Place.in(
        "forms", Studio::forms, (studio, is) -> Component.with(studio, "forms", is), index);
  }

  private static Place<Glaze> glaze(int index) {
    return Place.in(
        "glazes", Studio::glazes, (studio, is) -> Component.with(studio, "glazes", is), index);
  }

  private static Place<Kiln> kiln(int index) {
    return Place.in(
        "kilns", Studio::kilns, (studio, is) -> Component.with(studio, "kilns", is), index);
  }

  private Group post(int index) {
    Place<Post> post =
        Place.in(
            "posts", Studio::posts, (studio, is) -> Component.with(studio, "posts", is), index);
    return new Group(
        make.words().of("group.post"),
        List.of(
            new IdField(make).of(post.part("id", Post::id)),
            make.length("postLength", post.part("length", Post::length), Bounds.SIZE),
            make.length("postAcross", post.part("across", Post::across), Bounds.SIZE),
            make.count("count", post.part("count", Post::count), 0, ShelfPage.MOST)),
        List.of());
  }

  /** What the things of a section are called, in their order. */
  List<String> names(Studio studio, Section section) {
    return switch (section) {
      case FORMS -> studio.forms().stream().map(Form::name).toList();
      case GLAZES -> studio.glazes().stream().map(one -> one.letter() + "  " + one.name()).toList();
      case KILNS -> studio.kilns().stream().map(Kiln::name).toList();
      case PLANS ->
          KilnPlan.of(studio).stream()
              .map(one -> one.kiln(studio).name() + ": " + one.plan().name())
              .toList();
      case SHELVES ->
          studio.shelves().stream().map(one -> one.count() + " × " + one.name()).toList();
      case POSTS ->
          studio.posts().stream()
              .map(one -> one.count() + " × " + make.manner().length(one.length()))
              .toList();
      case RULES -> List.of(studio.name());
    };
  }

  /** The list behind a section; empty for the rules, which are one. */
  Optional<Things<?>> things(Section section) {
    return switch (section) {
      case FORMS -> Optional.of(forms());
      case GLAZES -> Optional.of(glazes());
      case KILNS ->
          Optional.of(
              new Things<>(
                  Studio::kilns,
                  (studio, is) -> Component.with(studio, "kilns", is),
                  Kiln::id,
                  (one, id) -> Component.with(Component.with(one, "id", id), "name", id),
                  studio -> Optional.empty()));
      case PLANS -> Optional.of(plans());
      case SHELVES -> Optional.of(shelves());
      case POSTS ->
          Optional.of(
              new Things<>(
                  Studio::posts,
                  (studio, is) -> Component.with(studio, "posts", is),
                  Post::id,
                  (one, id) -> Component.with(one, "id", id),
                  studio ->
                      Optional.of(
                          new Post(
                              words().of("new.post"),
                              Length.ofInches(4),
                              Length.ofMillimetres(38),
                              0))));
      case RULES -> Optional.empty();
    };
  }

  private Words words() {
    return make.words();
  }

  private Things<Form> forms() {
    return new Things<>(
        Studio::forms,
        (studio, is) -> Component.with(studio, "forms", is),
        Form::id,
        (one, id) -> Component.with(Component.with(one, "id", id), "name", id),
        studio ->
            Optional.of(
                new Form(
                    words().of("new.form"),
                    words().of("new.form"),
                    Stage.BISQUE,
                    Shrinkage.NONE,
                    Profile.upright(
                        new Outline.Round(Length.ofMillimetres(60)),
                        new Outline.Round(Length.ofMillimetres(90)),
                        Length.ofMillimetres(100),
                        List.of()),
                    Optional.empty(),
                    new Mass(350),
                    Length.ofMillimetres(1),
                    Length.ofMillimetres(4))));
  }

  private Things<Glaze> glazes() {
    return new Things<>(
        Studio::glazes,
        (studio, is) -> Component.with(studio, "glazes", is),
        Glaze::id,
        (one, id) -> Component.with(Component.with(one, "id", id), "name", id),
        studio ->
            Optional.of(
                new Glaze(
                    words().of("new.glaze"),
                    words().of("new.glaze"),
                    freeLetter(studio),
                    "#8899aa",
                    studio.glazes().stream().findFirst().map(Glaze::cone).orElse(new Cone("6")),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    Length.ZERO,
                    Set.of(),
                    Set.of())));
  }

  static String freeLetter(Studio studio) {
    for (char letter = 'A'; letter <= 'Z'; letter++) {
      String one = String.valueOf(letter);
      if (studio.glazes().stream().noneMatch(glaze -> glaze.letter().equalsIgnoreCase(one))) {
        return one;
      }
    }
    return "Z" + studio.glazes().size() % 10;
  }

  /** A column plan begins as a copy of another, because it has to stand from the first moment. */
  private Things<KilnPlan> plans() {
    return new Things<>(
        KilnPlan::of,
        KilnPlan::with,
        one -> one.plan().id(),
        (one, id) ->
            new KilnPlan(
                one.kiln(), Component.with(Component.with(one.plan(), "id", id), "name", id)),
        studio -> Optional.empty());
  }

  private Things<Shelf> shelves() {
    return new Things<>(
        Studio::shelves,
        (studio, is) -> Component.with(studio, "shelves", is),
        Shelf::id,
        (one, id) -> Component.with(Component.with(one, "id", id), "name", id),
        studio ->
            Optional.of(
                new Shelf(
                    words().of("new.shelf"),
                    words().of("new.shelf"),
                    new ShelfOutline.FullRound(Length.ofMillimetres(400)),
                    Length.ofMillimetres(18),
                    Optional.empty(),
                    Optional.empty(),
                    0)));
  }
}
