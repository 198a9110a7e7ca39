package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each drawn sign has the shape and the colours of its kind.
 *
 * <p>Shapes: prohibition a red circle with a bar, mandatory a blue circle, warning a yellow triangle, safe condition a green square
 * (published: an encyclopedia article about ISO 7010). Colours: signal red RAL 3001 as 9B2423, signal blue RAL 5005 as 005387, signal
 * yellow RAL 1003 as F9A900, signal green RAL 6032 as 237F52 (published: an encyclopedia article about ISO 3864; one of two reprints
 * of it has F9A800). Symbols are black on yellow and on white, white on blue and on green (published at second hand). The shares of
 * the colour, at least 35 % red, 50 % yellow, blue and green, and the bar at 45 degrees: from memory.
 */
class SignsTest {

    private static final Map<Kind, Set<String>> COLOURS = Map.of(
            Kind.HAZARD, Set.of("#f9a900", "#000"),
            Kind.PROHIBITION, Set.of("#9b2423", "#000", "#fff"),
            Kind.ACTION, Set.of("#005387", "#fff"),
            Kind.EMERGENCY, Set.of("#237f52", "#fff"),
            Kind.INFORMATION, Set.of("#000", "#fff"));

    private static final Map<Kind, String> SHAPES = Map.of(
            Kind.HAZARD, "<path d=\"M50 19 L88 85 L12 85 Z\" fill=\"#f9a900\"/>",
            Kind.PROHIBITION,
                    "<circle cx=\"50\" cy=\"50\" r=\"43\" fill=\"#fff\" stroke=\"#9b2423\" stroke-width=\"10\"/>",
            Kind.ACTION, "<circle cx=\"50\" cy=\"50\" r=\"48\" fill=\"#005387\"/>",
            Kind.EMERGENCY, "<rect x=\"2\" y=\"2\" width=\"96\" height=\"96\" fill=\"#237f52\"/>",
            Kind.INFORMATION,
                    "<rect x=\"4\" y=\"4\" width=\"92\" height=\"92\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"6\"/>");

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{3,6}");

    /** What a registered sign would be called by. */
    private static final Pattern REGISTERED = Pattern.compile("\\b[WPMEF]0\\d\\d\\b");

    @ParameterizedTest
    @EnumSource(Sign.class)
    void hasTheShapeOfItsKind(Sign sign) throws Exception {
        assertThat(drawing(sign)).containsOnlyOnce(SHAPES.get(sign.kind()));
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void hasTheColoursOfItsKindAndNoOther(Sign sign) throws Exception {
        Set<String> colours = new TreeSet<>();
        Matcher matcher = COLOUR.matcher(drawing(sign));
        while (matcher.find()) {
            colours.add(matcher.group());
        }

        assertThat(colours).isEqualTo(new TreeSet<>(COLOURS.get(sign.kind())));
    }

    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"PROHIBITION", "NO_ENTRY"})
    void aProhibitionIsCrossedLastFromUpperLeftAtFortyFiveDegrees(Sign sign) throws Exception {
        Matcher bar = Pattern.compile(
                        "<path d=\"M([\\d.]+) ([\\d.]+) L([\\d.]+) ([\\d.]+)\" stroke=\"#9b2423\"[^>]*/>\\s*</svg>")
                .matcher(drawing(sign));

        assertThat(bar.find()).isTrue();
        assertThat(bar.group(1)).isEqualTo(bar.group(2));
        assertThat(bar.group(3)).isEqualTo(bar.group(4));
        assertThat(Double.parseDouble(bar.group(1))).isLessThan(Double.parseDouble(bar.group(3)));
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void carriesNoNumberOfARegisteredSignAndItsWordsStandInTheLanguages(Sign sign) throws Exception {
        assertThat(drawing(sign))
                .doesNotContainPattern(REGISTERED)
                .contains("alt=\"${words['sign." + sign.id() + "']}\"");
        for (String language : Set.of("en", "de", "es", "pl")) {
            assertThat(resource("languages/" + language + ".properties"))
                    .contains("frame.meaning." + sign.id() + " = ");
        }
    }

    private static String drawing(Sign sign) throws Exception {
        return resource("signs/" + sign.id() + ".svg.ftl");
    }

    private static String resource(String name) throws Exception {
        try (InputStream stream = SignsTest.class.getResourceAsStream("/org/cellfile/templates/" + name)) {
            assertThat(stream).as(name).isNotNull();
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
