package org.cellfile.render.pdf;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.cellfile.render.template.Templates;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Whatever the figures are, no two texts of a drawing touch and none leaves it. */
class DrawingLabelsTest {

    private static final int DRAWINGS = 250;

    private static final TrueTypeFont PLAIN = font("LiberationSans-Regular");
    private static final TrueTypeFont BOLD = font("LiberationSans-Bold");

    /** A fixed seed: every run tries the same figures. */
    private final Random random = new Random(20250314);

    @ParameterizedTest
    @ValueSource(strings = {"light-curtain", "laser-scanner", "interlocked-door", "fixed-fence"})
    void side_elevations(String kind) throws Exception {
        for (int i = 0; i < DRAWINGS; i++) {
            Map<String, Object> data = new HashMap<>();
            maybe(data, "tag", i % 7 == 0 ? "curtain-at-the-infeed-of-the-second-palletising-line" : "curtain-north");
            maybe(data, "zone", i % 5 == 0 ? "zone-of-the-transfer-table-and-of-the-pallet-lift-behind-it" : "zone-1");
            for (String figure : List.of("required", "installed", "zoneHighest", "zoneLowest")) {
                maybe(data, figure, millimetres());
            }
            for (String figure :
                    List.of("upperEdge", "lowerEdge", "farHeight", "fieldHeight", "opening", "height", "gapBelow")) {
                maybe(data, figure, millimetres());
            }
            maybe(data, "angle", BigDecimal.valueOf(random.nextInt(901), 1));
            assertApart("kinds/" + kind + "/elevation.svg.ftl", data);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"s", "mm"})
    void stop_runs(String unit) throws Exception {
        for (int i = 0; i < DRAWINGS; i++) {
            List<BigDecimal> runs = new ArrayList<>();
            int spread = 1 + random.nextInt(400);
            for (int run = 0; run < 1 + random.nextInt(60); run++) {
                runs.add(BigDecimal.valueOf(300 + random.nextInt(spread), unit.equals("s") ? 3 : 0));
            }
            Map<String, Object> data = new HashMap<>(Map.of("unit", unit, "runs", runs));
            maybe(data, "title", "stop-auto-1: stopping time under the least favourable load and at the highest speed");
            for (String figure : List.of("mean", "highest", "meanPlus3s", "carried")) {
                maybe(data, figure, BigDecimal.valueOf(2990 + random.nextInt(10 * spread), unit.equals("s") ? 4 : 1));
            }
            assertApart("drawings/stop-runs.svg.ftl", data);
        }
    }

    private void maybe(Map<String, Object> data, String key, Object value) {
        if (random.nextInt(5) > 0) {
            data.put(key, value);
        }
    }

    private BigDecimal millimetres() {
        int[] known = {0, 1, 120, 850, 1000, 1010, 1359, 1420, 2000, 6000};
        int value = random.nextBoolean() ? known[random.nextInt(known.length)] : random.nextInt(6001);
        return BigDecimal.valueOf(value);
    }

    private static void assertApart(String template, Map<String, Object> data) throws Exception {
        String svg = Templates.fill(template, Map.of("data", data, "alternative", "a drawing"));
        NodeList texts = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(UTF_8)))
                .getElementsByTagName("text");
        List<DrawingLabel> labels = new ArrayList<>();
        List<Rectangle2D> boxes = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            DrawingLabel label = DrawingLabel.of((Element) texts.item(i));
            Rectangle2D box = box(label);
            assertThat(box.getMinX()).as("%s of %s", label, data).isGreaterThanOrEqualTo(0);
            assertThat(box.getMaxX()).as("%s of %s", label, data).isLessThanOrEqualTo(640);
            assertThat(box.getMinY()).as("%s of %s", label, data).isGreaterThanOrEqualTo(0);
            assertThat(box.getMaxY()).as("%s of %s", label, data).isLessThanOrEqualTo(320);
            for (int other = 0; other < boxes.size(); other++) {
                assertThat(boxes.get(other).intersects(box))
                        .as("%s touches %s of %s", label, labels.get(other), data)
                        .isFalse();
            }
            labels.add(label);
            boxes.add(box);
        }
        assertThat(labels).isNotEmpty();
    }

    /** From the top of a small letter with an ascender to the base line; letters below the line are few and short. */
    private static Rectangle2D box(DrawingLabel label) throws IOException {
        TrueTypeFont font = label.bold() ? BOLD : PLAIN;
        float units = 0;
        for (int codePoint : label.text().codePoints().toArray()) {
            units += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(codePoint));
        }
        float wanted = units / font.getUnitsPerEm() * label.size();
        float size = label.fit() > 0 && wanted > label.fit() ? label.size() * label.fit() / wanted : label.size();
        float width = Math.min(wanted, label.fit() > 0 ? label.fit() : wanted);
        float left = switch (label.anchor()) {
            case "middle" -> label.x() - width / 2;
            case "end" -> label.x() - width;
            default -> label.x();
        };
        return new Rectangle2D.Float(left, label.y() - 0.73f * size, width, 0.78f * size);
    }

    private static TrueTypeFont font(String name) {
        try (InputStream stream = DrawingLabelsTest.class.getResourceAsStream("/liberation/" + name + ".ttf")) {
            return new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
