package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * Whether a change is a substantial modification, as somebody decided it. The program never does: it holds the conclusion against the
 * answers. It lies with the one in whose name the change is made, and the law of the place governs.
 *
 * <p>The first four questions are those of Regulation (EU) 2023/1230, Article 3(16) (from memory). The same questions, one by one, are
 * asked by the German ministry paper on substantial modification of machinery of 9 April 2015 (read in public summaries of it). The
 * last is what triggers a pre-start review in Ontario, R.R.O. 1990, Regulation 851, section 7 (read in public summaries of it): a new
 * or modified protective element.
 *
 * @param of tag of the change
 * @param foreseen {@code yes} when the maker foresaw or planned it
 * @param newOrHigherRisk {@code yes} when it creates a hazard or raises a risk
 * @param needsGuardsOrControl {@code yes} when that needs guards or protective devices for which the safety control system is altered
 * @param needsStrength {@code yes} when that needs further measures for stability or mechanical strength
 * @param protectiveElement {@code yes} when a protective element is new or was modified; missing where nobody asks
 * @param substantial the conclusion
 */
public record ModificationDecision(
        Stated<String> tag,
        Stated<String> of,
        Stated<String> foreseen,
        Stated<String> newOrHigherRisk,
        Stated<String> needsGuardsOrControl,
        Stated<String> needsStrength,
        Stated<String> protectiveElement,
        Stated<String> substantial,
        Stated<String> because,
        Stated<String> by,
        Stated<LocalDate> on) {

    public static final String SORT = "decision";

    /** Where the questions come from, for print. */
    public static final String SOURCES =
            "Questions 1 to 4: Regulation (EU) 2023/1230, Article 3(16) (from memory); asked one by one as in the German ministry paper"
                    + " of 9 April 2015 (read in public summaries). Question 5: what triggers a pre-start review in Ontario"
                    + " (read in public summaries).";

    private static final String YES = "yes";
    private static final Set<String> ANSWERS = Set.of(YES, "no");

    /**
     * A question that was published.
     *
     * @param answer missing where it was not answered
     */
    public record Question(String words, Stated<String> answer) {}

    static ModificationDecision read(Section section) {
        return new ModificationDecision(
                section.tag(SORT),
                section.reference("of", Change.SORT),
                section.word("foreseen", ANSWERS),
                section.word("new-or-higher-risk", ANSWERS),
                section.word("needs-guards-or-control", ANSWERS),
                section.word("needs-strength", ANSWERS),
                section.wordIfStated("protective-element", ANSWERS),
                section.word("substantial", ANSWERS),
                section.statement("because"),
                section.reference("by", Person.SORT),
                section.date("on"));
    }

    /** The words of the questions, in their order. */
    public static List<String> questions() {
        return List.of(
                "Did the maker foresee or plan this change?",
                "Does it create a new hazard, or raise a risk?",
                "Does that need guards or protective devices for which the safety control system is altered?",
                "Does that need further measures for stability or mechanical strength?",
                "Is a protective element, device or process new or modified?");
    }

    /** The questions with their answers. */
    public List<Question> answered() {
        List<Stated<String>> answers = answers();
        List<Question> answered = new ArrayList<>();
        for (String question : questions()) {
            answered.add(new Question(question, answers.get(answered.size())));
        }
        return answered;
    }

    private List<Stated<String>> answers() {
        return List.of(foreseen, newOrHigherRisk, needsGuardsOrControl, needsStrength, protectiveElement);
    }

    /**
     * What follows from the answers: {@code yes} when it was not foreseen, creates or raises a risk, and needs guards, control or
     * strength for it. Empty while one of these was not answered.
     */
    public Optional<String> follows() {
        List<Stated<String>> counting = answers().subList(0, 4);
        if (counting.stream().anyMatch(answer -> answer.value().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(
                !yes(foreseen) && yes(newOrHigherRisk) && (yes(needsGuardsOrControl) || yes(needsStrength))
                        ? YES
                        : "no");
    }

    private static boolean yes(Stated<String> answer) {
        return answer.value().filter(YES::equals).isPresent();
    }
}
