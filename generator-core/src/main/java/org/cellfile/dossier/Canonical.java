package org.cellfile.dossier;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

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

    /** Says of each block what it is. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "block")
    private interface Typed {}

    private Canonical() {}

    public static String json(Dossier dossier) {
        try {
            return WRITER.writeValueAsString(dossier) + "\n";
        } catch (JsonProcessingException ours) {
            throw new IllegalStateException("this is a defect in the generator", ours);
        }
    }
}
