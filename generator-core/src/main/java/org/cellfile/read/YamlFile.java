package org.cellfile.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * One YAML file as a tree of located nodes.
 *
 * <p>Only the plain part of YAML is read: nothing that refers to another place, changes meaning by a tag, or hides a key.
 */
final class YamlFile {

    static final FindingId SYNTAX = new FindingId("read.syntax");
    static final FindingId NOT_PLAIN = new FindingId("read.not-plain");
    static final FindingId TOO_DEEP = new FindingId("read.too-deep");
    static final FindingId EMPTY = new FindingId("read.empty");
    static final FindingId DUPLICATE_KEY = new FindingId("read.duplicate-key");

    /** No description of a cell needs more; a file that does is broken or hostile. */
    private static final int DEEPEST = 16;

    private static final Pattern HIDDEN_LINE_END = Pattern.compile("[\\x85\\u2028\\u2029]");

    private final SourceFile file;
    private final Findings findings;
    private final Deque<Open> open = new ArrayDeque<>();
    private Optional<Node> root = Optional.empty();
    private boolean refused;
    private boolean stopped;

    private YamlFile(SourceFile file, Findings findings) {
        this.file = file;
        this.findings = findings;
    }

    /** A collection whose end has not been met. */
    private static final class Open {
        private final Span where;
        private final boolean mapping;
        private final List<Node> items = new ArrayList<>();
        private final List<Node.Pair> pairs = new ArrayList<>();
        private final Map<String, Node.Scalar> keys = new HashMap<>();
        private Optional<Node.Scalar> key = Optional.empty();
        private boolean keyRefused;

        private Open(Span where, boolean mapping) {
            this.where = where;
            this.mapping = mapping;
        }
    }

    /** The file's top mapping; empty when any of it could not be read, which was then reported. */
    static Optional<Node.Mapping> read(SourceFile file, Findings findings) {
        YamlFile reading = new YamlFile(file, findings);
        if (reading.hiddenLineEnd()) {
            return Optional.empty();
        }
        try {
            LoaderOptions options = new LoaderOptions();
            options.setCodePointLimit(Integer.MAX_VALUE);
            for (Event event : new Yaml(options).parse(new java.io.StringReader(file.text()))) {
                reading.take(event);
                if (reading.stopped) {
                    return Optional.empty();
                }
            }
        } catch (MarkedYAMLException broken) {
            reading.refuse(
                    SYNTAX,
                    reading.span(broken.getProblemMark(), 1),
                    "this is not YAML: " + reading.problem(broken),
                    "indent with spaces, two for each level, and put text that holds `: `, `#` or quotes in quotes");
            return Optional.empty();
        } catch (ReaderException broken) {
            reading.unprintable(broken.getPosition(), broken.getCodePoint());
            return Optional.empty();
        } catch (YAMLException broken) {
            reading.refuse(SYNTAX, file.whole(), "this is not YAML: " + broken.getMessage(), "");
            return Optional.empty();
        }
        return reading.top();
    }

    /** True when a character ends a line for YAML 1.1 and for no editor: places could not be told. It is reported. */
    private boolean hiddenLineEnd() {
        Matcher hidden = HIDDEN_LINE_END.matcher(file.text());
        if (!hidden.find()) {
            return false;
        }
        unprintable(
                file.text().codePointCount(0, hidden.start()), hidden.group().codePointAt(0));
        return true;
    }

    private void unprintable(int before, int codePoint) {
        refuse(
                SYNTAX,
                spanAt(before),
                "a character that cannot be printed stands here: U+" + String.format(Locale.ROOT, "%04X", codePoint),
                "delete it; it often comes along when text is copied from another program");
    }

    private Optional<Node.Mapping> top() {
        if (root.isEmpty()) {
            refuse(
                    EMPTY,
                    file.whole(),
                    "nothing is written in this file",
                    "delete it, or begin it with `cellfile: 1` and describe a part of the cell in it");
            return Optional.empty();
        }
        if (root.get() instanceof Node.Mapping mapping) {
            return refused ? Optional.empty() : Optional.of(mapping);
        }
        refuse(
                Section.WRONG_SORT,
                root.get().where(),
                "the file holds " + root.get().sort() + " where keys are due",
                "begin it with `cellfile: 1`");
        return Optional.empty();
    }

    private String problem(MarkedYAMLException broken) {
        String problem = broken.getProblem() == null ? "it cannot be read on" : broken.getProblem();
        String context = broken.getContext() == null ? "" : broken.getContext() + ", ";
        String begun = span(broken.getContextMark(), 1).position();
        if (problem.contains("'\\t(TAB)'") || problem.contains("\\t")) {
            return "a tab stands where spaces are due";
        }
        if (problem.contains("expected <block end>")) {
            return "this line is not indented like the ones it belongs to, which begin at " + begun;
        }
        if (problem.contains("mapping values are not allowed")) {
            return "a colon stands where no key can end";
        }
        if (context.contains("quoted scalar") && problem.contains("end of stream")) {
            return "the quote that opens at " + begun + " is never closed";
        }
        if (problem.startsWith("expected ',' or ")) {
            return "the bracket that opens at " + begun + " is not closed before this";
        }
        return context + problem;
    }

    private void take(Event event) {
        if (event instanceof AliasEvent) {
            notPlain(event, "an alias of another part of the file", "write the value here again");
        } else if (event instanceof NodeEvent node && node.getAnchor() != null) {
            notPlain(event, "an anchor `&" + node.getAnchor() + "`", "delete it and write each value where it is used");
        } else if (event instanceof ScalarEvent scalar) {
            if (scalar.getTag() != null) {
                typeMark(event, scalar.getTag());
            } else {
                // YAML writes "nothing" in several ways; here each of them is a value that is missing.
                boolean nothing = scalar.isPlain() && scalar.getValue().matches("~|null|Null|NULL");
                add(new Node.Scalar(
                        nothing ? "" : scalar.getValue(),
                        span(event),
                        event.getStartMark().getIndex(),
                        event.getEndMark().getIndex()));
            }
        } else if (event instanceof CollectionStartEvent start) {
            begin(start);
        } else if (event.is(Event.ID.SequenceEnd) || event.is(Event.ID.MappingEnd)) {
            Open ended = open.pop();
            add(
                    ended.mapping
                            ? new Node.Mapping(List.copyOf(ended.pairs), ended.where)
                            : new Node.Sequence(List.copyOf(ended.items), ended.where));
        } else if (event instanceof DocumentStartEvent && root.isPresent()) {
            notPlain(event, "a second document in the file", "move it to a file of its own");
        }
    }

    private void begin(CollectionStartEvent start) {
        if (start.getTag() != null) {
            typeMark(start, start.getTag());
            return;
        }
        if (open.size() >= DEEPEST) {
            stopped = true;
            refuse(
                    TOO_DEEP,
                    span(start.getStartMark(), 1),
                    "more than " + DEEPEST + " levels lie one in another here",
                    "the format needs no more than six; look for a bracket that is never closed");
            return;
        }
        Span where = span(start.getStartMark(), start.isFlow() ? 1 : 0);
        open.push(new Open(where, start instanceof MappingStartEvent && !(start instanceof SequenceStartEvent)));
    }

    private void add(Node node) {
        Open within = open.peek();
        if (within == null) {
            root = Optional.of(node);
        } else if (!within.mapping) {
            within.items.add(node);
        } else if (within.key.isEmpty() && !within.keyRefused) {
            key(within, node);
        } else {
            within.key.ifPresent(key -> within.pairs.add(new Node.Pair(key, node)));
            within.key = Optional.empty();
            within.keyRefused = false;
        }
    }

    private void key(Open within, Node node) {
        within.keyRefused = true;
        if (!(node instanceof Node.Scalar key)) {
            refuse(NOT_PLAIN, node.where(), node.sort() + " stands where a key is due", "write a single word as key");
        } else if (key.text().equals("<<")) {
            refuse(NOT_PLAIN, key.where(), "a merge key `<<` stands here", "write the keys themselves");
        } else {
            Node.Scalar first = within.keys.putIfAbsent(key.text(), key);
            if (first != null) {
                refuse(
                        DUPLICATE_KEY,
                        key.where(),
                        "`" + key.text() + "` is written twice, first at "
                                + first.where().position(),
                        "keep the one that is true");
            } else {
                within.key = Optional.of(key);
                within.keyRefused = false;
            }
        }
    }

    private void typeMark(Event event, String tag) {
        String written = tag.startsWith(Tag.PREFIX) ? "!!" + tag.substring(Tag.PREFIX.length()) : tag;
        notPlain(event, "the type mark `" + written + "`", "delete it; every value is read as written");
    }

    private void notPlain(Event event, String what, String help) {
        stopped = true;
        refuse(NOT_PLAIN, span(event), what + " stands here, and only plain YAML is read", help);
    }

    private void refuse(FindingId id, Span where, String sentence, String help) {
        refused = true;
        findings.add(Finding.refuses(id, "", where, sentence, help));
    }

    /** From the event's start to its end, or to the end of its first line. */
    private Span span(Event event) {
        Mark start = event.getStartMark();
        Mark end = event.getEndMark();
        return end.getLine() == start.getLine()
                ? span(start, Math.max(0, end.getColumn() - start.getColumn()))
                : span(start, 1);
    }

    private Span span(@Nullable Mark start, int length) {
        return start == null ? file.whole() : new Span(file, start.getLine() + 1, start.getColumn() + 1, length);
    }

    private Span spanAt(int codePoints) {
        String text = file.text();
        List<String> lines = (text.substring(0, text.offsetByCodePoints(0, codePoints)) + "x")
                .lines()
                .toList();
        String last = lines.get(lines.size() - 1);
        return new Span(file, lines.size(), last.codePointCount(0, last.length()), 1);
    }
}
