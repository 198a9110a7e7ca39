package org.cellfile.read;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Interval;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Missing;
import org.cellfile.source.Stated.Written;

/**
 * A group of keys in a file, read by asking for each key and what it should hold. What is not there, cannot be read, or was
 * never asked for is reported here, at its place, and nowhere else.
 */
public final class Section {

    private static final Map<String, Quantity> LEVELS = Stream.of("a", "b", "c", "d", "e")
            .map(Quantity::level)
            .collect(Collectors.toMap(Quantity::toString, Function.identity(), (a, b) -> a, LinkedHashMap::new));

    static final FindingId MISSING_KEY = new FindingId("read.missing-key");
    static final FindingId UNKNOWN_KEY = new FindingId("read.unknown-key");
    static final FindingId WRONG_SORT = new FindingId("read.wrong-sort");
    static final FindingId NO_VALUE = new FindingId("read.no-value");
    static final FindingId SAYS_NOTHING = new FindingId("read.says-nothing");
    static final FindingId NOT_A_DATE = new FindingId("read.not-a-date");
    static final FindingId NOT_AN_INTERVAL = new FindingId("read.not-an-interval");
    static final FindingId OUT_OF_ORDER = new FindingId("date.out-of-order");
    static final FindingId NOT_ONE_LINE = new FindingId("read.not-one-line");
    static final FindingId UNKNOWN_WORD = new FindingId("read.unknown-word");

    /** What people write to fill a line in, letters only: n/a, N.A. and na are the same. */
    private static final Set<String> EMPTY_WORDS = Set.of("no", "none", "na", "tbd", "todo", "yes", "ok");

    /** What would end a line, or steer a device, in the files written; a tab is set as a space. */
    private static final Pattern NOT_TEXT = Pattern.compile("[\\p{Cc}\\u2028\\u2029&&[^\\t]]");

    private final String name;
    private final Span where;
    private final Map<String, Node.Pair> pairs = new LinkedHashMap<>();
    private final Set<String> asked = new TreeSet<>();
    private final Set<String> missing = new TreeSet<>();
    private final Reading reading;

    /** Tags of the items of the list it stands in, with the first that has each. */
    private Map<String, Stated<String>> innerTags = new HashMap<>();

    private boolean closed;

    Section(String name, Node.Mapping mapping, Reading reading) {
        this(name, mapping.where(), mapping.pairs(), reading);
    }

    Section(String name, Span where, Collection<Node.Pair> pairs, Reading reading) {
        this.name = name;
        this.where = where;
        this.reading = reading;
        pairs.forEach(pair -> this.pairs.put(pair.key().text(), pair));
        reading.opened(this);
    }

    /** The tag of what it describes, so that people recognise it; its key when it has none. */
    private String label() {
        return pairs.containsKey("tag") && pairs.get("tag").value() instanceof Node.Scalar tag ? tag.text() : name;
    }

    /** Where it begins. */
    public Span where() {
        return where;
    }

    /** Where a key is written; where the section begins when it is not. */
    public Span where(String key) {
        Node.Pair pair = pairs.get(key);
        return pair == null ? where : pair.key().where();
    }

    /** Every key written, in order. */
    public List<String> keys() {
        return List.copyOf(pairs.keySet());
    }

    /** True when the key is written, whatever it holds. */
    public boolean has(String key) {
        asked.add(key);
        return pairs.containsKey(key);
    }

    /**
     * True when nothing stands under the key: it is not written, nor another that may be a slip for it, or an empty list is. To be
     * asked when every other key of the section was asked for.
     */
    public boolean without(String key) {
        asked.add(key);
        Node.Pair pair = pairs.get(key);
        if (pair != null) {
            return pair.value() instanceof Node.Sequence sequence
                    && sequence.items().isEmpty();
        }
        Set<String> unknown = new TreeSet<>(pairs.keySet());
        unknown.removeAll(asked);
        return Nearest.to(key, unknown).isEmpty();
    }

    /** Text that must be there. */
    public Stated<String> text(String key) {
        return due(key).flatMap(node -> scalar(key, node)).orElseGet(() -> missing(key));
    }

    /** Text that may be left out. */
    public Stated<String> textIfStated(String key) {
        return may(key).flatMap(node -> scalar(key, node)).orElseGet(() -> missing(key));
    }

    /** Text that must be there and stands for a measure; one that says nothing is refused. */
    public Stated<String> statement(String key) {
        return saying(key, text(key));
    }

    /** Text that may be left out and stands for a measure where it is there; one that says nothing is refused. */
    public Stated<String> statementIfStated(String key) {
        return saying(key, textIfStated(key));
    }

    /** The text is kept, so that what rests on it is not found a second time. */
    private Stated<String> saying(String key, Stated<String> text) {
        String letters = text.characters().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
        if (text.value().isPresent() && (letters.isEmpty() || EMPTY_WORDS.contains(letters))) {
            refuse(
                    SAYS_NOTHING,
                    text.where(),
                    "`" + key + "` is `" + text.characters() + "`, which says nothing",
                    "say in a few words what is there or what is done, so that a reader can go and look, or delete the key"
                            + " if it may be left out");
        }
        return text;
    }

    /** One of a few words. */
    public Stated<String> word(String key, Collection<String> words) {
        return oneOf(text(key), key, words);
    }

    /** One of a few words, or nothing. */
    public Stated<String> wordIfStated(String key, Collection<String> words) {
        return oneOf(textIfStated(key), key, words);
    }

    private Stated<String> oneOf(Stated<String> text, String key, Collection<String> words) {
        if (text.value().isEmpty() || words.contains(text.value().get())) {
            return text;
        }
        refuse(
                UNKNOWN_WORD,
                text.where(),
                "`" + key + "` is `" + text.characters() + "`, which has no meaning here",
                "words that have: " + Nearest.listed(text.characters(), words));
        return missing(key);
    }

    /** A quantity that must be there, not below zero. */
    public Stated<Quantity> quantity(String key, Dimension dimension) {
        return due(key).flatMap(node -> quantity(key, node, dimension, true)).orElseGet(() -> missing(key));
    }

    /** A quantity that must be there, above zero. */
    public Stated<Quantity> positive(String key, Dimension dimension) {
        return due(key).flatMap(node -> quantity(key, node, dimension, false)).orElseGet(() -> missing(key));
    }

    /** A quantity that may be left out, above zero where it is there. */
    public Stated<Quantity> positiveIfStated(String key, Dimension dimension) {
        return may(key).flatMap(node -> quantity(key, node, dimension, false)).orElseGet(() -> missing(key));
    }

    /** A time above zero that is not that of a stop, of at most 100 years; in seconds, minutes, hours or years. */
    public Stated<Quantity> longTime(String key) {
        return longTime(key, text(key), WrittenQuantity.LONGEST);
    }

    /** Such a time that may be left out. */
    public Stated<Quantity> longTimeIfStated(String key) {
        return longTime(key, textIfStated(key), WrittenQuantity.LONGEST);
    }

    /** A mean time to failure, or what bounds one. */
    public Stated<Quantity> meanTime(String key) {
        return longTime(key, text(key), WrittenQuantity.LONGEST_MEAN);
    }

    /** A mean time to failure that may be left out; it can be far longer than anybody uses a part. */
    public Stated<Quantity> meanTimeIfStated(String key) {
        return longTime(key, textIfStated(key), WrittenQuantity.LONGEST_MEAN);
    }

    private Stated<Quantity> longTime(String key, Stated<String> text, Quantity longest) {
        return text.value().isEmpty()
                ? missing(key)
                : WrittenQuantity.longTime(text, key, longest, reading.findings())
                        .orElseGet(() -> missing(key));
    }

    /** A score above zero, written as in {@code 15 points}. */
    public Stated<Quantity> points(String key) {
        return due(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.points(text, key, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    /** A performance level, written as in {@code PL d}. */
    public Stated<Quantity> level(String key) {
        return word(key, LEVELS.keySet()).map(LEVELS::get);
    }

    /** A number without a unit that may be left out, above zero where it is there. */
    public Stated<Quantity> numberIfStated(String key) {
        return may(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.number(text, key, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    /** A quantity that may be left out, not below zero. */
    public Stated<Quantity> quantityIfStated(String key, Dimension dimension) {
        return may(key).flatMap(node -> quantity(key, node, dimension, true)).orElseGet(() -> missing(key));
    }

    /** A number without a unit that must be there, above zero. */
    public Stated<Quantity> number(String key) {
        return due(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.number(text, key, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    /** A quantity of whatever dimension that must be there, above zero. */
    public Stated<Quantity> anyQuantity(String key) {
        return due(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.read(text, key, Optional.empty(), false, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    /** A whole number above zero without a unit that may be left out. */
    public Stated<Quantity> countIfStated(String key) {
        Stated<String> text = textIfStated(key);
        if (text.value().isEmpty()) {
            return missing(key);
        }
        if (!text.characters().matches("[1-9]\\d{0,11}")) {
            refuse(
                    WrittenQuantity.NOT_A_NUMBER,
                    text.where(),
                    "`" + key + "` is `" + text.characters() + "`, which is not a whole number above zero",
                    "write digits only, as in 1000");
            return missing(key);
        }
        return text.map(digits -> new Quantity(new BigDecimal(digits), Unit.ONE));
    }

    /** Quantities of any dimension under names that are not known yet; one that cannot be read is missing, and its name is kept. */
    public Map<String, Stated<Quantity>> quantities() {
        Map<String, Stated<Quantity>> quantities = new LinkedHashMap<>();
        pairs.forEach((key, pair) -> {
            asked.add(key);
            Optional<Stated<Quantity>> read = filled(key, pair)
                    .flatMap(node -> scalar(key, node))
                    .flatMap(text -> WrittenQuantity.read(text, key, Optional.empty(), true, reading.findings()));
            quantities.put(key, read.orElseGet(() -> missing(key)));
        });
        return quantities;
    }

    /** A list of quantities above zero; at least one. One that cannot be read is missing, and keeps its place in the list. */
    public List<Stated<Quantity>> positives(String key, Dimension dimension) {
        List<Stated<Quantity>> quantities = new ArrayList<>();
        for (Node item : due(key).map(node -> items(key, node)).orElseGet(List::of)) {
            quantities.add(quantity(key, item, dimension, false).orElseGet(() -> new Missing<>(item.where(), key)));
        }
        reportEmpty(key);
        return quantities;
    }

    /** How many of something there are, a whole number above zero written without a unit, that must be there. */
    public Stated<Quantity> count(String key) {
        return due(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.count(text, key, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    private Optional<Stated<Quantity>> quantity(String key, Node node, Dimension dimension, boolean zero) {
        return scalar(key, node)
                .flatMap(text -> WrittenQuantity.read(text, key, Optional.of(dimension), zero, reading.findings()));
    }

    /** A calendar date, written as in 2026-03-31. */
    public Stated<LocalDate> date(String key) {
        Stated<String> text = text(key);
        return text.value().isEmpty() ? missing(key) : date(text, key);
    }

    /** A calendar date that may be left out. */
    public Stated<LocalDate> dateIfStated(String key) {
        Stated<String> text = textIfStated(key);
        return text.value().isEmpty() ? missing(key) : date(text, key);
    }

    /** How often something is due, written as in {@code 6 months}. */
    public Stated<Interval> interval(String key) {
        return interval(text(key), key);
    }

    /** How often something is due, or nothing. */
    public Stated<Interval> intervalIfStated(String key) {
        return interval(textIfStated(key), key);
    }

    private Stated<Interval> interval(Stated<String> text, String key) {
        if (text.value().isEmpty()) {
            return missing(key);
        }
        Optional<Interval> interval = Interval.of(text.characters());
        if (interval.isEmpty()) {
            refuse(
                    NOT_AN_INTERVAL,
                    text.where(),
                    "`" + key + "` is `" + text.characters() + "`, from which no date can be counted",
                    "write a whole number of days, weeks, months or years, as in 6 months");
            return missing(key);
        }
        return text.map(written -> interval.get());
    }

    /** How many there are, a whole number without a unit, which may be zero. */
    public Stated<Quantity> countOrNone(String key) {
        Stated<String> text = text(key);
        if (text.value().isEmpty()) {
            return missing(key);
        }
        if (!text.characters().matches("0|[1-9]\\d{0,3}")) {
            refuse(
                    WrittenQuantity.NOT_A_NUMBER,
                    text.where(),
                    "`" + key + "` is `" + text.characters() + "`, which is not a whole number",
                    "count them and write the number in digits and without a unit, as in 0 or 1");
            return missing(key);
        }
        return text.map(digits -> new Quantity(new BigDecimal(digits), Unit.ONE));
    }

    private Stated<LocalDate> date(Stated<String> text, String key) {
        if (!text.characters().matches("\\d{4}-\\d{2}-\\d{2}")) {
            refuse(
                    NOT_A_DATE,
                    text.where(),
                    "`" + key + "` is `" + text.characters() + "`, which is not written as a date",
                    "write year, month and day with hyphens, as in 2026-03-31");
            return missing(key);
        }
        try {
            return new Written<>(LocalDate.parse(text.characters()), text.where(), text.characters());
        } catch (DateTimeException noSuchDay) {
            refuse(
                    NOT_A_DATE,
                    text.where(),
                    "there is no day " + text.characters() + " in the calendar",
                    "check the month and the day");
            return missing(key);
        }
    }

    /**
     * The date of what follows. One that lies before what it follows is refused and then missing, so that nothing more rests on
     * it; the same day is in order.
     *
     * @param first the key of what comes first
     * @param then the key of what follows
     */
    public Stated<LocalDate> inOrder(String first, Stated<LocalDate> before, String then, Stated<LocalDate> after) {
        Optional<LocalDate> later =
                before.value().filter(day -> after.value().filter(day::isAfter).isPresent());
        if (later.isEmpty()) {
            return after;
        }
        refuse(
                OUT_OF_ORDER,
                after.where(),
                "`" + then + "` of `" + label() + "` is dated " + after.characters() + ", before its `" + first + "`, "
                        + later.get() + " (" + before.where().position() + ")",
                "see in the record which of the two is written wrongly");
        return new Missing<>(after.where(), then);
    }

    /**
     * A direction or an angle up to a full circle, that must be there.
     */
    public Stated<Quantity> direction(String key) {
        return due(key).flatMap(node -> scalar(key, node))
                .flatMap(text -> WrittenQuantity.direction(text, key, reading.findings()))
                .orElseGet(() -> missing(key));
    }

    /** A point of a plan, in millimetres, that must be there. */
    public Stated<Point> point(String key, Unit unit) {
        return due(key).flatMap(node -> WrittenPoint.read(key, node, unit, this))
                .orElseGet(() -> missing(key));
    }

    /** A point of a plan, in millimetres, or nothing. */
    public Stated<Point> pointIfStated(String key, Unit unit) {
        return may(key).flatMap(node -> WrittenPoint.read(key, node, unit, this))
                .orElseGet(() -> missing(key));
    }

    /** Points of a plan in order, in millimetres; at least one. None when one of them cannot be read, which was reported. */
    public List<Stated<Point>> points(String key, Unit unit) {
        List<Stated<Point>> points = new ArrayList<>();
        reportEmpty(key);
        for (Node item : due(key).map(node -> items(key, node)).orElseGet(List::of)) {
            Optional<Stated<Point>> point = WrittenPoint.read(key, item, unit, this);
            if (point.isEmpty()) {
                return List.of();
            }
            points.add(point.get());
        }
        return points;
    }

    /** The tag of the thing this section describes. */
    public Stated<String> tag(String sort) {
        Stated<String> tag = text("tag");
        reading.tags().define(sort, tag);
        return tag;
    }

    /** A tag that is unique only within the thing it belongs to. */
    public Stated<String> innerTag() {
        Stated<String> tag = text("tag");
        reading.tags().defineWithin(innerTags, tag);
        return tag;
    }

    /** The tag of a thing described elsewhere. */
    public Stated<String> reference(String key, String sort) {
        return reference(key, List.of(sort));
    }

    /** The tag of a thing described elsewhere, which may be of one of several sorts. */
    public Stated<String> reference(String key, List<String> sorts) {
        return refer(text(key), sorts);
    }

    /**
     * Tags of things described elsewhere that are meant together, joined by full stops as in {@code zone.fence.door.300}; the numbers at the
     * end tell apart what lies between the same things.
     */
    public Stated<String> referenceTogether(String key, List<String> sorts) {
        Stated<String> together = text(key);
        if (reading.isCopy() && together.characters().equals(Redaction.MARK)) {
            return together;
        }
        together.value()
                .map(text -> text.replaceFirst("(\\.[0-9]+)+$", "").split("\\.", -1))
                .ifPresent(tags ->
                        Stream.of(tags).forEach(tag -> refer(new Stated.Written<>(tag, together.where(), tag), sorts)));
        return together;
    }

    /** The tag of a thing described elsewhere, or nothing. */
    public Stated<String> referenceIfStated(String key, String sort) {
        return refer(textIfStated(key), List.of(sort));
    }

    /** Tags of things described elsewhere; at least one. */
    public List<Stated<String>> references(String key, String sort) {
        return references(key, List.of(sort));
    }

    /** Tags of things described elsewhere, which may be of several sorts; at least one. */
    public List<Stated<String>> references(String key, List<String> sorts) {
        List<Stated<String>> references = texts(key);
        references.forEach(reference -> refer(reference, sorts));
        return references;
    }

    /** Tags of things described elsewhere, or none. */
    public List<Stated<String>> referencesIfStated(String key, String sort) {
        return referencesIfStated(key, List.of(sort));
    }

    /** Tags of things described elsewhere, which may be of several sorts, or none. */
    public List<Stated<String>> referencesIfStated(String key, List<String> sorts) {
        List<Stated<String>> references = textsIfStated(key);
        references.forEach(reference -> refer(reference, sorts));
        return references;
    }

    /** Whom or what it meant is not told where the reference was left out of a copy, and then it leads nowhere. */
    private Stated<String> refer(Stated<String> reference, List<String> sorts) {
        if (!reading.isCopy() || !reference.characters().equals(Redaction.MARK)) {
            reading.tags().refer(sorts, reference);
        }
        return reference;
    }

    /** A list of texts; at least one. */
    public List<Stated<String>> texts(String key) {
        List<Stated<String>> texts = due(key).map(node -> texts(key, node)).orElseGet(List::of);
        reportEmpty(key);
        return texts;
    }

    /** A list of texts, each one of a few words; at least one. */
    public List<Stated<String>> words(String key, Collection<String> words) {
        return texts(key).stream().map(text -> oneOf(text, key, words)).toList();
    }

    /** A list of texts that may be left out. */
    public List<Stated<String>> textsIfStated(String key) {
        return may(key).map(node -> texts(key, node)).orElseGet(List::of);
    }

    private List<Stated<String>> texts(String key, Node node) {
        List<Stated<String>> texts = new ArrayList<>();
        for (Node item : items(key, node)) {
            if (item instanceof Node.Scalar scalar && scalar.text().isBlank()) {
                noValue(key, item.where());
            } else {
                scalar(key, item).ifPresent(texts::add);
            }
        }
        return texts;
    }

    /** A list of sections; at least one. */
    public List<Section> list(String key) {
        List<Section> sections = due(key).map(node -> sections(key, node)).orElseGet(List::of);
        reportEmpty(key);
        return sections;
    }

    /** A list of sections that may be left out. */
    public List<Section> listIfStated(String key) {
        return may(key).map(node -> sections(key, node)).orElseGet(List::of);
    }

    private List<Section> sections(String key, Node node) {
        List<Section> sections = new ArrayList<>();
        Map<String, Stated<String>> tags = new HashMap<>();
        for (Node item : items(key, node)) {
            section(key, item).ifPresent(section -> {
                section.innerTags = tags;
                sections.add(section);
            });
        }
        return sections;
    }

    private void reportEmpty(String key) {
        Node.Pair pair = pairs.get(key);
        if (pair != null
                && pair.value() instanceof Node.Sequence sequence
                && sequence.items().isEmpty()) {
            noValue(key, pair.key().where());
        }
    }

    private List<Node> items(String key, Node node) {
        if (node instanceof Node.Sequence sequence) {
            return sequence.items();
        }
        wrongSort(key, node, "a list");
        return List.of();
    }

    /** A section that must be there; an empty one stands for it when it is not, so that reading can go on. */
    public Section section(String key) {
        return due(key).flatMap(node -> section(key, node)).orElseGet(() -> Reading.silent(key, where));
    }

    /** A section that may be left out. */
    public Optional<Section> sectionIfStated(String key) {
        return may(key).flatMap(node -> section(key, node));
    }

    private Optional<Section> section(String key, Node node) {
        if (node instanceof Node.Mapping mapping) {
            return Optional.of(new Section(key, mapping, reading));
        }
        wrongSort(key, node, "a group of keys");
        return Optional.empty();
    }

    /** A table of numbers in a file beside the YAML. */
    public Optional<CsvFile> csv(String key, Map<String, Dimension> columns) {
        Stated<String> path = text(key);
        return path.value().flatMap(given -> reading.csv(path, columns));
    }

    /** The plant's logo in a file beside the YAML, if one is stated and can be printed. */
    public Optional<LogoFile> logoIfStated(String key) {
        return LogoFile.of(NamedFile.read(textIfStated(key), NamedFile.Use.LOGO, reading), reading.findings());
    }

    /** A typeface in a file of the folder. */
    public NamedFile typeface(String key) {
        return NamedFile.read(text(key), NamedFile.Use.TYPEFACE, reading);
    }

    /** Files that bear something out, each held against its digest; or none. */
    public List<Evidence> evidence(String key) {
        return each(listIfStated(key), section -> Evidence.read(section, reading));
    }

    /** Says that all that the section may hold was asked for; any other key in it is then reported. */
    public void close() {
        closed = true;
    }

    /**
     * Reports the keys that are missing and those nobody asked for, a mistyped key once. To be called when everything was read,
     * since a key that is asked for later must not pass for a mistyped one.
     */
    void reportKeys() {
        Set<String> unknown = new TreeSet<>(pairs.keySet());
        unknown.removeAll(asked);
        for (String key : missing) {
            Optional<String> mistyped = Nearest.to(key, unknown);
            if (mistyped.isPresent()) {
                unknown.remove(mistyped.get());
                unknown(mistyped.get(), "`" + key + "` is nearest, and it is missing");
            } else {
                refuse(MISSING_KEY, where, "`" + key + "` is missing in `" + label() + "`", "write it");
            }
        }
        if (closed) {
            for (String key : unknown) {
                unknown(
                        key,
                        Nearest.to(key, asked)
                                .map(near -> "`" + near + "` is the nearest key that is")
                                .orElse("keys that are: `" + String.join("`, `", asked) + "`"));
            }
        }
    }

    private void unknown(String key, String help) {
        Node.Pair pair = pairs.get(key);
        if (pair != null) {
            refuse(UNKNOWN_KEY, pair.key().where(), "`" + key + "` is not a key of `" + label() + "`", help);
        }
    }

    /** Reports something about this section that only its reader can see. */
    public void report(Finding finding) {
        reading.findings().add(finding);
    }

    private Optional<Node> due(String key) {
        asked.add(key);
        Node.Pair pair = pairs.get(key);
        if (pair == null) {
            missing.add(key);
            return Optional.empty();
        }
        return filled(key, pair);
    }

    private Optional<Node> may(String key) {
        asked.add(key);
        return Optional.ofNullable(pairs.get(key)).flatMap(pair -> filled(key, pair));
    }

    private Optional<Node> filled(String key, Node.Pair pair) {
        if (pair.value() instanceof Node.Scalar scalar && scalar.text().isBlank()) {
            noValue(key, pair.key().where());
            return Optional.empty();
        }
        return Optional.of(pair.value());
    }

    private void noValue(String key, Span where) {
        refuse(
                NO_VALUE,
                where,
                "nothing is written after `" + key + "`",
                "write its value, or delete the key if it may be left out");
    }

    private Optional<Stated<String>> scalar(String key, Node node) {
        if (node instanceof Node.Scalar scalar) {
            String text = scalar.text().strip();
            Matcher strange = NOT_TEXT.matcher(text);
            if (strange.find()) {
                notOneLine(key, scalar.where(), strange.group().codePointAt(0));
                return Optional.empty();
            }
            return Optional.of(new Written<>(text, scalar.where(), text));
        }
        wrongSort(key, node, "a single value");
        return Optional.empty();
    }

    /** Such a text would come out as several lines, in a calendar as entries nobody stated. */
    private void notOneLine(String key, Span at, int character) {
        boolean ends = character == '\n' || character == '\r' || character == 0x2028 || character == 0x2029;
        refuse(
                NOT_ONE_LINE,
                at,
                "`" + key + "` holds "
                        + (ends
                                ? "a line break"
                                : "a character that is no text, U+" + String.format(Locale.ROOT, "%04X", character)),
                "write it as one run of text; `>-` after the key lets it go on over several lines of the file, without an"
                        + " empty one between them");
    }

    private void wrongSort(String key, Node node, String due) {
        refuse(
                WRONG_SORT,
                node.where(),
                "`" + key + "` is " + node.sort() + ", and " + due + " is due",
                due.equals("a list") ? "begin each item on a line of its own with `- `" : "");
    }

    private <T> Stated<T> missing(String key) {
        return new Missing<>(where, key);
    }

    void refuse(FindingId id, Span at, String sentence, String help) {
        reading.findings().add(Finding.refuses(id, "", at, sentence, help));
    }

    /** Reads each of several sections and closes it. */
    public static <T> List<T> each(List<Section> sections, Function<Section, T> reader) {
        List<T> read = new ArrayList<>();
        for (Section section : sections) {
            read.add(reader.apply(section));
            section.close();
        }
        return List.copyOf(read);
    }
}
