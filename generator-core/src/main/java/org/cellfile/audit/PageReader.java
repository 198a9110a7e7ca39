package org.cellfile.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.fontbox.cmap.CMap;
import org.apache.fontbox.cmap.CMapParser;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.cellfile.audit.PageText.Run;

/**
 * Reads the text of pages as this program draws them: in order, every piece marked as text, as part of a drawing or as margin. Any
 * way of drawing that it does not use is told as foreign.
 */
final class PageReader {

    private static final Set<String> OPERATORS = Set.of(
            "BDC", "BT", "Do", "EMC", "ET", "J", "M", "Q", "TJ", "Tf", "Tj", "Tm", "W", "c", "cm", "d", "f", "h", "j",
            "l", "m", "n", "q", "rg", "w");
    private static final Set<String> OPERATORS_OF_DRAWINGS = Set.of(
            "CS", "J", "M", "Q", "S", "SC", "W", "c", "cs", "d", "f", "gs", "h", "j", "l", "m", "n", "q", "sc", "w",
            "y");
    private static final COSName MARGIN = COSName.getPDFName("Artifact");

    private final ForeignParts foreign;
    private final Inflated contents;
    private final IdentityHashMap<COSDictionary, Optional<CMap>> typefaces = new IdentityHashMap<>();
    private final IdentityHashMap<COSStream, Boolean> drawings = new IdentityHashMap<>();

    PageReader(String file, ForeignParts foreign) {
        this.foreign = foreign;
        this.contents = new Inflated(file, "pages", 4 << 20, 200L << 20);
    }

    List<PageText> read(List<COSDictionary> pages) throws IOException, Refusal {
        List<PageText> texts = new ArrayList<>();
        for (COSDictionary page : pages) {
            foreign.page(page, texts.size() + 1);
            texts.add(read(page, texts.size() + 1));
        }
        return texts;
    }

    /** The instructions of each page. */
    List<byte[]> contents(List<COSDictionary> pages) throws IOException, Refusal {
        List<byte[]> all = new ArrayList<>();
        for (COSDictionary page : pages) {
            COSStream stream = page.getCOSStream(COSName.CONTENTS);
            all.add(stream == null ? new byte[0] : contents.of(stream));
        }
        return all;
    }

    private PageText read(COSDictionary page, int number) throws IOException, Refusal {
        COSStream stream = page.getCOSStream(COSName.CONTENTS);
        if (stream == null) {
            throw new IOException("page " + number + " has no contents in one piece");
        }
        COSDictionary resources = page.getCOSDictionary(COSName.RESOURCES);
        Text text = new Text(resources == null ? new COSDictionary() : resources, number);
        new ContentScanner(contents.of(stream)).scan(text);
        return text.end();
    }

    /** Gathers what the operators of one page show. */
    private final class Text implements ContentScanner.Receiver {
        private final COSDictionary resources;
        private final int number;
        private final StringBuilder margin = new StringBuilder();
        private final List<Run> runs = new ArrayList<>();
        private final StringBuilder run = new StringBuilder();
        private String mark = "";
        private Optional<CMap> typeface = Optional.empty();

        Text(COSDictionary resources, int number) {
            this.resources = resources;
            this.number = number;
        }

        @Override
        public void operator(String operator, List<Object> operands) throws IOException, Refusal {
            if (!OPERATORS.contains(operator)) {
                foreign.met("the instruction `" + printable(operator) + "` on page " + number);
                return;
            }
            switch (operator) {
                case "BDC" -> {
                    close();
                    mark = name(operands, 0);
                    if (operands.size() > 1
                            && operands.get(1) instanceof ContentScanner.Properties properties
                            && !properties.written().matches("/MCID \\d+")) {
                        foreign.met("words behind the words on page " + number);
                    }
                }
                case "EMC" -> {
                    close();
                    mark = "";
                }
                case "Tf" -> typeface = typeface(name(operands, 0));
                case "Tj", "TJ" -> operands.forEach(this::show);
                case "Do" -> draw(name(operands, 0));
                default -> {}
            }
        }

        private void show(Object shown) {
            if (shown instanceof byte[] codes) {
                for (int i = 0; i + 1 < codes.length; i += 2) {
                    int code = ((codes[i] & 0xFF) << 8) | (codes[i + 1] & 0xFF);
                    run.append(typeface.map(known -> known.toUnicode(code, 2)).orElse("\uFFFD"));
                }
            } else if (shown instanceof List<?> pieces) {
                pieces.forEach(this::show);
            }
        }

        private void close() {
            if (!run.isEmpty()) {
                if (mark.equals(MARGIN.getName())) {
                    margin.append(run).append(' ');
                } else {
                    runs.add(new Run(mark.equals("Figure"), run.toString()));
                }
                run.setLength(0);
            }
        }

        PageText end() {
            close();
            return new PageText(number, margin.toString(), List.copyOf(runs));
        }

        private Optional<CMap> typeface(String name) throws IOException, Refusal {
            COSDictionary fonts = resources.getCOSDictionary(COSName.FONT);
            COSDictionary font = fonts == null ? null : fonts.getCOSDictionary(COSName.getPDFName(name));
            if (font == null) {
                throw new IOException("page " + number + " uses a typeface that is not there");
            }
            Optional<CMap> known = typefaces.get(font);
            if (known == null) {
                COSStream characters = font.getCOSStream(COSName.TO_UNICODE);
                known = characters != null && COSName.IDENTITY_H.equals(font.getCOSName(COSName.ENCODING))
                        ? Optional.of(new CMapParser().parse(new RandomAccessReadBuffer(contents.of(characters))))
                        : Optional.empty();
                typefaces.put(font, known);
            }
            return known;
        }

        /** A drawing holds lines and areas; its texts stand on the page. */
        private void draw(String name) throws IOException, Refusal {
            COSDictionary drawn = resources.getCOSDictionary(COSName.XOBJECT);
            COSStream drawing = drawn == null ? null : drawn.getCOSStream(COSName.getPDFName(name));
            if (drawing == null) {
                throw new IOException("page " + number + " shows a drawing that is not there");
            }
            if (drawings.put(drawing, true) == null) {
                new ContentScanner(contents.of(drawing)).scan((operator, operands) -> {
                    if (!OPERATORS_OF_DRAWINGS.contains(operator)) {
                        foreign.met("the instruction `" + printable(operator) + "` in a drawing on page " + number);
                    }
                });
            }
        }

        private String name(List<Object> operands, int place) throws IOException {
            if (place < operands.size() && operands.get(place) instanceof String name) {
                return name;
            }
            throw new IOException("the contents of page " + number + " are broken");
        }

        private String printable(String operator) {
            return new String(operator.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII);
        }
    }
}
