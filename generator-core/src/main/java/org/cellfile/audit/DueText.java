package org.cellfile.audit;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The text that pages must show, taken from their markup: what is in the markup, in order, and what the layout adds to it. Of the
 * latter it knows the heads of tables that are repeated, the numbers of a list, the numbers of pages, and the margins.
 */
final class DueText {

    /** A number of a page that the layout puts after the letter before {@code place}. */
    record PageNumber(int place, String before, String target) {}

    /** The rows of a table, and the head that is repeated above them on each further page. */
    record Rows(int from, int to, String head) {}

    private static final Set<String> NO_TEXT = Set.of("style", "title", "bookmarks");

    private final Letters text = new Letters();
    private final Letters drawings = new Letters();
    private final StringBuilder margin = new StringBuilder();
    private final Map<Integer, PageNumber> pageNumbers = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final List<Rows> rows = new ArrayList<>();
    private int numbered;

    private final Deque<Element> open = new ArrayDeque<>();
    private final Deque<String> heads = new ArrayDeque<>();

    /** An element that was not ended yet. */
    private record Element(String name, String kind, String leadsTo, int from, Place place, boolean capitals) {}

    /** Where text of an element goes. */
    private enum Place {
        TEXT,
        DRAWING,
        MARGIN,
        NOWHERE
    }

    private DueText() {}

    static DueText of(String markup) {
        DueText due = new DueText();
        try {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_COALESCING, true);
            due.read(factory.createXMLStreamReader(new StringReader(markup)));
        } catch (XMLStreamException ours) {
            throw new IllegalStateException("a template does not give well-formed XHTML", ours);
        }
        return due;
    }

    private void read(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> begin(xml);
                case XMLStreamConstants.END_ELEMENT -> end();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> say(xml.getText());
                default -> {}
            }
        }
    }

    private void begin(XMLStreamReader xml) {
        String name = xml.getLocalName();
        String kind = attribute(xml, "class");
        Element around = open.peek();
        Place place = around == null ? Place.TEXT : around.place();
        if (NO_TEXT.contains(name) || kind.equals("band")) {
            place = Place.NOWHERE;
        } else if (place == Place.TEXT && (kind.equals("head") || kind.equals("foot-draft"))) {
            place = Place.MARGIN;
        } else if (place == Place.TEXT && name.equals("svg")) {
            place = Place.DRAWING;
        }
        if (place == Place.TEXT) {
            String id = attribute(xml, "id");
            if (!id.isEmpty()) {
                places.put(id, text.length());
            }
            numbered += name.equals("li") && around != null && around.name().equals("ol") ? 1 : 0;
        }
        if (kind.equals("page-number") || kind.equals("page-count")) {
            margin.append(kind.equals("page-number") ? "\u0001" : "\u0002");
        }
        boolean capitals = kind.equals("box-tone") || (around != null && around.capitals());
        open.push(new Element(name, kind, attribute(xml, "href"), text.length(), place, capitals));
        if (name.equals("table")) {
            heads.push("");
        }
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    private void say(String words) {
        Element in = open.getFirst();
        switch (in.place()) {
            case TEXT -> text.add(in.capitals() ? words.toUpperCase(Locale.ROOT) : words);
            case DRAWING -> drawings.add(words);
            case MARGIN -> margin.append(words);
            case NOWHERE -> {}
        }
    }

    private void end() {
        Element ended = open.pop();
        Element around = open.peek();
        if (ended.name().equals("thead")) {
            heads.pop();
            heads.push(text.part(ended.from(), text.length()));
        } else if (ended.name().equals("tbody")) {
            rows.add(new Rows(ended.from(), text.length(), heads.getFirst()));
        } else if (ended.name().equals("table")) {
            heads.pop();
        }
        if (ended.leadsTo().startsWith("#")) {
            before(ended, around == null ? "" : around.kind())
                    .ifPresent(before -> pageNumbers.put(
                            text.length(),
                            new PageNumber(
                                    text.length(), before, ended.leadsTo().substring(1))));
        }
    }

    /** What the style sheet puts before the number of a page; empty where it puts none. */
    private static Optional<String> before(Element ended, String kindAround) {
        if (ended.kind().equals("to-page")) {
            return Optional.of("p.");
        }
        if (ended.kind().equals("page-of")) {
            return Optional.of("");
        }
        return kindAround.startsWith("contents-") ? Optional.of(".") : Optional.empty();
    }

    /** Without drawings and margins. */
    Letters text() {
        return text;
    }

    /** The texts of all drawings one after the other. */
    Letters drawings() {
        return drawings;
    }

    /** What stands in the head and foot of a page. */
    String margin(int page, int pages) {
        return Letters.withoutSpaces(
                margin.toString().replace("\u0001", String.valueOf(page)).replace("\u0002", String.valueOf(pages)));
    }

    /** The number of a page that stands before the letter at that place, if one does. */
    Optional<PageNumber> pageNumber(int place) {
        return Optional.ofNullable(pageNumbers.get(place));
    }

    /** All places of such numbers with the place to which each leads. */
    Map<Integer, PageNumber> pageNumbers() {
        return pageNumbers;
    }

    /** Where the text of the thing with that id begins. */
    Optional<Integer> place(String id) {
        return Optional.ofNullable(places.get(id));
    }

    /** The head repeated on a page that begins with the letter at that place, if it lies within the rows of a table. */
    Optional<String> headRepeatedAt(int place) {
        return rows.stream()
                .filter(one ->
                        one.from() < place && place < one.to() && !one.head().isEmpty())
                .map(Rows::head)
                .findFirst();
    }

    /** How many numbers of lists the layout writes. */
    int numbered() {
        return numbered;
    }
}
