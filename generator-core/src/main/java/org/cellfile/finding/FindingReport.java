package org.cellfile.finding;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Findings for other programs: JSON by the schema {@code org/cellfile/findings.schema.json}, and XML as test runners write it. */
public final class FindingReport {

    private FindingReport() {}

    /**
     * As JSON.
     *
     * @param verdict {@code refused}, {@code draft}, {@code releasable} or {@code released}
     */
    public static String json(String verdict, List<Finding> findings) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            json.writeNumberField("format", 1);
            json.writeStringField("verdict", verdict);
            write("findings", findings, json);
            json.writeEndObject();
        } catch (IOException neverOnAStringWriter) {
            throw new UncheckedIOException(neverOnAStringWriter);
        }
        return text + "\n";
    }

    /**
     * What was found about a file that was handed over, as JSON by the schema {@code org/cellfile/audit.schema.json}.
     *
     * @param verdict in words
     * @param agrees a line for each check that came out well
     * @param unsaid a line for each thing that cannot be said
     */
    public static String audit(
            String file, String verdict, List<String> agrees, List<Finding> findings, List<String> unsaid) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            json.writeNumberField("format", 1);
            json.writeStringField("file", file);
            json.writeStringField("verdict", verdict);
            write("agrees", agrees.toArray(String[]::new), json);
            write("does-not-agree", findings, json);
            write("cannot-be-said", unsaid.toArray(String[]::new), json);
            json.writeEndObject();
        } catch (IOException neverOnAStringWriter) {
            throw new UncheckedIOException(neverOnAStringWriter);
        }
        return text + "\n";
    }

    private static void write(String field, String[] lines, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (String line : lines) {
            json.writeString(line);
        }
        json.writeEndArray();
    }

    private static void write(String field, List<Finding> findings, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("id", finding.id().words());
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("about", finding.about());
            json.writeStringField("file", finding.where().file().path());
            json.writeNumberField("line", finding.where().line());
            json.writeNumberField("column", finding.where().column());
            json.writeNumberField("length", finding.where().length());
            json.writeStringField("sentence", finding.sentence());
            json.writeArrayFieldStart("because");
            for (String line : finding.because()) {
                json.writeString(line);
            }
            json.writeEndArray();
            json.writeStringField("help", finding.help());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** As a report of test cases: a finding that refuses is a failed one, any other a passed one with output. */
    public static String junit(List<Finding> findings) {
        long failures = findings.stream()
                .filter(finding -> finding.severity() == Severity.REFUSES)
                .count();
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("testsuite");
            xml.writeAttribute("name", "cellfile");
            xml.writeAttribute("tests", String.valueOf(Math.max(1, findings.size())));
            xml.writeAttribute("failures", String.valueOf(failures));
            xml.writeAttribute("errors", "0");
            if (findings.isEmpty()) {
                testCase(xml, "cellfile", "nothing found");
                xml.writeEndElement();
            }
            for (Finding finding : findings) {
                testCase(
                        xml,
                        finding.where().file().path(),
                        finding.id() + " at " + finding.where().position());
                boolean failed = finding.severity() == Severity.REFUSES;
                xml.writeStartElement(failed ? "failure" : "system-out");
                if (failed) {
                    xml.writeAttribute("type", finding.id().words());
                    xml.writeAttribute("message", printable(finding.sentence()));
                }
                xml.writeCharacters(printable(String.join("\n", FindingText.lines(finding))));
                xml.writeEndElement();
                xml.writeEndElement();
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException neverOnAStringWriter) {
            throw new IllegalStateException(neverOnAStringWriter);
        }
        return text + "\n";
    }

    private static void testCase(XMLStreamWriter xml, String file, String name) throws XMLStreamException {
        xml.writeCharacters("\n  ");
        xml.writeStartElement("testcase");
        xml.writeAttribute("classname", file);
        xml.writeAttribute("name", name);
    }

    /** XML 1.0 has no place for some code points, even escaped. */
    private static String printable(String text) {
        return text.replaceAll("[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "·");
    }
}
