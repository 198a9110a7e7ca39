package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.source.Stated;
import org.cellfile.subject.safeguard.Guarding;

/**
 * Devices that a text of the plant's own names by their tags, as in {@code Look at the lamp above {door-west}.} The sheet prints
 * name and position, so that a text never says where a device was before it was moved.
 */
final class NamedDevices {

    /** A text names a device that the cell does not have. */
    static final FindingId UNKNOWN = new FindingId("sheet.device-unknown");

    /** A translation names other devices than the text does. */
    static final FindingId UNLIKE = new FindingId("translation.other-devices");

    private static final Pattern TAG = Pattern.compile("\\{([^{}]*)\\}");
    private static final Pattern SINGLE = Pattern.compile("[{}]");

    private NamedDevices() {}

    /** The text with name and position in place of each tag; what the cell does not have stays, and is reported. */
    static String told(Stated<String> text, PostedCell cell, Wording wording, Findings findings) {
        Stated<String> here = wording.stated(text);
        List<String> meant = tags(text.characters());
        List<String> named = tags(here.characters());
        if (SINGLE.matcher(TAG.matcher(here.characters()).replaceAll("")).find()) {
            findings.add(Finding.refuses(
                    UNKNOWN,
                    "",
                    here.where(),
                    "this text holds a curly bracket without its partner",
                    "write the tag of a device between the two, as in {door-west}, or leave the bracket out"));
        }
        if (!named.equals(meant)) {
            findings.add(Finding.refuses(
                    UNLIKE,
                    "",
                    here.where(),
                    "this translation names " + listed(named) + ", and the text it translates " + listed(meant),
                    "name the same devices as often in every language, each by its tag in curly brackets"));
        }
        Matcher matcher = TAG.matcher(here.characters());
        StringBuilder told = new StringBuilder();
        while (matcher.find()) {
            String tag = matcher.group(1);
            Optional<String> device = device(tag, cell, wording);
            if (device.isEmpty() && meant.contains(tag)) {
                findings.add(Finding.refuses(
                        UNKNOWN,
                        "",
                        text.where(),
                        "this text names `" + tag
                                + "`, and the cell has no safeguard and no complementary device of that tag",
                        "devices it has: " + Nearest.listed(tag, known(cell))));
            }
            matcher.appendReplacement(told, Matcher.quoteReplacement(device.orElse(matcher.group())));
        }
        return matcher.appendTail(told).toString();
    }

    private static String listed(List<String> tags) {
        return tags.isEmpty() ? "no device" : "`" + String.join("`, `", tags) + "`";
    }

    /** In the order of the alphabet, each as often as it stands there. */
    private static List<String> tags(String text) {
        return TAG.matcher(text).results().map(tag -> tag.group(1)).sorted().toList();
    }

    private static Optional<String> device(String tag, PostedCell cell, Wording wording) {
        Stream<List<Stated<String>>> safeguards = cell.safeguards().stream()
                .map(Guarding::safeguard)
                .map(one -> List.of(one.tag(), one.name(), one.position()));
        Stream<List<Stated<String>>> devices =
                cell.devices().stream().map(one -> List.of(one.tag(), one.name(), one.position()));
        return Stream.concat(safeguards, devices)
                .filter(one -> one.get(0).characters().equals(tag))
                .findFirst()
                .map(one -> wording.text(one.get(1)) + " (" + wording.text(one.get(2)) + ")");
    }

    private static List<String> known(PostedCell cell) {
        return Stream.concat(
                        cell.safeguards().stream().map(Guarding::tag),
                        cell.devices().stream().map(one -> one.tag().characters()))
                .toList();
    }
}
