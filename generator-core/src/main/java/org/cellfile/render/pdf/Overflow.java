package org.cellfile.render.pdf;

import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What does not fit on the one page it has.
 *
 * @param lines how many printed lines are too many; of a drawing as many as would stand where it reaches too far down
 * @param first the text in which the first of them stands
 * @param parts how many of them belong to each part of the page, by its title and in the order of the page
 */
public record Overflow(int lines, String first, Map<String, Integer> parts) {

    private static final String DRAWING = "svg";

    /** The foot is at least as high as its code, which is about six lines of a step. */
    private static final int LINES_OF_A_FOOT = 6;

    /**
     * Measures a laid-out page.
     *
     * @param foot the box at the lower end of the page that nothing may reach into
     */
    static Optional<Overflow> above(Box foot, Box root) {
        List<Box> beyond = new ArrayList<>();
        collect(root, foot, beyond);
        if (beyond.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Integer> parts = new LinkedHashMap<>();
        beyond.forEach(line -> parts.merge(part(line), 1, Integer::sum));
        return Optional.of(new Overflow(beyond.size(), text(beyond.get(0)), parts));
    }

    private static void collect(Box box, Box foot, List<Box> beyond) {
        if (box == foot) {
            return;
        }
        Element element = box.getElement();
        if (element != null && element.hasAttribute("data-beside")) {
            return; // the number of a step stands beside its first line and is no line of its own
        }
        if (isDrawing(element)) {
            int high = foot.getHeight() / LINES_OF_A_FOOT;
            for (int reached = foot.getAbsY(); reached < box.getAbsY() + box.getHeight(); reached += high) {
                beyond.add(box);
            }
            return;
        }
        if (box instanceof LineBox line && line.isContainsVisibleContent()) {
            if (line.getAbsY() + line.getHeight() > foot.getAbsY()) {
                beyond.add(line);
            }
            return;
        }
        for (Box child : box.getChildren()) {
            collect(child, foot, beyond);
        }
    }

    /** A drawing is a part by itself; a sign stands beside one. */
    private static boolean isDrawing(@Nullable Element element) {
        return element != null
                && element.getTagName().equals(DRAWING)
                && element.getParentNode() instanceof Element around
                && around.hasAttribute("data-part");
    }

    private static String text(Box box) {
        Element element = element(box);
        if (element != null && isDrawing(element)) {
            return element.getAttribute("alt");
        }
        return element == null ? "" : element.getTextContent().strip().replaceAll("\\s+", " ");
    }

    private static String part(Box box) {
        for (Node node = element(box); node instanceof Element element; node = node.getParentNode()) {
            if (element.hasAttribute("data-part")) {
                return element.getAttribute("data-part");
            }
        }
        return "";
    }

    /** Boxes that the layout made up have no element; the text in them belongs to the nearest one around them. */
    private static @Nullable Element element(Box box) {
        Box owner = box;
        while (owner != null && owner.getElement() == null) {
            owner = owner.getParent();
        }
        return owner == null ? null : owner.getElement();
    }
}
