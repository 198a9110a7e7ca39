package org.cellfile.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.read.Reading;
import org.cellfile.read.Section;
import org.cellfile.source.World;
import org.cellfile.subject.safeguard.Device;
import org.cellfile.subject.safeguard.Kinds;

/** What the program's own reader makes of a text. */
public final class AsRead {

    private AsRead() {}

    /** A folder with one file. */
    private record OneFile(String name, String text) implements World {
        @Override
        public List<Entry> entries() {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return List.of(Entry.held(name, bytes));
        }

        @Override
        public LocalDate today() {
            return LocalDate.of(2026, 1, 1);
        }
    }

    /** A file. */
    public static Reading.Sources file(String name, String text, Findings findings) {
        return Reading.read(new OneFile(name, text), findings);
    }

    /** The device of a kind for the keys that a cell states for it. */
    static Device device(String kind, String given, Findings findings) {
        Reading.Sources sources =
                Reading.read(new OneFile("device.yaml", "cellfile: 1\ndevice: {" + given + "}\n"), findings);
        Section section = sources.top().section("device");
        Device device = Kinds.of(kind).orElseThrow().read(section, "device");
        section.close();
        sources.finish();
        return device;
    }

    /** The same where there is nothing to find. */
    static Device device(String kind, String given) {
        Findings findings = new Findings();
        Device device = device(kind, given, findings);
        assertThat(findings.sorted()).extracting(Finding::sentence).isEmpty();
        return device;
    }
}
