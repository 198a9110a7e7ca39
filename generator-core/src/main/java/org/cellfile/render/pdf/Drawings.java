package org.cellfile.render.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxFastOutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.File;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Draws the SVG elements of one document. Batik draws the shapes, without scripts and without reading anything from
 * outside; the texts are set like any other text of the page, so that they are embedded, can be found and copied, and do
 * not depend on what typefaces the machine has.
 */
final class Drawings implements SVGDrawer {

    private final BatikSVGDrawer shapes = new BatikSVGDrawer();
    private final IdentityHashMap<Element, List<DrawingLabel>> labels = new IdentityHashMap<>();
    private final IdentityHashMap<Element, SVGImage> images = new IdentityHashMap<>();

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        List<DrawingLabel> texts = labels.computeIfAbsent(svg, Drawings::takeLabels);
        String[] viewBox = svg.getAttribute("viewBox").split(" ", -1);
        float width = Float.parseFloat(viewBox[2]);
        // The band of a draft is laid out anew on each page; its shapes are read once.
        SVGImage image = images.computeIfAbsent(
                svg, one -> shapes.buildSVGImage(one, box, context, cssWidth, cssHeight, dotsPerPixel));
        return new Labelled(image, texts, box, width);
    }

    /** Removes the texts from the drawing; what Batik gets to see is shapes alone. */
    private static List<DrawingLabel> takeLabels(Element svg) {
        NodeList texts = svg.getElementsByTagNameNS("*", "text");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            elements.add((Element) texts.item(i));
        }
        List<DrawingLabel> taken = new ArrayList<>();
        for (Element element : elements) {
            taken.add(DrawingLabel.of(element));
            element.getParentNode().removeChild(element);
        }
        return taken;
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        shapes.importFontFaceRules(rules, context);
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        throw new UnsupportedOperationException("texts in drawings use the typefaces of the page");
    }

    @Override
    public void close() {
        shapes.close();
    }

    private record Labelled(SVGImage image, List<DrawingLabel> labels, Box box, float viewWidth) implements SVGImage {

        @Override
        public int getIntrinsicWidth() {
            return image.getIntrinsicWidth();
        }

        @Override
        public int getIntrinsicHeight() {
            return image.getIntrinsicHeight();
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            image.drawSVG(device, context, x, y);
            float scale = box.getContentWidth() / viewWidth;
            for (DrawingLabel label : labels) {
                label.draw((PdfBoxFastOutputDevice) device, context, (float) x, (float) y, scale);
            }
        }
    }
}
