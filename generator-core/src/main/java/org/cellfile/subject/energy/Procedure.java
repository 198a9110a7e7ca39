package org.cellfile.subject.energy;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.quantity.Interval;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/**
 * The rules by which energies are isolated in the plant: what a procedure holds beside its steps.
 *
 * @param items in the words of the plant; each is missing where it is not stated
 * @param since the day from which it is used
 * @param every how often it is inspected
 */
public record Procedure(Map<Item, Stated<String>> items, Stated<LocalDate> since, Stated<Interval> every, Span where) {

    /** Who says what a procedure holds. */
    public static final String SOURCE = "29 CFR 1910.147(c)(4)(ii)";

    /**
     * What a procedure holds beside the steps that isolate and verify, which are those of the energies. Published: OSHA eTool
     * Lockout-Tagout, "Energy Control Procedures - Required Content", which names the paragraph of each.
     */
    public enum Item {
        INTENDED_USE("intended-use", "(A)", "Intended use", "what the procedure is used for"),
        SCOPE("scope", "", "Scope", "which machines and which work it is for"),
        PURPOSE("purpose", "", "Purpose", "whom it protects from what"),
        AUTHORIZATION("authorization", "", "Authorization", "who gives leave to use it, and on what proof"),
        RULES("rules", "", "Rules", "the rules that everybody keeps to"),
        PLACE("place-locks", "(C)", "Placing locks", "the steps of placing locks or tags"),
        REMOVE("remove-locks", "(C)", "Removing locks", "the steps of removing locks or tags"),
        TRANSFER(
                "transfer-locks",
                "(C)",
                "Transferring locks",
                "the steps of handing locks over, as at a change of shift"),
        RESPONSIBLE("responsible-for-locks", "(C)", "Responsible for locks", "who answers for locks and tags"),
        ENFORCEMENT("enforcement", "", "Enforcement", "the means by which it is enforced");

        private final String key;
        private final String paragraph;
        private final String title;
        private final String asks;

        Item(String key, String paragraph, String title, String asks) {
            this.key = key;
            this.paragraph = paragraph;
            this.title = title;
            this.asks = asks;
        }

        /** As it is written in the description. */
        public String key() {
            return key;
        }

        /** As it is headed in the safety file. */
        public String title() {
            return title;
        }

        /** Where it is asked for. */
        String source() {
            return SOURCE + paragraph;
        }

        /** What it has to tell. */
        String asks() {
            return asks;
        }
    }

    static Procedure read(Section section) {
        Map<Item, Stated<String>> items = new LinkedHashMap<>();
        Arrays.stream(Item.values()).forEach(item -> items.put(item, section.statementIfStated(item.key)));
        Procedure procedure =
                new Procedure(items, section.date("since"), section.intervalIfStated("every"), section.where());
        section.close();
        return procedure;
    }

    public Stated<String> item(Item item) {
        return items.getOrDefault(item, new Stated.Missing<>(where, item.key));
    }

    /** What it does not tell. */
    List<Item> missing() {
        return Arrays.stream(Item.values())
                .filter(item -> item(item).value().isEmpty())
                .toList();
    }
}
