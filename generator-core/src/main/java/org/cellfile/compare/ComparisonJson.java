package org.cellfile.compare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** A comparison for other programs: JSON by the schema {@code org/cellfile/comparison.schema.json}. */
public final class ComparisonJson {

    private final JsonGenerator json;
    private final Compared compared;

    private ComparisonJson(JsonGenerator json, Compared compared) {
        this.json = json;
        this.compared = compared;
    }

    public static String of(Compared compared) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            new ComparisonJson(json, compared).write();
        } catch (IOException neverOnAStringWriter) {
            throw new UncheckedIOException(neverOnAStringWriter);
        }
        return text + "\n";
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeNumberField("format", 1);
        json.writeStringField("cell", compared.newer().label().cellId());
        state("older", compared.older());
        state("newer", compared.newer());
        json.writeBooleanField("same", compared.same());
        json.writeArrayFieldStart("groups");
        for (Group group : compared.groups()) {
            group(group);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("values");
        for (ValueChange value : compared.values()) {
            json.writeStartObject();
            json.writeStringField("tag", value.tag());
            json.writeStringField("older", value.older());
            json.writeStringField("newer", value.newer());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings("chapters", compared.chapters());
        json.writeArrayFieldStart("signOffs");
        for (LapsedSignOff one : compared.lapsed()) {
            json.writeStartObject();
            json.writeStringField("covers", one.covers());
            json.writeStringField("words", one.words());
            json.writeStringField("by", one.by());
            json.writeStringField("on", one.on());
            json.writeStringField("again", one.again().orElse(""));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sheets");
        for (SheetChange sheet : compared.sheets()) {
            json.writeStartObject();
            json.writeStringField("id", sheet.id());
            strings("exchange", sheet.exchange());
            strings("post", sheet.post());
            strings("takeDown", sheet.takeDown());
            strings("parts", sheet.parts());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings(
                "unexplained",
                compared.unexplained().stream().map(Difference::path).toList());
        json.writeEndObject();
    }

    private void state(String which, State state) throws IOException {
        json.writeObjectFieldStart(which);
        json.writeStringField("source", state.source());
        json.writeStringField("revision", state.label().revision());
        json.writeStringField("asOf", state.label().asOf());
        json.writeStringField("digest", state.substance().digest());
        json.writeStringField("refused", state.refused().orElse(""));
        json.writeEndObject();
    }

    private void group(Group group) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", group.id());
        json.writeStringField("title", group.title());
        json.writeArrayFieldStart("differences");
        for (Difference one : group.differences()) {
            json.writeStartObject();
            json.writeStringField("path", one.path());
            json.writeStringField("sort", one.added() ? "added" : one.removed() ? "removed" : "changed");
            json.writeStringField("older", one.added() ? "" : one.before());
            json.writeStringField("olderAt", one.beforeAt());
            json.writeStringField("newer", one.removed() ? "" : one.after());
            json.writeStringField("newerAt", one.afterAt());
            strings("explainedBy", compared.explanations().getOrDefault(one, List.of()));
            json.writeEndObject();
        }
        json.writeEndArray();
        strings("values", group.values().stream().map(ValueChange::tag).toList());
        json.writeArrayFieldStart("voids");
        for (Consequence consequence : group.consequences()) {
            json.writeStartObject();
            json.writeStringField("proof", consequence.proof().words());
            json.writeStringField("asks", consequence.asks());
            json.writeArrayFieldStart("items");
            for (Consequence.Item item : consequence.items()) {
                json.writeStartObject();
                json.writeStringField("about", item.about());
                json.writeStringField("words", item.words());
                json.writeBooleanField("open", item.open());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void strings(String name, List<String> strings) throws IOException {
        json.writeArrayFieldStart(name);
        for (String string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }
}
