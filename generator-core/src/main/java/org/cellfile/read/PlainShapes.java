package org.cellfile.read;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.cellfile.dossier.Logo;
import org.cellfile.read.LogoFile.NotALogo;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The shapes of an SVG file. Only elements and attributes known here are copied, each value only in the form SVG 1.1 gives it (from
 * memory), so that neither code nor an address nor anything the page's drawing program could stumble over is left.
 */
final class PlainShapes {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int MOST = 2000;
    private static final int DEEPEST = 40;

    private static final String NUMBER = "[+-]?(?:\\d{1,9}(?:\\.\\d{0,9})?|\\.\\d{1,9})(?:[eE][+-]?\\d{1,2})?";
    private static final String SIZE = NUMBER.substring("[+-]?".length()) + "(?:px)?";
    private static final String COLOUR =
            "none|#[0-9a-fA-F]{3}|#[0-9a-fA-F]{6}|rgb\\( *\\d{1,3} *, *\\d{1,3} *, *\\d{1,3} *\\)|"
                    + "black|white|gray|silver|red|maroon|yellow|olive|lime|green|aqua|teal|blue|navy|fuchsia|purple";
    private static final String NUMBERS = NUMBER + "(?:[\\s,]{1,9}" + NUMBER + "){0,5}";

    /** Every attribute that is copied, with what it may hold. */
    private static final Map<String, Pattern> ATTRIBUTES = Stream.of(
                    Map.entry("x y x1 y1 x2 y2 cx cy", NUMBER + "(?:px)?"),
                    Map.entry("width height r rx ry stroke-width stroke-miterlimit", SIZE),
                    Map.entry("opacity fill-opacity stroke-opacity", "0|1|0?\\.\\d{1,9}|1\\.0{1,9}"),
                    Map.entry("fill stroke", COLOUR),
                    Map.entry("fill-rule", "nonzero|evenodd"),
                    Map.entry("stroke-linecap", "butt|round|square"),
                    Map.entry("stroke-linejoin", "miter|round|bevel"),
                    Map.entry("stroke-dasharray", "none"), // dashes can be so small that a page never gets done
                    Map.entry("stroke-dashoffset", NUMBER + "(?:px)?"),
                    Map.entry(
                            "transform",
                            "(?:\\s{0,9}(?:translate|scale|rotate|skewX|skewY|matrix)\\(\\s{0,9}" + NUMBERS
                                    + "\\s{0,9}\\)[\\s,]{0,9}){1,9}"))
            .flatMap(entry -> Stream.of(entry.getKey().split(" "))
                    .map(name -> Map.entry(name, Pattern.compile(entry.getValue()))))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    /** The elements that are copied, with what each cannot be drawn without. */
    private static final Map<String, List<String>> ELEMENTS = Map.of(
            "g", List.of(),
            "path", List.of("d"),
            "rect", List.of("width", "height"),
            "circle", List.of("r"),
            "ellipse", List.of("rx", "ry"),
            "line", List.of(),
            "polyline", List.of("points"),
            "polygon", List.of("points"));

    /** What draws nothing. */
    private static final Set<String> SILENT_ELEMENTS = Set.of("title", "desc", "metadata");

    private static final Set<String> SILENT_ATTRIBUTES = Set.of("id", "version", "baseProfile", "viewBox", "role");

    /** How many numbers each command of a path takes at a time. */
    private static final Map<Character, Integer> COMMANDS =
            Map.of('M', 2, 'L', 2, 'T', 2, 'H', 1, 'V', 1, 'C', 6, 'S', 4, 'Q', 4, 'A', 7, 'Z', 0);

    private static final Pattern SPACE = Pattern.compile("[\\s,]*");
    private static final Pattern ONE_NUMBER = Pattern.compile(NUMBER);
    private static final Pattern FLAG = Pattern.compile("[01]");

    private final String path;
    private final StringBuilder copied = new StringBuilder();
    private int shapes;
    private int drawn;

    private PlainShapes(String path) {
        this.path = path;
    }

    static Logo of(String path, byte[] bytes) throws NotALogo {
        PlainShapes shapes = new PlainShapes(path);
        Element root = shapes.parse(bytes);
        if (!"svg".equals(root.getLocalName()) || !SVG.equals(root.getNamespaceURI())) {
            throw shapes.noPicture();
        }
        String box = shapes.box(root);
        shapes.copied.append("<g").append(shapes.attributes(root, true)).append('>');
        shapes.children(root, 1);
        if (shapes.drawn == 0) {
            throw new NotALogo(
                    LogoFile.NOT_A_PICTURE,
                    "the logo `" + path + "` holds no shape that could be drawn",
                    "save it anew with the shapes in it");
        }
        return new Logo(shapes.copied.append("</g>").toString(), "", box);
    }

    private Element parse(byte[] bytes) throws NotALogo {
        String start = new String(bytes, StandardCharsets.ISO_8859_1);
        if (start.contains("<!DOCTYPE") || start.contains("<!ENTITY")) {
            throw notPlain("a document type (`<!DOCTYPE`), which can hold entities");
        }
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler()); // the built-in one writes to the console
            return builder.parse(new InputSource(new ByteArrayInputStream(bytes)))
                    .getDocumentElement();
        } catch (SAXException | IOException broken) {
            throw noPicture();
        } catch (ParserConfigurationException missing) {
            throw new IllegalStateException(missing);
        }
    }

    /** Left, top, width and height, from its view box or its size. */
    private String box(Element root) throws NotALogo {
        String box = root.hasAttribute("viewBox")
                ? root.getAttribute("viewBox").strip().replaceAll("[\\s,]+", " ")
                : "0 0 " + root.getAttribute("width").replace("px", "") + " "
                        + root.getAttribute("height").replace("px", "");
        String wide = "(?=[^eE]*[1-9])\\d{1,6}(?:\\.\\d{1,9})?";
        if (!box.matches(NUMBER + " " + NUMBER + " " + wide + " " + wide)) {
            throw new NotALogo(
                    LogoFile.NOT_A_PICTURE,
                    "the logo `" + path + "` does not tell how wide and how high it is",
                    "save it with a view box of four numbers (`viewBox`), or with a width and a height in plain numbers");
        }
        String[] numbers = box.split(" ", -1);
        LogoFile.boxed(path, new BigDecimal(numbers[2]), new BigDecimal(numbers[3]));
        return box;
    }

    private void children(Element parent, int depth) throws NotALogo {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && SVG.equals(element.getNamespaceURI())) {
                copy(element, depth);
            } else if (node.getNodeType() == Node.PROCESSING_INSTRUCTION_NODE) {
                throw notPlain("the instruction `" + node.getNodeName() + "`");
            }
        }
    }

    private void copy(Element element, int depth) throws NotALogo {
        String name = element.getLocalName();
        if (SILENT_ELEMENTS.contains(name)) {
            return;
        }
        List<String> needed = ELEMENTS.get(name);
        if (needed == null) {
            throw notPlain("`<" + name + ">`");
        }
        if (++shapes > MOST || depth > DEEPEST) {
            throw new NotALogo(
                    LogoFile.TOO_LARGE,
                    "the logo `" + path + "` holds more than " + MOST + " shapes, or groups of them nested deeper than "
                            + DEEPEST + " times",
                    "draw it simpler, or save it as PNG: it is printed 7 mm high at most");
        }
        for (String attribute : needed) {
            if (element.getAttribute(attribute).isBlank()) {
                throw notPlain("`<" + name + ">` without `" + attribute + "`");
            }
        }
        copied.append('<').append(name).append(attributes(element, false)).append('>');
        drawn += name.equals("g") ? 0 : 1;
        children(element, depth + 1);
        copied.append("</").append(name).append('>');
    }

    private String attributes(Element element, boolean root) throws NotALogo {
        Map<String, String> attributes = new TreeMap<>();
        NamedNodeMap written = element.getAttributes();
        for (int i = 0; i < written.getLength(); i++) {
            Attr attribute = (Attr) written.item(i);
            String name = attribute.getName();
            if (name.equals("style")) {
                style(attribute.getValue(), attributes);
            } else if (name.endsWith("href")) {
                throw notPlain("an address (`" + name + "`)");
            } else if (attribute.getNamespaceURI() == null
                    && !SILENT_ATTRIBUTES.contains(name)
                    && !(root && (name.equals("width") || name.equals("height")))) {
                put(name, attribute.getValue(), attributes);
            }
        }
        return attributes.entrySet().stream()
                .map(one -> " " + one.getKey() + "=\"" + one.getValue() + "\"")
                .collect(Collectors.joining());
    }

    private void style(String style, Map<String, String> attributes) throws NotALogo {
        for (String declaration : style.split(";", -1)) {
            if (!declaration.isBlank()) {
                String[] parts = declaration.split(":", 2);
                put(parts[0].strip(), parts.length == 2 ? parts[1] : "", attributes);
            }
        }
    }

    private void put(String name, String value, Map<String, String> attributes) throws NotALogo {
        String given = value.strip();
        Pattern form = ATTRIBUTES.get(name);
        boolean taken = switch (name) {
            case "d" -> isPath(given);
            case "points" -> isPath("M " + given);
            default -> form != null && form.matcher(given).matches();
        };
        if (!taken) {
            String brief = given.length() > 30 ? given.substring(0, 30) + " …" : given;
            throw notPlain("`" + name + "` with `" + brief.replaceAll("[^\\x20-\\x7e…]", "?") + "`");
        }
        attributes.put(name, given);
    }

    /** True when every command has the numbers it takes, and the first one says where the pen begins. */
    private static boolean isPath(String data) {
        int at = skip(data, 0);
        boolean first = true;
        while (at < data.length()) {
            char command = Character.toUpperCase(data.charAt(at));
            Integer takes = COMMANDS.get(command);
            if (takes == null || (first && command != 'M')) {
                return false;
            }
            first = false;
            at = skip(data, at + 1);
            int numbers = 0;
            while (at < data.length() && !Character.isLetter(data.charAt(at))) {
                boolean flag = command == 'A' && (numbers % 7 == 3 || numbers % 7 == 4);
                Matcher number = (flag ? FLAG : ONE_NUMBER).matcher(data).region(at, data.length());
                if (!number.lookingAt()) {
                    return false;
                }
                numbers++;
                at = skip(data, number.end());
            }
            if (takes == 0 ? numbers > 0 : (numbers == 0 || numbers % takes != 0)) {
                return false;
            }
        }
        return !first;
    }

    private static int skip(String data, int from) {
        Matcher space = SPACE.matcher(data).region(from, data.length());
        return space.lookingAt() ? space.end() : from;
    }

    private NotALogo noPicture() {
        return new NotALogo(
                LogoFile.NOT_A_PICTURE,
                "the logo `" + path + "` is neither a PNG, a JPEG nor an SVG file that can be read",
                "save it anew as one of these; what sort a file is tells what is in it, not its name");
    }

    private NotALogo notPlain(String what) {
        return new NotALogo(
                LogoFile.NOT_PLAIN,
                "the logo `" + path + "` holds " + what
                        + ", and only shapes in flat colours are taken from an SVG file",
                "save it as plain SVG with letters turned into outlines and without code, links, pictures, styles in one place"
                        + " and colours that run into each other; or save it as PNG");
    }
}
