package org.cellfile.dossier;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A dossier as JSON that is the same for the same dossier: keys sorted, two spaces, LF, numbers as text. */
public final class Canonical {

    private static final ObjectWriter WRITER = JsonMapper.builder()
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .addMixIn(Block.class, Typed.class)
            .build()
            .writer(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private static final ObjectMapper READER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(100).build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private static final List<String> NAMES = List.of("covers", "id", "tag");

    /** Says of each block what it is. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "block")
    private interface Typed {}

    private Canonical() {}

    public static String json(Dossier dossier) {
        return write(dossier);
    }

    public static String json(Printed printed) {
        return write(printed);
    }

    public static String json(Block.Drawing drawing) {
        return write(drawing);
    }

    /** Anything that is made of texts, lists and maps, in the same manner. */
    public static String write(Object written) {
        try {
            return WRITER.writeValueAsString(written) + "\n";
        } catch (JsonProcessingException ours) {
            throw new IllegalStateException("this is a defect in the generator", ours);
        }
    }

    /**
     * Every text in a JSON document by its path, in the order written, so that two documents can be compared whatever version of
     * this program wrote them. An element of a list has the name it gives itself (its tag, chapter or id), else its place from 1.
     *
     * @return empty when it is no JSON, or nested deeper than this program nests
     */
    public static Optional<Map<List<String>, String>> leaves(String json) {
        try {
            Map<List<String>, String> leaves = new LinkedHashMap<>();
            collect(READER.readTree(json), List.of(), leaves);
            return Optional.of(leaves);
        } catch (JsonProcessingException noJson) {
            return Optional.empty();
        }
    }

    private static void collect(JsonNode node, List<String> path, Map<List<String>, String> leaves) {
        if (node.isObject()) {
            node.properties().forEach(field -> collect(field.getValue(), below(path, field.getKey()), leaves));
        } else if (node.isArray()) {
            Set<String> names = new HashSet<>();
            for (int i = 0; i < node.size(); i++) {
                String place = String.valueOf(i + 1);
                String name = name(node.get(i)).orElse(place);
                collect(node.get(i), below(path, names.add(name) ? name : name + " #" + place), leaves);
            }
        } else {
            leaves.put(path, node.asText());
        }
    }

    private static Optional<String> name(JsonNode element) {
        return NAMES.stream()
                .map(element::get)
                .filter(name -> name != null && name.isTextual())
                .map(JsonNode::asText)
                .findFirst();
    }

    private static List<String> below(List<String> path, String name) {
        List<String> below = new ArrayList<>(path);
        below.add(name);
        return List.copyOf(below);
    }
}
