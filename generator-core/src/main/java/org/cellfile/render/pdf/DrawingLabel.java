package org.cellfile.render.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.pdfboxout.PdfBoxFastOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.w3c.dom.Element;

/**
 * A {@code text} element of a drawing. Of SVG's many ways to style one it knows those our templates use, as attributes
 * of the element itself.
 *
 * @param x in the units of the view box
 * @param y of the base line, downwards
 * @param anchor {@code start}, {@code middle} or {@code end}: which part of the text stands at x
 * @param white true for white text, otherwise it is black
 * @param fit the width it may take (attribute {@code data-fit}); a longer text is set smaller. 0 when there is no limit
 */
record DrawingLabel(
        String text,
        float x,
        float y,
        float size,
        boolean bold,
        String family,
        String anchor,
        boolean white,
        float fit) {

    private static final String SANS = "Liberation Sans";

    static DrawingLabel of(Element element) {
        return new DrawingLabel(
                element.getTextContent().strip(),
                number(element, "x", 0),
                number(element, "y", 0),
                number(element, "font-size", 11),
                element.getAttribute("font-weight").equals("bold"),
                element.getAttribute("font-family").isEmpty() ? SANS : element.getAttribute("font-family"),
                element.getAttribute("text-anchor"),
                element.getAttribute("fill").equals("#fff"),
                number(element, "data-fit", 0));
    }

    void draw(PdfBoxFastOutputDevice device, RenderingContext context, float left, float top, float scale) {
        float width = width(context, size);
        float fitting = fit > 0 && width > fit ? size * fit / width : size;
        float printed = fit > 0 && width > fit ? fit : width;
        float shift = switch (anchor) {
            case "middle" -> printed / 2;
            case "end" -> printed;
            default -> 0;
        };
        FontSpecification font = font(fitting * scale);
        device.setFontSpecification(font);
        device.setFont(context.getFont(font));
        device.setColor(white ? new FSRGBColor(255, 255, 255) : new FSRGBColor(0, 0, 0));
        device.drawString(text, left + (x - shift) * scale, top + y * scale, null);
    }

    private float width(RenderingContext context, float fontSize) {
        PdfBoxFSFont font = (PdfBoxFSFont) context.getFont(font(fontSize));
        PDFont face = font.getFontDescriptions().get(0).getFont();
        try {
            return face.getStringWidth(text) / 1000 * fontSize;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private FontSpecification font(float fontSize) {
        FontSpecification font = new FontSpecification();
        font.families = new String[] {family};
        font.size = fontSize;
        font.fontWeight = bold ? IdentValue.BOLD : IdentValue.NORMAL;
        font.fontStyle = IdentValue.NORMAL;
        font.variant = IdentValue.NORMAL;
        return font;
    }

    private static float number(Element element, String attribute, float otherwise) {
        String written = element.getAttribute(attribute);
        return written.isEmpty() ? otherwise : Float.parseFloat(written);
    }
}
