package org.cellfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.Generator.Checked;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Nearest;
import org.cellfile.output.OutputFolder;
import org.cellfile.read.Reading;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Stated.Written;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.Ed25519;
import org.cellfile.subject.signoff.KeptTexts;
import org.cellfile.subject.signoff.KeyFile;
import org.cellfile.subject.signoff.KeyFile.Unusable;
import org.cellfile.subject.signoff.SignOff;
import org.cellfile.subject.signoff.SignOffStatus;
import org.cellfile.subject.signoff.Signed;
import org.cellfile.subject.signoff.Signing;
import org.cellfile.subject.signoff.SigningKey;
import org.cellfile.subject.signoff.SigningMessage;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;

/**
 * Where somebody signs a cell as it is. Whether that person may is judged by the rules for sign-offs that stand in the files: the
 * cell is read as it would be with the new one, and nothing is written when anything is found about it.
 */
public final class SigningDesk {

    private static final String NOTHING = "nothing was written";

    /** No key and no passphrase is longer. */
    private static final int LARGEST = 1 << 16;

    /**
     * What is to be signed.
     *
     * @param by tag of the person
     * @param covers {@code file} or a chapter
     * @param on a date as it is written in files; empty for the day of the run
     * @param keyFile the half of a key that signs; empty when the name is only typed
     * @param key tag of that key; empty when it is to be found among those of the person
     */
    public record Order(
            String by,
            String words,
            String role,
            String covers,
            Optional<String> on,
            Optional<Path> keyFile,
            Optional<String> key) {}

    /**
     * What came of it.
     *
     * @param verdict of the cell with the sign-off when it was written, else a refusal
     * @param sentence what was done, or why nothing was; without capital and full stop
     * @param written the files written; none when it was refused
     */
    public record Outcome(Verdict verdict, String sentence, List<Path> written) {

        /** True when it was signed. */
        public boolean signed() {
            return !written.isEmpty();
        }
    }

    private final Path folder;
    private final World world;
    private final Order order;
    private final Passphrase passphrase;

    /**
     * At a cell's folder.
     *
     * @param world that folder
     */
    public SigningDesk(Path folder, World world, Order order, Passphrase passphrase) {
        this.folder = folder;
        this.world = world;
        this.order = order;
        this.passphrase = passphrase;
    }

    /** Signs, or says why not. */
    public Outcome sign() {
        Checked before = new Generator().check(world);
        if (before.cell().isEmpty() || refusedOtherwise(before)) {
            return new Outcome(
                    Decision.refuse(before.verdict().findings()),
                    "what is refused is not signed; " + NOTHING,
                    List.of());
        }
        try {
            return sign(before.cell().get());
        } catch (Unusable reason) {
            return refused(String.valueOf(reason.getMessage()), List.of());
        } catch (IOException failed) {
            return refused("the sign-off could not be written: " + OutputFolder.reason(failed), List.of());
        }
    }

    private static Outcome refused(String sentence, List<Finding> findings) {
        return new Outcome(Decision.refuse(findings), sentence + "; " + NOTHING, List.of());
    }

    /** What is wrong with earlier sign-offs hinders nobody to sign anew. */
    private static boolean refusedOtherwise(Checked checked) {
        List<Finding> others = checked.verdict().findings().stream()
                .filter(finding -> !finding.id().words().matches("(sign-off|key)\\..*"))
                .toList();
        Cell cell = checked.cell().orElseThrow();
        return Decision.decide(others, List.of(), () -> Composition.compose(cell)) instanceof Refused;
    }

    private Outcome sign(Cell cell) throws IOException, Unusable {
        if (cell.copies().isCopy()) {
            throw new Unusable(
                    "this is a copy from which parts were left out; what is signed is the whole description");
        }
        LocalDate today = world.today();
        String on = order.on().orElse(today.toString());
        if (day(on).filter(today::isBefore).isPresent()) {
            throw new Unusable("a sign-off is not dated ahead: " + on + " comes after today, " + today);
        }
        if (order.key().isPresent() && order.keyFile().isEmpty()) {
            throw new Unusable("key `" + order.key().get() + "` is named, and no file that holds the half that signs");
        }
        if (cell.identity().person(written(order.by())).isEmpty()) {
            throw new Unusable("there is no person `" + order.by() + "` under `people`; there are "
                    + Nearest.listed(
                            order.by(),
                            cell.identity().people().stream()
                                    .map(person -> person.tag().characters())
                                    .toList()));
        }
        String digest = cell.substance()
                .digest(order.covers())
                .orElseThrow(() ->
                        new Unusable("there is no chapter `" + order.covers() + "` of this cell to sign; there are "
                                + Nearest.listed(
                                        order.covers(),
                                        cell.substance().parts().stream()
                                                .map(Substance.Part::chapter)
                                                .toList())
                                + ", and `" + Substance.WHOLE + "` for all of it"));
        Map<String, String> entry = new LinkedHashMap<>();
        entry.put("covers", order.covers());
        entry.put("digest", digest);
        entry.put("words", order.words());
        entry.put("by", order.by());
        entry.put("role", order.role());
        entry.put("on", on);
        if (order.keyFile().isPresent()) {
            prove(cell, digest, on, entry, order.keyFile().get());
        }
        return add(cell, SignOffFile.with(cell, folder, entry));
    }

    /** Empty when it is not written as a date, which is found when the sign-off is read. */
    private static Optional<LocalDate> day(String on) {
        try {
            return Optional.of(LocalDate.parse(on));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    private Outcome add(Cell cell, SignOffFile file) throws IOException {
        Checked after = new Generator().check(file.in(world));
        List<Finding> found = after.verdict().findings().stream()
                .filter(finding ->
                        file.holds(finding.where().file(), finding.where().line()))
                .toList();
        Optional<Cell> with = after.cell().filter(one -> followsOn(cell, one, file));
        if (with.isEmpty()) {
            return refused(
                    "no sign-off can be added at the end of `" + file.path()
                            + "`: `sign-offs` is not the last key in it, or its items do not begin on lines of their own; move it"
                            + " into a file sign-offs.yaml that begins with `cellfile: 1`",
                    List.of());
        }
        if (!found.isEmpty()) {
            return refused("it cannot be signed so", found);
        }
        Signing signing = with.get().signing();
        List<Signed> signed = signing.signed();
        Signed last = signed.get(signed.size() - 1);
        if (last.status() != SignOffStatus.VALID && last.status() != SignOffStatus.NOT_ASKED_FOR) {
            List<String> first = signing.toBeSignedFirst(last.signOff());
            return refused(
                    "this would be " + last.status().words()
                            + (first.isEmpty() ? "" : ": first comes " + String.join(", ", first)),
                    List.of());
        }
        return write(with.get(), file, after.verdict(), last);
    }

    /** True when one more sign-off is read from the end of the file, and all else is as it was. */
    private static boolean followsOn(Cell before, Cell after, SignOffFile file) {
        List<SignOff> signed = after.signOffs().signed();
        return signed.size() == before.signOffs().signed().size() + 1
                && file.holds(
                        signed.get(signed.size() - 1).where().file(),
                        signed.get(signed.size() - 1).where().line())
                && after.substance().digest().equals(before.substance().digest());
    }

    private Outcome write(Cell cell, SignOffFile file, Verdict verdict, Signed signed) throws IOException {
        Path kept = folder.resolve(KeptTexts.path(cell.substance()));
        Path texts = folder.resolve(Reading.SIGNED);
        boolean fresh = !Files.exists(kept);
        if (fresh) {
            Files.createDirectories(texts);
            if (!texts.toRealPath().startsWith(folder.toRealPath())) {
                throw new IOException("the folder for texts of what was signed is a link that leads elsewhere");
            }
            SignOffFile.replace(kept, cell.substance().text().getBytes(StandardCharsets.UTF_8));
        }
        try {
            Path list = file.write(folder);
            return new Outcome(
                    verdict,
                    "signed: `" + signed.signOff().words().characters() + "` by `" + order.by() + "`, "
                            + (signed.proven()
                                    ? "proven with key `"
                                            + signed.signOff().key().characters() + "`"
                                    : "typed, not proven")
                            + "; " + verdict.outcome(),
                    fresh ? List.of(list, kept) : List.of(list));
        } catch (IOException failed) {
            if (fresh) {
                Files.deleteIfExists(kept);
            }
            throw failed;
        }
    }

    private void prove(Cell cell, String digest, String on, Map<String, String> entry, Path keyFile) throws Unusable {
        PrivateKey half = half(keyFile);
        SigningKey key = key(cell, half, day(on).orElse(world.today()));
        entry.put("key", key.tag().characters());
        entry.put(
                "signature",
                Ed25519.sign(
                        half,
                        SigningMessage.of(
                                cell.identity().facts().id().characters(),
                                order.covers(),
                                digest,
                                order.words(),
                                cell.identity().nameOf(written(order.by())),
                                order.role(),
                                on)));
    }

    /** A tag as it would be written in a file. */
    private static Written<String> written(String tag) {
        return new Written<>(tag, SourceFile.unread("").whole(), tag);
    }

    private PrivateKey half(Path keyFile) throws Unusable {
        try {
            KeyFile file = KeyFile.of(text(keyFile))
                    .orElseThrow(() -> new Unusable(keyFile
                            + " holds no key that signs: between `BEGIN PRIVATE KEY` or `BEGIN ENCRYPTED PRIVATE KEY` and"
                            + " its end there is none"));
            return file.open(file.encrypted() ? passphrase.ask() : new char[0]);
        } catch (NoSuchFileException nowhere) {
            throw new Unusable("there is no key file " + keyFile);
        } catch (IOException failed) {
            throw new Unusable("the key file " + keyFile + " could not be read: " + failed.getMessage());
        }
    }

    /** A small file in UTF-8. */
    static String text(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            return new String(stream.readNBytes(LARGEST), StandardCharsets.UTF_8);
        }
    }

    /** The key under which what the half signs holds, among those of the person or the one named. */
    private SigningKey key(Cell cell, PrivateKey half, LocalDate day) throws Unusable {
        List<SigningKey> keys = cell.signOffs().keys();
        List<SigningKey> meant = keys.stream()
                .filter(key -> order.key()
                        .map(tag -> tag.equals(key.tag().characters()))
                        .orElseGet(() -> order.by().equals(key.of().characters())))
                .toList();
        if (meant.isEmpty()) {
            throw new Unusable(order.key()
                            .map(tag -> "there is no key `" + tag + "` under `keys`")
                            .orElse("there is no key of `" + order.by() + "` under `keys`")
                    + (keys.isEmpty()
                            ? ""
                            : "; there are "
                                    + keys.stream()
                                            .map(key -> "`" + key.tag().characters() + "` of `"
                                                    + key.of().characters() + "`")
                                            .collect(Collectors.joining(", "))));
        }
        byte[] trial = "which key is this".getBytes(StandardCharsets.UTF_8);
        String signature = Ed25519.sign(half, trial);
        List<SigningKey> fitting = meant.stream()
                .filter(key -> key.publicKey()
                        .value()
                        .flatMap(Ed25519::publicKey)
                        .filter(known -> Ed25519.holds(known, trial, signature))
                        .isPresent())
                .toList();
        return fitting.stream()
                .filter(key -> key.countsOn(day))
                .findFirst()
                .or(() -> fitting.stream().findFirst())
                .orElseThrow(() -> new Unusable("the key file holds another key than "
                        + meant.stream()
                                .map(key -> "`" + key.tag().characters() + "`")
                                .collect(Collectors.joining(", "))
                        + " under `keys`"));
    }
}
