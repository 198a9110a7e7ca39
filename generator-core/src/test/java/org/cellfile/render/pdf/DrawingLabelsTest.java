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
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.cellfile.render.template.Templates;
import org.cellfile.subject.safeguard.Kinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Whatever the figures are, no two texts of a drawing touch and none leaves it. */
class DrawingLabelsTest {

    private static final int DRAWINGS = 250;
    private static final String LONGEST_TAG = "stop-of-the-second-palletising-line-inf1";

    private static final TrueTypeFont PLAIN = font("LiberationSans-Regular");
    private static final TrueTypeFont BOLD = font("LiberationSans-Bold");

    /** A fixed seed: every run tries the same figures. */
    private final Random random = new Random(20250314);

    static List<String> kinds() {
        return Kinds.ids();
    }

    /** Every figure that the drawing of the kind asks for, with any value. */
    @ParameterizedTest
    @MethodSource("kinds")
    void side_elevations(String kind) throws Exception {
        Set<String> figures = figures(kind);
        for (int i = 0; i < DRAWINGS; i++) {
            Map<String, Object> data = new HashMap<>();
            maybe(data, "tag", i % 7 == 0 ? "curtain-at-the-infeed-of-the-second-palletising-line" : "curtain-north");
            maybe(data, "zone", i % 5 == 0 ? "zone-of-the-transfer-table-and-of-the-pallet-lift-behind-it" : "zone-1");
            for (String figure : figures) {
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

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 30})
    void margins(int safeguards) throws Exception {
        for (int i = 0; i < DRAWINGS / 4; i++) {
            int lowest = random.nextInt(3) * -500;
            List<Map<String, Object>> bars = new ArrayList<>();
            for (int bar = 0; bar < safeguards; bar++) {
                int margin = lowest + random.nextInt(1 + random.nextInt(3000));
                String tag = bar % 7 == 0 ? "curtain-at-the-infeed-of-the-second-palletising-line" : "curtain-" + bar;
                bars.add(Map.of("tag", tag, "margin", BigDecimal.valueOf(margin), "words", margin + " mm"));
            }
            assertApart("drawings/margins.svg.ftl", Map.of("bars", bars), 530);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 12})
    void levels_of_functions(int functions) throws Exception {
        List<Map<String, Object>> ranges = List.of(
                Map.of("letter", "e", "upTo", new BigDecimal("-7")),
                Map.of("letter", "d", "upTo", new BigDecimal("-6")),
                Map.of("letter", "c", "upTo", new BigDecimal("-5.522879")),
                Map.of("letter", "b", "upTo", new BigDecimal("-5")),
                Map.of("letter", "a", "upTo", new BigDecimal("-4")));
        for (int i = 0; i < DRAWINGS / 4; i++) {
            List<Map<String, Object>> bars = new ArrayList<>();
            for (int bar = 0; bar < functions; bar++) {
                Map<String, Object> data = new HashMap<>(Map.of(
                        "tag", bar % 3 == 0 ? LONGEST_TAG : "stop-" + bar,
                        "frequency", "1.02e-10",
                        "reached", "e",
                        "required", "–",
                        "short", random.nextBoolean()));
                maybe(data, "place", BigDecimal.valueOf(-random.nextInt(12_000_000), 6));
                maybe(data, "bound", new BigDecimal(-4 - random.nextInt(4)));
                bars.add(data);
            }
            assertApart("drawings/function-levels.svg.ftl", Map.of("bars", bars, "ranges", ranges));
        }
    }

    /** Up to five subsystems with up to four parts in a channel; nothing is set smaller than 6 pt. */
    @Test
    void chains_of_functions() throws Exception {
        for (int i = 0; i < DRAWINGS; i++) {
            List<Map<String, Object>> stages = new ArrayList<>();
            for (int stage = 0; stage < 1 + i % 5; stage++) {
                List<Object> channels = new ArrayList<>();
                for (int channel = 0; channel < random.nextInt(3); channel++) {
                    channels.add(boxes(1 + random.nextInt(4)));
                }
                stages.add(Map.of(
                        "place", List.of("input", "logic", "output").get(random.nextInt(3)),
                        "tag", tag(),
                        "figures", List.of("category 3, PL d", "PFH_D 4.29e-8 1/h", "92.4 % of the sum"),
                        "channels", channels,
                        "equipment", channels.size() == 1 ? boxes(random.nextInt(3)) : List.of()));
            }
            List<DrawingLabel> labels = assertApart("drawings/function-chain.svg.ftl", Map.of("stages", stages), 2000);
            for (DrawingLabel label : labels) {
                // 640 units are the 160 mm that a drawing is wide, so that 8.46 of them are 6 pt
                assertThat(box(label).getHeight() / 0.78).as("%s", label).isGreaterThan(8.46);
            }
        }
    }

    private List<Map<String, Object>> boxes(int count) {
        List<Map<String, Object>> boxes = new ArrayList<>();
        for (int box = 0; box < count; box++) {
            boxes.add(Map.of("tag", tag(), "figures", List.of("MTTF_D 11358.69 years", "DC 99.9 %")));
        }
        return boxes;
    }

    private String tag() {
        return List.of("k1", "contactor-a", LONGEST_TAG, "m".repeat(40), "W-".repeat(20), "X".repeat(40))
                .get(random.nextInt(6));
    }

    private static Set<String> figures(String kind) throws IOException {
        Set<String> figures = new TreeSet<>(List.of("required", "installed", "zoneHighest", "zoneLowest"));
        String path = "/org/cellfile/templates/kinds/" + kind + "/elevation.svg.ftl";
        try (InputStream template = DrawingLabelsTest.class.getResourceAsStream(path)) {
            Matcher asked = Pattern.compile("\\bdata\\.(\\w+)").matcher(new String(template.readAllBytes(), UTF_8));
            while (asked.find()) {
                figures.add(asked.group(1));
            }
        }
        figures.removeAll(Set.of("tag", "zone", "angle"));
        return figures;
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
        assertApart(template, data, 320);
    }

    private static List<DrawingLabel> assertApart(String template, Map<String, Object> data, int high)
            throws Exception {
        String svg = Templates.fill(template, Map.of("data", data, "alternative", "a drawing"));
        // with a fraction in it the shapes are drawn lower than the texts
        assertThat(svg).containsPattern("viewBox=\"0 0 640 [0-9]+\"");
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
            assertThat(box.getMaxY()).as("%s of %s", label, data).isLessThanOrEqualTo(high);
            for (int other = 0; other < boxes.size(); other++) {
                assertThat(boxes.get(other).intersects(box))
                        .as("%s touches %s of %s", label, labels.get(other), data)
                        .isFalse();
            }
            labels.add(label);
            boxes.add(box);
        }
        assertThat(labels).isNotEmpty();
        return labels;
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
